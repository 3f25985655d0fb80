"""What a job report says of a job's steps, as rows of label, value and what it rests on."""

from collections.abc import Iterator
from datetime import datetime
from itertools import groupby

from chargebench.flags import class_words
from chargebench.reports.checklist_facts import charge_words, figure_row
from chargebench.reports.content import JobRecord, StepRecord
from chargebench.reports.letterhead import Letterhead, joined
from chargebench.reports.page import Fact
from chargebench.steps import STEPS, Answers, Case

WORK = ("safety", "leak_search", "pressure_test", "recovery", "evacuation", "weigh_in", "close")
_SHOWN_ELSEWHERE = ("evidence", "budget-", "beside")


def what(job: JobRecord) -> list[Fact]:
    """The equipment: what it is, whose, where, and what it holds."""
    case = job.case
    row, site, kind = case.equipment, case.site, case.refrigerant
    said = f"{kind.name}, {class_words(kind.safety_class)}" if kind else "not recorded"
    plate = case.step("nameplate")
    serial = plate.text("serial") or row.text("serial")
    rows = [
        ("Customer", site.text("owner_operator") or site.text("name"), ""),
        ("Site", joined(site.text("name"), site.text("address")), ""),
        ("Equipment", joined(case.equipment_id, row.text("name"), row.text("circuit")), ""),
        ("Make, model", joined(row.text("make"), plate.text("model") or row.text("model")), ""),
        ("Serial number", serial, ""),
        ("Refrigerant", said, ""),
        ("Nameplate charge", charge_words(case, case.nameplate("charge")), ""),
    ]
    return [row for row in rows if row[1]]


def who(letterhead: Letterhead, job: JobRecord) -> list[Fact]:
    """The visit: who came, when, under which rules, with which claim numbers."""
    time = job.counts("time_and_parts")
    by = next((each.by for each in job.steps if not each.reversed), job.by)
    calls = job.counts("support")
    numbers = [line.text("number") for line in calls.answers.lines("calls")] if calls else []
    ended = f"{job.closed_at:%Y-%m-%d %H:%M}" if job.closed_at else "still open"
    rows = [
        ("Technician", joined(by, letterhead.certificate(by)), ""),
        ("Called for", job.reason, ""),
        ("Job opened", f"{job.opened_at:%Y-%m-%d %H:%M}", ""),
        ("Job closed", ended, ""),
        ("On site", _hours(time.answers) if time else "", ""),
        ("Claim numbers", joined(*dict.fromkeys(numbers)), ""),
        ("Judged by", job.case.rule_set.called, ""),
    ]
    return [row for row in rows if row[1]]


def _hours(answers: Answers) -> str:
    arrived, left = (answers.values.get(key) for key in ("arrived", "left"))
    travel = answers.reading("travel")
    parts = []
    if isinstance(arrived, datetime) and isinstance(left, datetime):
        parts.append(f"{arrived:%Y-%m-%d %H:%M} to {left:%H:%M}")
    elif isinstance(arrived, datetime):
        parts.append(f"from {arrived:%Y-%m-%d %H:%M}")
    if travel is not None:
        parts.append(f"travel {travel.text}")
    return joined(*parts)


def found(job: JobRecord) -> list[Fact]:
    """Complaint, finding, cause and what was done, in the technician's words."""
    plate, findings = job.counts("nameplate"), job.counts("findings")
    rows = [("Complaint", plate.answers.text("complaint") if plate else "", "")]
    if findings is not None:
        said = findings.answers
        labels = {"work": "Kind of work", "found": "Found", "cause": "Cause", "done": "Done"}
        rows += [(label, said.text(key), "") for key, label in labels.items()]
        rows += [
            (
                f"Set: {line.text('what')}",
                f"{line.text('before')} → {line.text('after')}",
                line.text("why"),
            )
            for line in said.lines("settings")
        ]
    return [row for row in rows if row[1]]


def worked(job: JobRecord, step: str) -> Fact | None:
    """One step in a row: what it came to, and under it its figures; or why it was set aside."""
    title, record = STEPS[step].title, job.counts(step)
    if reason := job.set_aside(step):
        return title, f"not needed: {reason}", ""
    if record is None:
        return None
    case = job.case
    details = {"leak_search": _searched, "recovery": _weighed, "weigh_in": _weighed, "close": _left}
    said = [*(details[step](case, record) if step in details else ()), *record.worked.sentences]
    if step == "safety":
        said.append(ticked(job))
    figures = [
        f"{label}: {value}"
        for label, value, _ in (
            figure_row(case, each)
            for each in record.worked.figures
            if not each.key.startswith(_SHOWN_ELSEWHERE)
        )
    ]
    remarks = record.answers.text("remarks")
    return title, " ".join(part for part in (*said, remarks) if part), ";  ".join(figures)


def _searched(case: Case, record: StepRecord) -> Iterator[str]:
    given = record.answers
    detector = _named(case, given.text("detector"))
    yield joined(given.text("method"), detector).capitalize() + "."
    for line in given.lines("leaks"):
        tight = {True: "verified tight", False: "NOT tight", None: ""}[line.yes("verified")]
        yield f"Leak at {joined(line.text('where'), line.text('repair'), tight)}."
    if not given.lines("leaks"):
        yield "No leak found."
    for line in given.lines("tests"):
        on = line.date("on")
        what = f"{line.text('kind')} test {on} of {line.text('where')}"
        yield f"{what.capitalize()}: {line.text('result')}."


def _weighed(case: Case, record: StepRecord) -> Iterator[str]:
    keys = ("before", "after") if record.step == "recovery" else ("start", "end")
    for line in record.answers.lines("lines"):
        before, after = (line.reading(key) for key in keys)
        if before is not None and after is not None:
            scale = _named(case, line.text("scale"))
            yield f"{line.text('cylinder')} on {scale}: {before.text} → {after.text}."


def _left(_: Case, record: StepRecord) -> Iterator[str]:
    given = record.answers
    yield f"{given.text('ends').capitalize()}."
    said = {"resealed": "Resealed", "leak_checked": "leak checked before leaving"}
    said["labels"] = "labels and markings in place"
    for key, words in said.items():
        if (answered := given.yes(key)) is not None:
            yield f"{words.capitalize()}: {'yes' if answered else 'NO'}."
    yield given.text("disposal")


def _named(case: Case, instrument: str) -> str:
    row = case.instruments.get(instrument)
    return f"{instrument} {row.text('name')}".strip() if row is not None else instrument


def ticked(job: JobRecord) -> str:
    """How much of the handling checklist is ticked."""
    due = [tick for tick in job.checklist if not job.set_aside(tick.line.step)]
    missing = sum(not tick.by for tick in due)
    return f"Handling checklist: {len(due) - missing} of {len(due)} lines ticked." if due else ""


def follow_up(job: JobRecord) -> list[Fact]:
    """What is to be looked at again, and how it turned out."""
    record = job.counts("follow_up")
    if record is None:
        return []
    given = record.answers
    due, done = given.date("due"), given.date("done_on")
    rows = [
        ("To look at", given.text("what"), ""),
        ("Due on", f"{due}" if due else "", ""),
        ("Looked at on", f"{done}" if done else "", ""),
        ("Result", given.text("result"), ""),
    ]
    return [row for row in rows if row[1]]


def signed(letterhead: Letterhead, job: JobRecord) -> str:
    """Which steps were signed by whom, with the numbers of their entries; which are still open."""
    standing = sorted(
        (each for each in job.steps if not each.reversed), key=lambda each: (each.by, each.number)
    )
    says = []
    for by, records in groupby(standing, key=lambda each: each.by):
        steps = ", ".join(f"{STEPS[each.step].title} ({each.number})" for each in records)
        says.append(f"{joined(by, letterhead.certificate(by))}: {steps}.")
    known = {each.step for each in standing} | {"follow_up"}
    if waiting := [form.title for key, form in STEPS.items() if key not in known]:
        says.append(f"Not signed yet: {', '.join(waiting)}.")
    undone = [each for each in job.steps if each.reversed]
    says += [
        f"Taken back: {STEPS[each.step].title} ({each.number}), {each.reversed}." for each in undone
    ]
    return " ".join(says)
