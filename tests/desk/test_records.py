"""Usage and totals, leak rates against the rule's formulas, flags of the whole shop."""

from datetime import date
from typing import Any

import pytest

from chargebench.desk import Desk, Filters, LeakRateLine
from tests.desk import shops
from tests.desk.shops import at

FULL = "brought to full charge"
POUND_MG = 453_592.37  # NIST SP 811, B.8


@pytest.fixture
def stocked(desk: Desk) -> Desk:
    """The shop with refrigerant for its walk-in."""
    desk.act("receive", {"cylinder": "C-003", "mass": "200 lb"}, at("2026-01-05"))
    return desk


def add(desk: Desk, pounds: float, day: str, equipment: str = "E-002", **weigh_in: str) -> str:
    """A job that tops the walk-in up; its id."""
    job = desk.open_job(equipment, happened_at=at(day, "08:00"))
    typed = shops.weigh_in(0, "C-003", FULL) | weigh_in
    typed["lines"][0] |= {"end": f"-{pounds} lb"}
    desk.sign(job, "weigh_in", typed, at(day))
    return job


def rate(desk: Desk, equipment: str = "E-002") -> LeakRateLine:
    (line,) = (each for each in desk.leak_rates() if each.equipment_id == equipment)
    return line


def register(desk: Desk, **changes: str) -> None:
    desk.save_row("equipment", "E-002", shops.WALK_IN | changes)


def test_that_usage_is_listed_newest_first_with_both_ends(stocked: Desk) -> None:
    job = add(stocked, 2, "2026-03-01")
    newest, oldest = stocked.usage()
    assert (newest.source, newest.target) == ("cylinder:C-003", "equipment:E-002")
    assert (newest.job, newest.as_typed) == (job, "0 g → -2 lb")
    assert newest.mass_mg == round(2 * POUND_MG)
    assert (oldest.source, oldest.target) == ("supplier", "cylinder:C-003")
    (page,) = stocked.usage(before=newest.key, limit=1)
    assert page == oldest


def test_that_the_last_day_of_a_period_is_in_it(stocked: Desk) -> None:
    add(stocked, 2, "2026-03-01")
    march = date(2026, 3, 1)
    assert [row.kind for row in stocked.usage(march, march)] == ["step-signed"]
    assert [row.kind for row in stocked.usage(until=date(2026, 2, 28))] == ["received"]
    assert stocked.usage(since=date(2026, 3, 3)) in ([], ())


def test_that_usage_is_narrowed_by_what_is_asked(stocked: Desk) -> None:
    shops.receive(stocked)
    add(stocked, 2, "2026-03-01")
    for filters, count in (
        (Filters(refrigerant="R290"), 1),
        (Filters(refrigerant="R449A"), 2),
        (Filters(equipment="E-002"), 1),
        (Filters(by="P-02"), 0),
    ):
        assert len(stocked.usage(filters=filters)) == count


def test_that_totals_stand_by_refrigerant_and_way(desk: Desk) -> None:
    shops.receive(desk, "400 g")
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", shops.NAMEPLATE)
    desk.sign(job, "recovery", shops.recovery(60))
    desk.sign(job, "evacuation", {"pulled_to": "300 micron"})  # 40 g presumed lost
    desk.sign(job, "weigh_in", shops.weigh_in(99))
    desk.act("return", {"cylinder": "C-002", "to": "reclaimer", "mass": "50 g"})
    desk.act("weigh", {"cylinder": "C-001", "scale": "I-001", "gross": "3900 g", "accept": "yes"})
    (total,) = desk.usage_totals()
    assert total.refrigerant == "R290"
    assert (total.received_mg, total.recovered_mg, total.charged_mg) == (400_000, 60_000, 99_000)
    assert (total.released_mg, total.returned_mg) == (40_000, 50_000)
    assert abs(total.difference_mg) == 1_000  # 301 g by the book, 300 g on the scale


def test_that_what_was_taken_back_counts_for_nothing(stocked: Desk) -> None:
    job = add(stocked, 5, "2026-03-01")
    step = next(step for step in stocked.job(job).steps if step.key == "weigh_in")
    stocked.reverse(step.entry, "another equipment")
    (total,) = stocked.usage_totals()
    assert total.charged_mg == 0
    assert rate(stocked).annualizing_pct is None


# 40 CFR 84.106(a): 15 lb and more of an HFC, or of a substitute with a GWP over 53; 82.157(a):
# 50 lb and more of an ozone-depleting refrigerant.
@pytest.mark.parametrize(
    ("refrigerant", "charge", "regulation"),
    [
        ("R449A", "15 lb", "84.106"),
        ("R449A", "14.99 lb", ""),
        ("R449A", "6.8038855 kg", "84.106"),
        ("R290", "60 lb", ""),
        ("R22", "50 lb", "82.157"),
        ("R22", "49.9 lb", ""),
    ],
)
def test_that_a_regulation_binds_from_its_charge(
    desk: Desk, refrigerant: str, charge: str, regulation: str
) -> None:
    register(desk, refrigerant=refrigerant, charge=charge)
    assert rate(desk).regulation == regulation


# 40 CFR 84.106(c): commercial 20, industrial process 30, all others 10 per cent.
@pytest.mark.parametrize(
    ("category", "threshold"),
    [("commercial refrigeration", 20), ("industrial process", 30), ("comfort cooling", 10),
     ("refrigerated transport", 10), ("other", 10)],
)  # fmt: skip
def test_that_the_threshold_is_that_of_the_category(
    desk: Desk, category: str, threshold: float
) -> None:
    register(desk, category=category)
    assert rate(desk).threshold_pct == threshold


@pytest.mark.parametrize(("pounds", "over"), [(4, False), (4.01, True)])
def test_that_a_rate_is_over_only_above_its_threshold(
    stocked: Desk, pounds: float, over: bool
) -> None:
    # First computation under 84.106: 365 days. 4 lb of 20 lb are 20 %, at the threshold.
    add(stocked, pounds, "2026-03-01")
    line = rate(stocked)
    assert line.annualizing_pct == pytest.approx(100 * pounds / 20, abs=1e-4)
    assert line.rolling_pct == pytest.approx(100 * pounds / 20, abs=1e-4)
    assert line.over is over
    assert bool(line.due) is over


def test_that_a_second_addition_is_annualized_by_its_days(stocked: Desk) -> None:
    add(stocked, 1, "2026-03-01")
    add(stocked, 2, "2026-05-13")  # 73 days later
    line = rate(stocked)
    # 100 x (2 / 20) / (73 / 365) = 50 %; rolling 100 x 3 / 20 = 15 % (40 CFR 82.152).
    assert line.annualizing_pct == pytest.approx(50, abs=1e-3)
    assert line.rolling_pct == pytest.approx(15, abs=1e-3)
    assert (line.over, line.added_on) == (True, date(2026, 5, 13))
    # 30 days for the repair, 10 more for the follow-up test (84.106(d), (e)).
    assert dict(line.due)["repair"] == date(2026, 6, 12)
    assert dict(line.due)["follow-up verification test"] == date(2026, 6, 22)
    (flag,) = (each for each in stocked.all_flags() if each.key == "leak-rate-over")
    assert flag.says.startswith("Walk-in leaks 50.0 % a year, over the threshold of 20 %.")
    assert flag.says.endswith("Overdue since 2026-06-12: repair.")


def test_that_additions_of_one_day_are_one(stocked: Desk) -> None:
    add(stocked, 1, "2026-03-01")
    add(stocked, 1.5, "2026-03-01")
    line = rate(stocked)
    assert line.annualizing_pct == pytest.approx(12.5, abs=1e-3)


def test_that_putting_back_what_was_taken_out_is_no_leak(stocked: Desk) -> None:
    stocked.act("receive", {"cylinder": "C-009", "mass": "1 g"}, at("2026-02-01"))
    job = stocked.open_job("E-002", happened_at=at("2026-03-01"))
    taken = shops.recovery(0, "C-009")
    taken["lines"][0] |= {"after": "5 lb"}
    stocked.sign(job, "recovery", taken, at("2026-03-01"))
    back = shops.weigh_in(0, "C-003", "part of a charge")
    back["lines"][0] |= {"end": "-6 lb"}
    stocked.sign(job, "weigh_in", back, at("2026-03-01"))
    # 6 lb in, 5 lb out: 1 lb of 20 lb.
    assert rate(stocked).rolling_pct == pytest.approx(5, abs=1e-3)


def test_that_a_new_installation_is_not_counted(stocked: Desk) -> None:
    add(stocked, 20, "2026-03-01", not_counted="new installation")
    line = rate(stocked)
    assert (line.rolling_pct, line.over) == (None, False)


@pytest.mark.parametrize("changes", [{"retired": "2026-06-01"}])
def test_that_a_retired_equipment_has_no_rate(stocked: Desk, changes: dict[str, str]) -> None:
    add(stocked, 10, "2026-03-01")
    register(stocked, **changes)
    assert [each.equipment_id for each in stocked.leak_rates()] == ["E-001"]


def test_that_an_excluded_subsector_is_not_bound(desk: Desk) -> None:
    register(desk, subsector_excluded="yes")
    assert rate(desk).regulation == ""


def test_that_the_shops_flags_name_their_job(desk: Desk) -> None:
    shops.receive(desk)
    job = desk.open_job("E-001")
    desk.sign(job, "weigh_in", shops.weigh_in(110))
    over = next(flag for flag in desk.all_flags() if flag.key == "over-nameplate")
    assert over.says.startswith("B-0001: Over nameplate by 10.0 g (±0.1 g)")
    assert over.about == "job:B-0001, step:weigh_in"
    levels: list[Any] = [flag.level for flag in desk.all_flags()]
    assert levels == sorted(levels, key=["stop", "check", "note"].index)


def test_that_a_sound_shop_verifies_and_is_backed_up(desk: Desk) -> None:
    shops.receive(desk)
    found = desk.verify()
    assert (found.ok, found.problems) == (True, ())
    copy = desk.backup()
    assert copy is not None
    with Desk.open_reading(copy) as kept:
        assert kept.reading.head() == desk.reading.head()
    assert desk.backup() is None  # nothing has changed since


def test_that_duties_stand_after_a_smaller_addition(stocked: Desk) -> None:
    add(stocked, 5, "2026-03-01")  # 25 %, over 20
    add(stocked, 0.1, "2026-09-01")  # 184 days later: 1 % by annualizing
    line = rate(stocked)
    # Rolling: 5.1 of 20 lb within 365 days, 25.5 %: the newest addition is over by that method.
    assert (line.over, line.added_on) == (True, date(2026, 9, 1))
    assert line.rolling_pct == pytest.approx(25.5, abs=1e-3)
