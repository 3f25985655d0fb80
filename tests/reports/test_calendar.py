"""The calendar of due dates: valid by RFC 5545, whole days, and the same events on each import."""

import re
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from icalendar import Calendar

from chargebench.errors import ExportRefused
from chargebench.reports import AuditContent, DueLine
from chargebench.reports.calendar_file import calendar_text, write_calendar

AT = datetime(2026, 11, 25, 9, 30, tzinfo=UTC)
REPAIR = DueLine(
    on=date(2026, 12, 24),
    what="repair",
    about="equipment:E-007",
    name="Kühlraum, " + "long name " * 12,
    state="open",
    figure="30 day",
    source="40CFR84.106, (d)",
    mark="SEEN",
    start=date(2026, 11, 24),
    entries=(7, 9),
    regulation="84.106",
    of=date(2026, 11, 24),
)


def text(*lines: DueLine, at: datetime = AT) -> bytes:
    return calendar_text(lines, shop_id="one shop", shop="Larkmoor", program="chargebench", at=at)


def uids(content: bytes) -> list[str]:
    return [str(event["UID"]) for event in Calendar.from_ical(content).walk("VEVENT")]


# RFC 5545: 3.1 lines end in CRLF and are folded to 75 octets; 3.6 PRODID and VERSION are required;
# 3.6.1 UID and DTSTAMP of each event; 3.8.2.4 a DTSTART of whole days is VALUE=DATE.
def test_that_the_calendar_is_as_the_rfc_asks() -> None:
    content = text(REPAIR)
    lines = content.split(b"\r\n")
    assert lines[-1] == b""
    assert b"\n" not in content.replace(b"\r\n", b"")
    assert max(len(line) for line in lines) <= 75
    assert lines[0] == b"BEGIN:VCALENDAR"
    assert lines[-2] == b"END:VCALENDAR"
    for needed in (b"VERSION:2.0", b"DTSTART;VALUE=DATE:20261224", b"DTSTAMP:20261125T093000Z"):
        assert needed in lines
    assert any(line.startswith(b"PRODID:") for line in lines)
    assert b"VALARM" not in content
    unfolded = content.replace(b"\r\n ", b"").decode()
    assert "SUMMARY:repair\\, Kühlraum\\, long name" in unfolded  # 3.3.11: commas are escaped
    assert "30 day from 2026-11-24." in unfolded
    assert "Entries: 7\\, 9." in unfolded


def test_that_an_event_keeps_its_uid_while_its_day_moves_or_it_is_done() -> None:
    (first,) = uids(text(REPAIR))
    moved = replace(REPAIR, on=date(2027, 1, 31), extended_to=date(2027, 1, 31))
    done = replace(REPAIR, state="done", done_on=date(2026, 12, 1), ended_by=(12,))
    started = replace(REPAIR, start=date(2026, 12, 1))
    later = AT.replace(year=2027)
    assert uids(text(moved, at=later)) == uids(text(done)) == uids(text(started)) == [first]
    assert re.fullmatch(r"[0-9a-f-]{36}@chargebench", first)


def test_that_no_two_rows_share_a_uid() -> None:
    again = replace(REPAIR, of=date(2026, 12, 2))
    other = replace(REPAIR, what="follow-up verification test")
    assert len(set(uids(text(REPAIR, REPAIR, again, other)))) == 4
    elsewhere = calendar_text([REPAIR], shop_id="another", shop="", program="x", at=AT)
    assert uids(elsewhere) != uids(text(REPAIR))


def test_that_what_is_done_is_taken_off_the_calendar() -> None:
    done = replace(REPAIR, state="done", done_on=date(2026, 12, 1), how="follow-up test tight")
    (event,) = Calendar.from_ical(text(done)).walk("VEVENT")
    assert str(event["STATUS"]) == "CANCELLED"
    assert "Done on 2026-12-01: follow-up test tight." in str(event["DESCRIPTION"])


def test_that_the_sample_shop_has_an_event_for_each_row_due(
    content: AuditContent, tmp_path: Path
) -> None:
    path = write_calendar(
        tmp_path / "due.ics", content.due, shop_id="s", shop="s", program="p", at=AT
    )
    events = Calendar.from_ical(path.read_bytes()).walk("VEVENT")
    assert [event.decoded("DTSTART") for event in events] == [line.on for line in content.due]
    assert len({str(event["UID"]) for event in events}) == len(content.due) > 10


def test_that_a_folder_that_is_not_there_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ExportRefused, match="could not be written"):
        write_calendar(tmp_path / "none" / "due.ics", [], shop_id="s", shop="s", program="p", at=AT)
