"""Flags of cylinders, of stock work, and of an equipment's leak rate."""

from datetime import date

import pytest

from chargebench import flags
from chargebench.flags import Flag
from chargebench.steps import STOCK, Typed, answer, stock
from tests.steps.cases import CYLINDERS, INSTRUMENTS, TODAY, row, rule_set_of

FEDERAL = rule_set_of("us-federal")
ROW = CYLINDERS["C-015"]  # tare 8 kg, water capacity 10 kg: 3.95 kg of R290


def cylinder(typed: dict[str, str] | None = None, **held_mg: int) -> dict[str, Flag]:
    found = flags.of_cylinder(
        "C-015", row("cylinder", ROW | (typed or {})), held_mg, FEDERAL, TODAY
    )
    assert len({flag.key for flag in found}) == len(found)
    return {flag.key: flag for flag in found}


def test_that_a_cylinder_in_order_raises_nothing() -> None:
    assert cylinder(R290=3_940_000) == {}
    assert cylinder() == {}
    assert cylinder(R290=0, R600a=0) == {}


def test_that_a_balance_below_zero_asks_for_the_scale() -> None:
    assert cylinder(R290=0) == {}
    flag = cylinder(R290=-1_500)["balance-below-zero"]
    assert flag.says == (
        "C-015 stands at \u22121.5 g of R290 by the book. Put it on the scale and book the "
        "difference."
    )
    assert (flag.level, flag.figure, flag.limit) == ("check", "\u22121.5 g", "0 g")


# 0.80 x 10 kg x 0.494 (propane at 25 °C, CoolProp 8.0.0, COMPUTED).
@pytest.mark.parametrize(("held", "over"), [(3_940_000, False), (3_960_000, True)])
def test_that_more_than_the_fill_limit_is_flagged(held: int, over: bool) -> None:
    found = cylinder(R290=held)
    assert ("cylinder-overfilled" in found) is over
    if over:
        flag = found["cylinder-overfilled"]
        assert flag.says.startswith("C-015 would hold 3.960 kg, over its limit of 3.951 kg (80 %")
        assert (flag.level, flag.source) == ("stop", "AHRI-K")


def test_that_a_mixture_is_flagged_but_in_mixed_waste() -> None:
    flag = cylinder(R290=1_000_000, R600a=1)["wrong-refrigerant"]
    assert flag.says == (
        "C-015 is registered for R290 and holds R290, R600a. Do not use it; return it as a mixture."
    )
    assert flag.level == "stop"
    assert "wrong-refrigerant" in cylinder(R600a=1)
    assert "wrong-refrigerant" not in cylinder({"contents": "mixed waste"}, R290=5, R600a=1)


@pytest.mark.parametrize(
    ("due", "refillable", "raises"),
    [
        ("2026-03-02", "yes", False),  # today still counts (49 CFR 180.205(c))
        ("2026-03-01", "yes", True),
        ("", "yes", True),
        ("2026-03-01", "no", False),  # it is never filled again
    ],
)
def test_that_requalification_is_due_the_day_after_its_date(
    due: str, refillable: str, raises: bool
) -> None:
    found = cylinder({"requalification_due": due, "refillable": refillable})
    assert ("requalification-due" in found) is raises


# 49 CFR 180.209(c): 5 per cent of the tare; 8 kg stamped, so from 7.6 kg down.
@pytest.mark.parametrize(
    ("typed", "raises"),
    [
        ({"tare_found": "7.601 kg"}, False),
        ({"tare_found": "7.6 kg"}, True),
        ({"tare_found": "8.1 kg"}, False),
        ({"tare_found": "7 kg", "tare": ""}, False),
        ({"tare_found": "7 kg", "tare": "0 kg"}, False),
    ],
)
def test_that_a_lost_tare_bars_filling(typed: dict[str, str], raises: bool) -> None:
    found = cylinder(typed)
    assert ("tare-loss" in found) is raises
    if raises:
        flag = found["tare-loss"]
        assert flag.says.startswith("C-015 lost 5.0 % of its stamped tare. Requalify it")
        assert (flag.level, flag.figure) == ("stop", "5.0 %")


SHELF = stock.Shelf(
    cylinders={key: row("cylinder", typed) for key, typed in CYLINDERS.items()},
    contents_mg={"C-015": {"R290": 1_000_000}},
    instruments={key: row("instrument", typed) for key, typed in INSTRUMENTS.items()},
    rule_set=FEDERAL,
)


def act(name: str, typed: Typed) -> tuple[Flag, ...]:
    answers = answer(STOCK[name], typed)
    return flags.of_stock(name, answers, SHELF, stock.work_out(name, answers, SHELF))


# 1 kg in 8 kg of tare: tolerance 0.5 % of the reading (HVACLAB), so 45 g at 9 kg.
@pytest.mark.parametrize(
    ("gross", "words"),
    [
        ("9.000 kg", ""),
        ("8.955 kg", "45.0 g less than the book says, beyond ±44.8 g."),
        ("8.960 kg", ""),
        ("9.045 kg", ""),  # 45.0 g off, within 45.2 g
        ("9.050 kg", "50.0 g more than the book says, beyond ±45.2 g."),  # 45.25 g
    ],
)
def test_that_mass_the_scale_does_not_find_is_flagged(gross: str, words: str) -> None:
    found = act("weigh", {"cylinder": "C-015", "scale": "S-1", "gross": gross})
    assert [flag.key for flag in found] == (["unaccounted-mass"] if words else [])
    for flag in found:
        assert words in flag.says
        assert flag.says.endswith("Find out why, then book the difference.")
        assert (flag.level, flag.about) == ("check", "cylinder:C-015")


@pytest.mark.parametrize(("mass", "over"), [("2.94 kg", False), ("2.96 kg", True)])
def test_that_receiving_over_the_limit_is_flagged(mass: str, over: bool) -> None:
    found = act("receive", {"cylinder": "C-015", "mass": mass})
    assert [flag.key for flag in found] == (["cylinder-overfilled"] if over else [])


def test_that_decanting_over_the_limit_is_flagged_on_the_target() -> None:
    typed: Typed = {"source": "C-014", "target": "C-015", "scale": "S-1", "weighed": "into",
                    "before": "9 kg", "after": "12 kg"}  # fmt: skip
    (flag,) = act("decant", typed)
    assert (flag.key, flag.about) == ("cylinder-overfilled", "cylinder:C-015")


@pytest.mark.parametrize(
    ("today", "says"),
    [
        (date(2026, 4, 1), "Next, by 2026-04-01: repair."),
        (date(2026, 4, 2), "Overdue since 2026-04-01: repair."),
    ],
)
def test_that_a_leak_rate_over_its_threshold_says_what_is_owed(today: date, says: str) -> None:
    flag = flags.of_equipment(
        "E-003",
        name="Walk-in",
        rate_pct=25.04,
        threshold_pct=20.0,
        source="40CFR84.106, (c)",
        mark="SEEN",
        owed="repair",
        owed_by=date(2026, 4, 1),
        today=today,
    )
    assert flag.says == f"Walk-in leaks 25.0 % a year, over the threshold of 20 %. {says}"
    assert (flag.level, flag.key, flag.about) == ("stop", "leak-rate-over", "equipment:E-003")
    assert (flag.figure, flag.limit, flag.source) == ("25.0 %", "20 %", "40CFR84.106, (c)")


def test_that_an_overdue_inspection_and_a_missing_detector_are_said() -> None:
    overdue = flags.of_overdue(
        "E-003",
        name="Walk-in",
        owed="leak inspection",
        owed_by=date(2026, 4, 1),
        source="40CFR84.106, (g)",
        mark="SEEN",
    )
    assert overdue.says == "Walk-in: leak inspection was due on 2026-04-01."
    missing = flags.of_detection(
        "E-003", name="Walk-in", reaching="1500 lb", source="89FR82682", mark="SEEN-2"
    )
    assert missing.says.startswith("Walk-in must have a leak detection system from 1500 lb on")
    assert (overdue.level, missing.level) == ("check", "check")
