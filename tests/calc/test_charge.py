import pint
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from chargebench.calc.charge import (
    Arrangement,
    ChargeWord,
    CylinderLine,
    Verdict,
    charged,
    stop_reading,
    to_charge,
    verdict,
    withdraw_as,
)
from chargebench.calc.scale import net_uncertainty
from chargebench.units import Q, Quantity

GRAMS = st.floats(-1e5, 1e5)


def g(grams: float) -> Quantity:
    return Q(grams, "g")


def judged(
    charge: float,
    *,
    tolerance: float = 2.0,
    doubt: float = 0.8,
    resolution: Quantity | None = None,
    lines: int = 1,
) -> Verdict:
    return verdict(
        charged=g(charge),
        nameplate=g(85),
        tolerance=g(tolerance),
        expanded_uncertainty=g(doubt),
        resolution=resolution,
        lines=lines,
    )


# JCGM 106:2012, 8.3.2: accepted or refused only where the doubt lies wholly on one side.
@pytest.mark.parametrize(
    ("charge", "word"),
    [
        (80.0, ChargeWord.UNDER),
        (82.5, ChargeWord.TOO_COARSE),
        (84.0, ChargeWord.WITHIN),
        (86.0, ChargeWord.WITHIN),
        (86.5, ChargeWord.TOO_COARSE),
        (88.4, ChargeWord.OVER),
    ],
)
def test_that_the_word_is_said_only_where_the_scale_can_tell(charge: float, word: str) -> None:
    found = judged(charge)
    assert found.word is word
    assert found.difference.m_as("g") == pytest.approx(charge - 85)


# JCGM 106:2012, 8.3.2: on the guard band's edge a charge conforms; a refusal lies beyond its own.
@pytest.mark.parametrize(
    ("charge", "tolerance", "doubt", "word"),
    [
        (86.0, 2.0, 1.0, ChargeWord.WITHIN),
        (84.0, 2.0, 1.0, ChargeWord.WITHIN),
        (88.0, 2.0, 1.0, ChargeWord.TOO_COARSE),
        (82.0, 2.0, 1.0, ChargeWord.TOO_COARSE),
        (85.5, 0.125, 0.125, ChargeWord.OVER),
        (84.5, 0.125, 0.125, ChargeWord.UNDER),
    ],
)
def test_that_the_edges_of_the_guard_bands_are_as_printed(
    charge: float, tolerance: float, doubt: float, word: ChargeWord
) -> None:
    assert judged(charge, tolerance=tolerance, doubt=doubt).word is word


# By hand, for 0.5 g from the limit: u <= 0.25 g, and n nets of a scale have u**2 = n d**2 / 6.
@pytest.mark.parametrize(
    ("resolution", "lines", "doubt", "enough"),
    [
        (None, 1, 1.7, (6 * 0.0625) ** 0.5),
        (None, 3, 1.7, (6 * 0.0625 / 3) ** 0.5),
        (1.0, 1, 0.9, (6 * (0.0625 - (0.2025 - 1 / 6))) ** 0.5),
        (1.0, 2, 1.2, (6 * (0.0625 - (0.36 - 2 / 6)) / 2) ** 0.5),
        (10.0, 1, 1.7, (6 * 0.0625) ** 0.5),  # more than the doubt given: there is no other
    ],
)
def test_that_the_resolution_that_is_enough_is_reckoned_by_hand(
    resolution: float | None, lines: int, doubt: float, enough: float
) -> None:
    scale = None if resolution is None else g(resolution)
    found = judged(86.5, doubt=doubt, resolution=scale, lines=lines).resolution_enough
    assert found is not None
    assert found.m_as("g") == pytest.approx(enough)


def test_that_a_charge_is_one_net_mass_unless_said_otherwise() -> None:
    found = verdict(charged=g(86.5), nameplate=g(85), tolerance=g(2), expanded_uncertainty=g(1.7))
    assert found == judged(86.5, doubt=1.7)


def test_that_no_scale_decides_a_charge_on_the_limit() -> None:
    assert judged(87.0).resolution_enough is None


def test_that_the_resolution_named_as_enough_is_enough_and_a_coarser_one_is_not() -> None:
    found = judged(86.5, resolution=g(2), doubt=1.7)
    assert found.word is ChargeWord.TOO_COARSE
    assert found.resolution_enough is not None
    others = (1.7 / 2) ** 2 - 2**2 / 6
    for share, decided in ((0.99, True), (1.01, False)):
        u = net_uncertainty(resolution=found.resolution_enough * share, repeatability=g(0))
        doubt = 2 * (u.m_as("g") ** 2 + others) ** 0.5
        assert (judged(86.5, doubt=doubt).word is ChargeWord.WITHIN) is decided


def test_that_no_finer_scale_is_promised_where_other_doubt_is_too_large() -> None:
    assert judged(86.9, resolution=g(0.1), doubt=1.5).resolution_enough is None


@given(GRAMS, st.floats(0, 1e3), st.floats(0, 1e3), st.floats(0, 1e4))
def test_that_the_words_come_in_order_as_the_charge_grows(
    charge: float, tolerance: float, doubt: float, more: float
) -> None:
    order = [ChargeWord.UNDER, ChargeWord.WITHIN, ChargeWord.OVER]
    lower = judged(charge, tolerance=tolerance, doubt=doubt).word
    higher = judged(charge + more, tolerance=tolerance, doubt=doubt).word
    assume(ChargeWord.TOO_COARSE not in (lower, higher))
    assert order.index(higher) >= order.index(lower)


@given(st.floats(0, 200), st.floats(0, 10), st.floats(0, 10))
def test_that_the_verdict_is_the_same_in_ounces(
    charge: float, tolerance: float, doubt: float
) -> None:
    assume(abs(abs(abs(charge - 85) - tolerance) - doubt) > 1e-6)
    in_grams = judged(charge, tolerance=tolerance, doubt=doubt)
    in_ounces = verdict(
        charged=g(charge).to("oz"),
        nameplate=g(85).to("oz"),
        tolerance=g(tolerance).to("oz"),
        expanded_uncertainty=g(doubt).to("oz"),
    )
    assert in_ounces.word is in_grams.word


@pytest.mark.parametrize(
    ("arrangement", "start", "stop"),
    [
        # Balance of masses: 85 g into the equipment and 8.3 g left in the hose: 93.3 g less.
        (Arrangement.CYLINDER, 4312.5, 4219.2),
        (Arrangement.EQUIPMENT, 21_400.0, 21_485.0),
        (Arrangement.ZEROED, None, -93.3),
    ],
)
def test_that_the_stop_reading_leaves_the_hose_its_content(
    arrangement: Arrangement, start: float | None, stop: float
) -> None:
    found = stop_reading(
        start=None if start is None else g(start),
        target=g(85),
        hose=g(8.3),
        arrangement=arrangement,
    )
    assert found.m_as("g") == pytest.approx(stop)


@given(st.sampled_from(Arrangement), GRAMS, st.floats(0, 1e4), st.floats(0, 1e3), st.floats(0, 1e3))
def test_that_stopping_at_the_stop_reading_charges_the_target(
    arrangement: Arrangement, start: float, want: float, hose: float, had: float
) -> None:
    stop = stop_reading(
        start=g(start), target=g(want), hose=g(hose), arrangement=arrangement, hose_at_start=g(had)
    )
    line = CylinderLine(arrangement, g(start), stop, hose=g(hose), hose_at_start=g(had))
    assert charged([line]).m_as("g") == pytest.approx(want, abs=1e-9 * (1 + abs(start) + want))
    balance = line.left_cylinder + line.hose_at_start - line.into_equipment - line.hose
    assert balance.m_as("g") == pytest.approx(0, abs=1e-9 * (1 + abs(start) + want))


def test_that_a_hose_filled_before_the_start_reading_takes_nothing_more() -> None:
    line = CylinderLine(Arrangement.CYLINDER, g(4000), g(3900), hose=g(8), hose_at_start=g(8))
    assert line.into_equipment.m_as("g") == pytest.approx(100)


def test_that_a_line_without_a_hose_loses_nothing_in_one() -> None:
    line = CylinderLine(Arrangement.CYLINDER, g(4000), g(3900))
    assert line.into_equipment.m_as("g") == line.left_cylinder.m_as("g") == 100


def test_that_several_cylinders_add_up() -> None:
    lines = [
        CylinderLine(Arrangement.CYLINDER, Q(5, "kg"), Q(1, "kg"), hose=g(60)),
        CylinderLine(Arrangement.ZEROED, g(0), Q(-10, "kg"), hose=g(60)),
    ]
    assert charged(lines).m_as("kg") == pytest.approx(4 - 0.06 + 10 - 0.06)
    assert charged([]).m_as("g") == 0


def test_that_what_is_in_already_is_not_charged_again() -> None:
    assert to_charge(nameplate=g(85), opening_content=g(20)).m_as("g") == pytest.approx(65)


def test_that_a_cylinder_without_a_start_reading_is_a_bug() -> None:
    with pytest.raises(AssertionError):
        stop_reading(start=None, target=g(85), hose=g(0), arrangement=Arrangement.CYLINDER)


def test_that_a_length_is_not_taken_for_a_mass() -> None:
    with pytest.raises(pint.DimensionalityError):
        to_charge(nameplate=Q(3, "inch"), opening_content=g(0))


# Real Decreto 552/2019, IF-09 1.8: zeotropes in the liquid phase.
def test_that_a_zeotrope_leaves_as_liquid() -> None:
    assert withdraw_as("zeotrope").phase == "liquid"
    assert withdraw_as("azeotrope").phase == withdraw_as("pure").phase == "liquid or vapour"
