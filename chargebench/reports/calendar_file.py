"""Due dates as an iCalendar file, for the calendar a shop already looks at."""

import os
from collections.abc import Iterable
from datetime import datetime
from pathlib import Path
from uuid import UUID, uuid5

from icalendar import Calendar, Event

from chargebench.errors import ExportRefused
from chargebench.reports.dated import DONE, OVERDUE, DueLine
from chargebench.sources import name as source_name

# RFC 9562, 6.6: ids of texts, in a name space of this program's own.
_SPACE = UUID("6f1d2c0e-9a57-5c6b-8a44-0d6f2f8f7c31")


def write_calendar(
    path: Path, lines: Iterable[DueLine], *, shop_id: str, shop: str, program: str, at: datetime
) -> Path:
    """Write what is owed, and what was done about it, as a calendar; its path.

    Raises
    ------
    ExportRefused
        The file could not be written.
    """
    part = path.with_name(f".{path.name}.part")
    try:
        with part.open("wb") as file:
            file.write(calendar_text(lines, shop_id=shop_id, shop=shop, program=program, at=at))
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"The calendar could not be written to {path}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)
    return path


def calendar_text(
    lines: Iterable[DueLine], *, shop_id: str, shop: str, program: str, at: datetime
) -> bytes:
    """A calendar with an event for each row: whole days, no alarms.

    A row keeps its UID while its day moves or it is done, so a second import replaces the first.
    """
    calendar = Calendar()
    calendar.add("prodid", f"-//{program}//due dates//EN")
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("x-wr-calname", f"Due dates of {shop}" if shop else "Due dates")
    taken: dict[str, int] = {}
    for line in lines:
        again = taken[line.key] = taken.get(line.key, 0) + 1
        key = f"{shop_id}|{line.key}" + (f"|{again}" if again > 1 else "")
        calendar.add_component(_event(line, f"{uuid5(_SPACE, key)}@chargebench", at))
    text: bytes = calendar.to_ical()
    return text


def _event(line: DueLine, uid: str, at: datetime) -> Event:
    event = Event()
    event.add("uid", uid)
    event.add("dtstamp", at)
    event.add("dtstart", line.on)
    done = "Done: " if line.state == DONE else "Overdue: " if line.state == OVERDUE else ""
    event.add("summary", f"{done}{line.what}, {line.name}")
    event.add("description", _description(line))
    event.add("categories", [line.regulation or line.about.partition(":")[0]])
    event.add("status", "CANCELLED" if line.state == DONE else "CONFIRMED")
    event.add("transp", "TRANSPARENT")  # a day something is due keeps nobody from other work
    return event


def _description(line: DueLine) -> str:
    says = [f"{line.about}."]
    if line.start is not None and line.figure:
        says.append(f"{line.figure} from {line.start}.")
    if line.extended_to is not None:
        says.append(f"Put off to {line.extended_to}: {line.how}.")
    if line.entries:
        says.append(f"Entries: {', '.join(map(str, line.entries))}.")
    if line.done_on is not None:
        says.append(f"Done on {line.done_on}: {line.how or 'recorded'}.")
    asked = line.source != "register"
    says.append(f"By {source_name(line.source)}." if asked else "As entered by the shop.")
    return "\n".join(says)
