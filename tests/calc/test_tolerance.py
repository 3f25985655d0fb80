"""Default charge tolerances; the figures are common practice, from memory, and shown as such."""

import dataclasses

import pytest

from chargebench import rules
from chargebench.calc.tolerance import charge_tolerance
from chargebench.units import Q, from_mg, mg

CHARGE = rules.load("generic").charge


# Common practice, from memory: 57 to 150 g of hydrocarbon 1 to 2 g or 2 %; R134a 5 g or 5 %;
# hvacspecialists.info: expansion valve systems 10 %.
@pytest.mark.parametrize(
    ("grams", "safety_class", "allowed", "mark"),
    [
        (57, "A3", 2, "MEMORY"),
        (85, "A3", 2, "MEMORY"),
        (150, "A3", 3, "MEMORY"),
        (500, "A3", 10, "MEMORY"),
        (501, "A3", 25.05, "MEMORY"),
        (90, "A1", 5, "MEMORY"),
        (200, "A1", 10, "MEMORY"),
        (14_200, "A1", 1420, "SEEN-2"),
        (2_000, "A2L", 100, "MEMORY"),
    ],
)
def test_that_a_default_is_the_larger_of_mass_and_share(
    grams: float, safety_class: str, allowed: float, mark: str
) -> None:
    found = charge_tolerance(nameplate=Q(grams, "g"), safety_class=safety_class, rule=CHARGE)
    assert found is not None
    assert found.mass.m_as("g") == pytest.approx(allowed)
    assert found.by.mark == mark


# 40 CFR 82.152: five pounds are still small, also in whole milligrams.
def test_that_five_pounds_are_small_as_the_ledger_keeps_them() -> None:
    kept = from_mg(mg(Q(5, "lb")))
    found = charge_tolerance(nameplate=kept, safety_class="A1", rule=CHARGE)
    assert found is not None
    assert found.row.title == "Factory-sealed appliance"


def test_that_no_row_is_no_default() -> None:
    only = dataclasses.replace(CHARGE, tolerances=CHARGE.tolerances[:1])
    assert charge_tolerance(nameplate=Q(90, "g"), safety_class="A1", rule=only) is None
