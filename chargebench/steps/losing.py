"""Loss reasoning: how fast it went if it leaked, who could have seen that, when it runs short."""

from chargebench.calc import leak_search, loss
from chargebench.calc.leak_flow import FlowRange
from chargebench.calc.leak_search import DetectorWord
from chargebench.calc.loss import AverageLoss, Search
from chargebench.calc.pressure_test import PressureWord
from chargebench.steps import pressure_test, recovery, weigh_in
from chargebench.steps.case import NOT_WORKED, Case, Cell, Figure, Table, Worked
from chargebench.steps.form import NOTHING
from chargebench.steps.pressure_test import flow_text
from chargebench.units import Quantity, System, from_mg
from chargebench.words import say

_DECAY_CAN_NOT = (
    "under vacuum air leaks in, by at most the air's pressure, past dried or frozen spots; a rise "
    "is never turned into grams a year"
)


def average_loss(case: Case) -> AverageLoss | None:
    """Loss since it was last known full, once a recovery has been weighed."""
    last_full = case.step("nameplate").date("last_known_full")
    taken = recovery.work_out(case).result
    lines = case.step("recovery").lines("lines")
    weighed = any(recovery.line_mg(line) is not None for line in lines)
    if last_full is None or last_full > case.today or not weighed:
        return None
    if not isinstance(taken, recovery.Recovered) or taken.nameplate_mg is None:
        return None
    return loss.average_loss(
        nameplate=from_mg(taken.nameplate_mg),
        recovered=from_mg(taken.taken_mg),
        uncertainty=from_mg(taken.doubt_mg) / 2,
        last_full=last_full,
        on=case.today,
    )


def work_out(case: Case) -> Worked:
    """Average loss with its doubt, what each search could have seen, when it runs short."""
    missing = average_loss(case)
    if missing is None:
        return NOT_WORKED
    searches = _searches(case)
    seen = loss.could_have_seen(missing, searches, case.units)
    rows = tuple(
        (Cell(search.name), Cell(_sees(search, case.units)), Cell(str(one.word), why=one.reason))
        for search, one in zip(searches, seen, strict=True)
    )
    heads = ("Search without a find", "Sees from", "This loss")
    tables = (Table("searches", "Could it have been seen?", heads, rows),) if rows else ()
    return Worked(tuple(_figures(case, missing)), loss.explanations(missing, seen), missing, tables)


def _figures(case: Case, missing: AverageLoss) -> list[Figure]:
    figures = [
        Figure("missing", "Missing since last full", missing.missing, missing.missing_uncertainty)
    ]
    if missing.rate is None or missing.rate_uncertainty is None:
        return figures
    figures.append(
        Figure(
            "loss",
            say("Average loss over {days} days", days=missing.days),
            missing.rate,
            missing.rate_uncertainty,
            source="JCGM100, 5.1.2",
        )
    )
    if missing.word is not loss.MissingWord.MISSING:
        return figures
    figures += [
        Figure(
            f"short-{each.share}",
            say("{share} % short, if it goes on", share=each.share),
            _when(each),
        )
        for each in loss.short_dates(
            content=_content(case),
            nameplate=case.nameplate("charge").quantity,
            rate=missing.rate,
            rate_uncertainty=missing.rate_uncertainty,
            on=case.today,
        )
    ]
    return figures


def _when(short: loss.ShortDate) -> str:
    if short.expected is None:
        return "not within reckoning"
    earliest = (
        say(", at the earliest {earliest}", earliest=str(short.earliest))
        if short.earliest is not None
        else ""
    )
    return f"{short.expected}{earliest}"


def _content(case: Case) -> Quantity:
    """What is in it now: as weighed in, else as the ledger has it, else the nameplate's."""
    charged = weigh_in.work_out(case).result
    if isinstance(charged, weigh_in.WeighedIn) and charged.verdict is not None:
        assert charged.total is not None
        return charged.total
    if case.is_signed("weigh_in"):
        return from_mg(case.equipment_content_mg)
    full: Quantity = case.nameplate("charge").quantity
    return full


def _searches(case: Case) -> list[Search]:
    """The searches that found nothing."""
    found: list[Search] = []
    answers = case.step("leak_search")
    if answers.text("method") and not answers.lines("leaks"):
        detector = case.instruments.get(answers.text("detector"), NOTHING)
        check = leak_search.detector_check(
            before=answers.yes("checked_before"), after=answers.yes("checked_after")
        )
        void = check.reason.rstrip(".") if check.word is not DetectorWord.COUNTS else ""
        found.append(Search(answers.text("method"), detector.quantity("sensitivity"), void=void))
    tested = pressure_test.work_out(case).result
    if isinstance(tested, pressure_test.PressureTested) and (
        tested.verdict.word is PressureWord.HOLDS
    ):
        found.append(_by_pressure(tested))
    if case.step("evacuation").lines("decay"):
        found.append(Search("decay test", None, void=_DECAY_CAN_NOT))
    return found


def _by_pressure(tested: pressure_test.PressureTested) -> Search:
    """A standing pressure test: nitrogen's smallest leak as refrigerant."""
    if tested.seen is None:
        return Search("pressure test", None)
    return Search("pressure test", tested.seen.lower, tested.seen.upper)


def _sees(search: Search, system: System) -> str | Quantity:
    if search.void:
        return "does not count"
    if search.smallest is None:
        return "not known"
    if search.smallest_upper is None:
        return search.smallest
    return flow_text(FlowRange(search.smallest, search.smallest_upper), system)
