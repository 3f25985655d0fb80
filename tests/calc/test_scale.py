import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.scale import (
    Budget,
    charge_budget,
    explained_difference,
    ledger_uncertainty,
    net_uncertainty,
)
from chargebench.units import Q, Quantity

GRAMS = st.floats(0, 1e5)


# JCGM 100:2008, 4.3.7: a rectangular distribution of full width d has u**2 = d**2 / 12; a
# difference of two readings has twice that, so u = d / sqrt(6). Worked here by hand.
@pytest.mark.parametrize(
    ("step", "expanded"), [(0.1, 0.08), (0.5, 0.41), (1.0, 0.82), (2.0, 1.63), (5.0, 4.08)]
)
def test_that_a_net_mass_carries_the_resolution_of_two_readings(
    step: float, expanded: float
) -> None:
    u = net_uncertainty(resolution=Q(step, "g"), repeatability=Q(0, "g"))
    assert 2 * u.m_as("g") == pytest.approx(expanded, abs=0.005)


def test_that_repeatability_counts_once_for_each_reading() -> None:
    u = net_uncertainty(resolution=Q(0, "g"), repeatability=Q(0.3, "g"))
    assert u.m_as("g") == pytest.approx(0.3 * math.sqrt(2))


def budget(**changed: Any) -> Budget:
    given: dict[str, Any] = {
        "resolution": Q(1, "g"),
        "repeatability": Q(0, "g"),
        "gain": Q(0, "percent"),
        "net": Q(100, "g"),
        "hose_half_width": Q(0, "g"),
    }
    return charge_budget(**(given | changed))


def test_that_gain_grows_with_the_mass_and_is_taken_as_a_half_width() -> None:
    only_gain = {"resolution": Q(0, "g"), "gain": Q(0.5, "percent")}
    # 0.5 % of 1 000 g is at most 5 g off: 5 / sqrt(3) (JCGM 100, 4.3.7)
    found = budget(**only_gain, net=Q(1, "kg")).combined
    assert found.m_as("g") == pytest.approx(5 / math.sqrt(3))


def test_that_readings_of_several_cylinders_add_in_quadrature_and_hoses_do_not() -> None:
    one, four = budget(), budget(lines=4)
    assert four.combined.m_as("g") == pytest.approx(2 * one.combined.m_as("g"))
    only_hose = {"resolution": Q(0, "g"), "hose_half_width": Q(3, "g")}
    assert budget(**only_hose, lines=4).combined.m_as("g") == pytest.approx(math.sqrt(3))


# By hand: three net masses are six readings, of 0.3 g each: 0.3 sqrt(6) (JCGM 100, 5.1.2).
def test_that_repeatability_counts_for_each_reading_of_several_cylinders() -> None:
    found = budget(resolution=Q(0, "g"), repeatability=Q(0.3, "g"), lines=3)
    assert found.combined.m_as("g") == pytest.approx(0.3 * math.sqrt(6))


def test_that_a_charge_without_a_net_mass_is_a_bug() -> None:
    with pytest.raises(AssertionError):
        budget(lines=0)


def test_that_the_budget_names_every_line_and_combines_them() -> None:
    found = budget(repeatability=Q(0.3, "g"), gain=Q(0.1, "percent"), hose_half_width=Q(0.2, "g"))
    assert [line.name for line in found.lines] == [
        "resolution",
        "repeatability",
        "gain",
        "hose content",
    ]
    squares = sum(line.standard_uncertainty.m_as("g") ** 2 for line in found.lines)
    assert found.combined.m_as("g") == pytest.approx(math.sqrt(squares))
    assert found.expanded.m_as("g") == pytest.approx(2 * found.combined.m_as("g"))


@given(GRAMS, GRAMS, st.floats(0, 10), GRAMS)
def test_that_a_coarser_scale_never_doubts_less(
    step: float, spread: float, more: float, net: float
) -> None:
    fine = budget(resolution=Q(step, "g"), repeatability=Q(spread, "g"), net=Q(net, "g"))
    coarse = budget(resolution=Q(step + more, "g"), repeatability=Q(spread, "g"), net=Q(net, "g"))
    assert coarse.expanded >= fine.expanded * (1 - 1e-12)


@given(st.floats(0.001, 1e3))
def test_that_the_unit_of_the_scale_does_not_matter(step: float) -> None:
    grams = net_uncertainty(resolution=Q(step, "oz"), repeatability=Q(step, "oz")).m_as("oz")
    assert grams == pytest.approx(step * math.sqrt(2 * (1 / 12 + 1)))


# JCGM 100, 5.1.2 by hand: 3, 4 and 12 g in quadrature are 13 g, twice that expanded.
def test_that_the_doubts_of_a_ledger_add_in_quadrature_and_are_doubled() -> None:
    parts: list[Quantity] = [Q(3, "g"), Q(0.004, "kg"), Q(12, "g")]
    assert ledger_uncertainty(parts).m_as("g") == pytest.approx(26)
    assert ledger_uncertainty([]).m_as("g") == 0


def test_that_scale_and_ledger_explain_a_difference_together() -> None:
    found = explained_difference(scale=Q(0.005, "kg"), ledger=Q(12, "g"))
    assert found.m_as("g") == pytest.approx(13)
