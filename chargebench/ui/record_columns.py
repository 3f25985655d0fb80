"""Columns of the Records area's views: usage, totals, flags, leak rates, entries."""

from collections.abc import Callable, Container, Mapping, Sequence
from datetime import date

from chargebench import sources
from chargebench.desk import Desk, DueLine, LeakRateLine, UsageRow, UsageTotal
from chargebench.flags import Flag
from chargebench.ledger import Entry
from chargebench.reports import UnaccountedLine
from chargebench.reports.dated import DONE
from chargebench.steps import REGISTERS, STEPS
from chargebench.ui.rowtable import Column
from chargebench.ui.stock_words import (
    Places,
    day,
    due_shape,
    due_words,
    kind_words,
    mass,
    moment,
    moved_words,
    numbered,
)
from chargebench.words import joined, say


def people(desk: Desk) -> Mapping[str, str]:
    """Names of people by id."""
    return {key: row.get("name", key) for key, row in desk.rows("person").items()}


def usage_columns(desk: Desk) -> Sequence[Column[UsageRow]]:
    """Usage log: every mass line."""
    places, names, system = Places(desk), people(desk), desk.units
    return (
        Column("When", lambda row: moment(row.happened_at)),
        Column("What", lambda row: _usage_kind(row)),
        Column("Mass", lambda row: mass(row.mass_mg, system), right=True),
        Column("Refrigerant", lambda row: row.refrigerant),
        Column("From", lambda row: places.words(row.source), least=5),
        Column("To", lambda row: places.words(row.target), least=5),
        Column("As typed", lambda row: row.as_typed, least=12),
        Column("Job", lambda row: row.job_number or ""),
        Column("By", lambda row: names.get(row.by, row.by), gives_way=2),
        Column("Entry", lambda row: numbered(desk, row), right=True, gives_way=1),
    )


def _usage_kind(row: UsageRow) -> str:
    what = moved_words(row.kind, row.source, row.target, row.as_typed)
    return say("{what}, reversed", what=what) if struck(row) else what


def struck(row: UsageRow) -> bool:
    """Whether a mass line was taken back; its reversal, which counts for nothing too, stands."""
    return row.reversed and row.kind != "reversal"


def total_columns(desk: Desk) -> Sequence[Column[UsageTotal]]:
    """Totals of the period, one row a refrigerant."""
    system = desk.units
    return (
        Column("Totals", lambda row: row.refrigerant, least=4),
        Column("Received", lambda row: mass(row.received_mg, system), right=True),
        Column("Charged", lambda row: mass(row.charged_mg, system), right=True),
        Column("Recovered", lambda row: mass(row.recovered_mg, system), right=True),
        Column("Released or lost", lambda row: mass(row.released_mg, system), right=True),
        Column("Returned", lambda row: mass(row.returned_mg, system), right=True),
        Column("Differences", lambda row: mass(row.difference_mg, system), right=True),
    )


def unaccounted_columns(desk: Desk) -> Sequence[Column[UnaccountedLine]]:
    """What nobody can account for, by refrigerant, against what was charged."""

    def figure(head: str, milligrams: Callable[[UnaccountedLine], int]) -> Column[UnaccountedLine]:
        return Column(head, lambda line: mass(milligrams(line), desk.units), right=True)

    return (
        Column("Refrigerant", lambda line: line.refrigerant, least=4),
        figure("Unaccounted", lambda line: line.unaccounted_mg),
        Column(
            "of what was charged",
            lambda line: "" if line.share is None else f"{100 * line.share:.1f} %",
            right=True,
        ),
        figure("Found missing", lambda line: line.missing_mg),
        figure("Found over", lambda line: line.over_mg),
        figure("Presumed lost", lambda line: line.lost_mg),
        figure("Charged", lambda line: line.used_mg),
        figure("Released where allowed", lambda line: line.released_mg),
        figure("Left in hoses", lambda line: line.hoses_mg),
    )


def flag_columns() -> Sequence[Column[Flag]]:
    """Flags, worst first."""
    return (
        Column("Level", lambda flag: flag.level.upper(), shape=lambda flag: flag.level),
        Column("What, by how much, what to do", lambda flag: flag.says, least=24),
        Column("Source", lambda flag: sources.said(flag.source, flag.mark), least=10),
    )


def leak_columns(desk: Desk) -> Sequence[Column[LeakRateLine]]:
    """Leak rates against their thresholds, with what is due."""
    system = desk.units
    return (
        Column("Equipment", lambda row: f"{row.equipment_id} {row.name}", least=7),
        Column("Refrigerant", lambda row: row.refrigerant),
        Column("Stands", _stands, shape=lambda row: "stop" if row.over and row.waiting else ""),
        Column(
            "Due",
            lambda row: _next_due(row, desk),
            shape=lambda row: due_shape(row.due[0][1], desk.today) if row.due else "",
        ),
        Column("Annualizing", lambda row: _percent(row.annualizing_pct), right=True, gives_way=2),
        Column("Rolling", lambda row: _percent(row.rolling_pct), right=True, gives_way=1),
        Column("Threshold", lambda row: _percent(row.threshold_pct), right=True, gives_way=3),
        Column(
            "Full charge", lambda row: mass(row.full_charge_mg, system), right=True, gives_way=4
        ),
        Column("Last added", lambda row: day(row.added_on) if row.added_on else "", gives_way=6),
        Column("Under", lambda row: row.regulation, gives_way=5),
        Column("Counts", lambda row: row.method if row.regulation else "", gives_way=7),
    )


def _percent(rate: float | None) -> str:
    return "" if rate is None else f"{rate:.1f} %"


def _stands(row: LeakRateLine) -> str:
    if row.over:
        return "over" if row.waiting else "over, seen to"
    if row.threshold_pct is None:
        return "no threshold"
    if row.rate_pct is None:
        return "nothing added"
    return "not over"


def _next_due(row: LeakRateLine, desk: Desk) -> str:
    return (
        say("{due} {due_words}", due=row.due[0][0], due_words=due_words(row.due[0][1], desk.today))
        if row.due
        else ""
    )


def leak_words(row: LeakRateLine, desk: Desk) -> str:
    """Everything due of an equipment, what ended, and what was added, as a sentence each."""
    system = desk.units
    added = joined(
        "; ", (say("{mg} on {on}", mg=mass(mg, system), on=day(on)) for on, mg in row.additions)
    )
    due = joined("; ", (say("{what} by {on}", what=what, on=day(on)) for what, on in row.due))
    ended = [
        say("{what} by {how} on {done_on}", what=each.what, how=each.how, done_on=day(each.done_on))
        for one in row.computed
        for each in one.duties
        if each.done_on is not None and one.on == row.added_on
    ]
    says = [f"{row.equipment_id} {row.name}."]
    if not row.regulation:
        says.append("No leak repair regulation binds it.")
    else:
        says.append(say("Added: {added}.", added=added) if added else "Nothing added yet.")
    says += (
        [say("{co2e_t:.1f} t CO2 equivalent.", co2e_t=row.co2e_t)] if row.co2e_t is not None else []
    )
    says += [say("Due: {due}.", due=due)] if due else []
    says += [say("Ended: {ended}.", ended="; ".join(ended))] if ended else []
    says += [say("Judged by {called}.", called=desk.rule_set.called)]
    return joined(" ", says)


def due_columns(desk: Desk) -> Sequence[Column[DueLine]]:
    """What falls due, by day, with the rule that asks for it."""
    today = desk.today
    return (
        Column("Due", lambda row: day(row.on)),
        Column(
            "Stands",
            lambda row: (
                say("done {done_on}", done_on=day(row.done_on))
                if row.done_on
                else _left(row, today)
            ),
            shape=lambda row: "" if row.state == DONE else due_shape(row.on, today),
        ),
        Column("What", lambda row: row.what, least=12),
        Column("About", lambda row: f"{row.about.partition(':')[2]} {row.name}", least=12),
        Column("Rule", lambda row: _rule(row), gives_way=2),
        Column("From", lambda row: day(row.start) if row.start else "", gives_way=3),
        Column("Entries", lambda row: joined(", ", map(str, row.entries)), gives_way=1),
    )


def _left(row: DueLine, today: date) -> str:
    if row.state == DONE:
        return "kept long enough"
    return due_words(row.on, today).partition(",")[0]  # its day stands beside it


def _rule(row: DueLine) -> str:
    if row.source == "register":
        return "as entered"
    figure = say("{figure}, ", figure=row.figure) if row.figure else ""
    return f"{figure}{sources.said(row.source, row.mark)}"


def duty_words(row: DueLine) -> str:
    """All that is known of one thing owed, as a sentence each."""
    says = [
        say(
            "{capitalize}: {name}, by {on}.",
            capitalize=row.what.capitalize(),
            name=row.name,
            on=day(row.on),
        )
    ]
    if row.start is not None and row.figure:
        says.append(say("{figure} from {start}.", figure=row.figure, start=day(row.start)))
    if row.extended_to is not None:
        says.append(
            say("Put off to {extended_to}: {how}.", extended_to=day(row.extended_to), how=row.how)
        )
    if row.entries:
        says.append(say("Worked out from entries {map}.", map=", ".join(map(str, row.entries))))
    if row.done_on is not None:
        ended = (
            say(", entries {map}", map=", ".join(map(str, row.ended_by))) if row.ended_by else ""
        )
        says.append(
            say(
                "Ended on {done_on}: {how}{ended}.",
                done_on=day(row.done_on),
                how=row.how or "recorded",
                ended=ended,
            )
        )
    says.append(say("Source: {rule}.", rule=_rule(row)))
    return joined(" ", says)


def due_order(rows: Sequence[DueLine]) -> list[DueLine]:
    """What still stands first, the most pressing on top; what is done after it, newest first."""
    standing = [row for row in rows if row.state != DONE]
    done = [row for row in rows if row.state == DONE]
    return standing + done[::-1]


def entry_columns(desk: Desk, undone: Container[str] = ()) -> Sequence[Column[Entry]]:
    """Entries, newest first; `undone` has the ids of those taken back."""
    names = people(desk)
    return (
        Column("Entry", lambda entry: numbered(desk, entry), right=True),
        Column(
            "What",
            lambda entry: kind_words(entry.kind) + (", reversed" if entry.id in undone else ""),
        ),
        Column("About", _about, least=9),
        Column("Happened", lambda entry: moment(entry.happened_at)),
        Column("Recorded", lambda entry: moment(entry.recorded_at), gives_way=2),
        Column("By", lambda entry: names.get(entry.by, entry.by)),
        Column("Rules", lambda entry: str(entry.payload.get("rule_set", ""))),
        Column("Hash, first digits", lambda entry: entry.hash[:12], gives_way=1),
    )


def _about(entry: Entry) -> str:
    """What an entry is about, from its payload: the step, the register row, the cylinders."""
    payload = entry.payload
    step, register = payload.get("step"), payload.get("register")
    if isinstance(step, str) and step in STEPS:
        return STEPS[step].title
    if isinstance(register, str) and register in REGISTERS:
        return say(
            "{title} {id}", title=REGISTERS[register].title.lower(), id=payload.get("id", "")
        ).strip()
    places = payload.get("places")
    if isinstance(places, list):
        return joined(", ", (str(place).partition(":")[2] for place in places))
    keys = ("file", "equipment", "reason", "bench")
    return str(next((payload[key] for key in keys if key in payload), ""))
