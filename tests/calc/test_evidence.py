import dataclasses
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.evidence_rules import SAYS, Measure
from chargebench.calc.readings import (
    CondenserState,
    Current,
    Evidence,
    FanState,
    Findings,
    Frost,
    Hypothesis,
    Says,
    connection_cost,
    evidence,
    next_measurement,
)
from chargebench.units import Q, Quantity

# What the readings say of each fault is common practice of the trade; nobody printed this table.


def k(kelvin: float) -> Quantity:
    return Q(kelvin, "kelvin")


def says(findings: Findings, fault: Hypothesis) -> list[Says]:
    return [row.says for row in evidence(findings) if row.hypothesis is fault]


def state(**found: Any) -> str:
    """The state in which the one reading given is taken to be."""
    reading = evidence(Findings(**found))[0].reading
    return reading.split(", ")[1].split(" ")[0]


# The limits are our own choice after common practice; a reading on a limit is a usual one.
@pytest.mark.parametrize(
    ("name", "low", "high"),
    [
        ("superheat", 3.0, 12.0),
        ("subcooling", 3.0, 12.0),
        ("condensing_split", 5.0, 17.0),
        ("evaporator_difference", 4.0, 12.0),
    ],
)
def test_that_a_difference_is_low_usual_or_high_by_its_limits(
    name: str, low: float, high: float
) -> None:
    for kelvin, expected in [
        (low - 0.1, "low"), (low, "usual"), (high, "usual"), (high + 0.1, "high"),
    ]:  # fmt: skip
        assert state(**{name: k(kelvin)}) == expected
    # From surfaces either limit stands 2 K further out.
    for kelvin, expected in [
        (low - 2.1, "low"), (low - 2, "usual"), (high + 2, "usual"), (high + 2.1, "high"),
    ]:  # fmt: skip
        assert state(**{name: k(kelvin)}, from_surfaces=True) == expected


@pytest.mark.parametrize(
    ("kelvin", "expected"), [(4.9, "low"), (5.0, "usual"), (11.0, "usual"), (11.1, "high")]
)
def test_that_a_figure_expected_holds_within_three_kelvin(kelvin: float, expected: str) -> None:
    found = Findings(superheat=k(kelvin), expected_superheat=k(8))
    assert evidence(found)[0].reading == (
        f"superheat {kelvin:.1f} K, {expected} (the maker: 8.0 K)"
    )


@pytest.mark.parametrize(
    ("kelvin", "expected"), [(6.9, "low"), (7.0, "usual"), (9.0, "usual"), (9.1, "high")]
)
def test_that_a_figure_expected_may_bring_its_own_width(kelvin: float, expected: str) -> None:
    found = Findings(
        superheat=k(kelvin), expected_superheat=k(8), expected_within={"superheat": k(1)}
    )
    assert evidence(found)[0].reading == (
        f"superheat {kelvin:.1f} K, {expected} (the maker: 8.0 K ± 1.0 K)"
    )


@pytest.mark.parametrize(
    ("found", "expected"),
    [
        ({"current": Current(Q(0.3, "A"), Q(0.5, "A"))}, "low"),
        ({"drier_drop": k(1.5)}, "usual"),
        ({"drier_drop": k(1.6)}, "high"),
        ({"current": Current(Q(1.48, "A"), Q(2, "A"))}, "low"),
        ({"current": Current(Q(1.5, "A"), Q(2, "A"))}, "usual"),
        ({"current": Current(Q(2.2, "A"), Q(2, "A"))}, "usual"),
        ({"current": Current(Q(2.3, "A"), Q(2, "A"))}, "high"),
        ({"box_temperature": k(279.0), "set_point": k(277)}, "usual"),
        ({"box_temperature": k(279.1), "set_point": k(277)}, "high"),
    ],
)
def test_that_other_readings_have_their_limits(found: dict[str, Any], expected: str) -> None:
    assert evidence(Findings(**found))[0].reading.endswith(f", {expected}")


def test_that_a_box_temperature_without_a_set_point_says_nothing() -> None:
    assert evidence(Findings(box_temperature=k(279))) == ()
    assert evidence(Findings(set_point=k(277))) == ()


def test_that_a_usual_reading_names_its_limits_and_no_surface() -> None:
    reading = evidence(Findings(superheat=k(8)))[0].reading
    assert reading == "superheat 8.0 K, usual (usual 3 to 12 K)"


def test_that_nothing_measured_gives_no_evidence_but_a_first_measurement() -> None:
    assert evidence(Findings()) == ()
    first = next_measurement(Findings())
    assert first is not None
    assert not first.needs_hose


def test_that_no_pressure_is_evidence() -> None:
    names = {field.name for field in dataclasses.fields(Findings)}
    assert not [name for name in names if "pressure" in name]


def test_that_every_reading_says_something_of_every_fault_with_a_reason() -> None:
    rows = evidence(Findings(superheat=k(18), frost=Frost.INLET_ONLY))
    assert [row.hypothesis for row in rows] == list(Hypothesis) * 2
    assert all(row.reason and row.reading for row in rows)


def test_that_the_table_has_every_fault_and_a_reason_for_each_state() -> None:
    for rows in SAYS.values():
        assert list(rows) == list(Hypothesis)
        assert all(isinstance(reason, str) and reason.endswith(".") for _, reason in rows.values())


@pytest.mark.parametrize("state", [state for state in SAYS if state[0] is not Measure.CONDENSER])
def test_that_no_single_state_leaves_only_one_fault(state: tuple[Measure, str]) -> None:
    rows = SAYS[state]
    assert [says for says, _ in rows.values()].count(Says.AGAINST) <= len(Hypothesis) - 2


def test_that_a_short_charge_and_a_restriction_part_at_the_subcooling() -> None:
    starved: dict[str, Any] = {"superheat": k(18), "frost": Frost.INLET_ONLY}
    low, high = Findings(**starved, subcooling=k(1)), Findings(**starved, subcooling=k(16))
    assert says(low, Hypothesis.LOW_CHARGE) == [Says.FOR] * 3
    assert says(high, Hypothesis.LOW_CHARGE).count(Says.AGAINST) == 1
    assert says(high, Hypothesis.RESTRICTION) == [Says.FOR] * 3
    assert says(low, Hypothesis.RESTRICTION).count(Says.AGAINST) == 1


def test_that_a_floured_condenser_is_found_without_a_hose() -> None:
    seen = Findings(
        condensing_split=k(25),
        condenser=CondenserState.DIRTY,
        condenser_fan=FanState.RUNS,
        current=Current(Q(1.3, "A"), Q(1.1, "A")),
        box_temperature=Q(9, "degC"),
        set_point=Q(4, "degC"),
        from_surfaces=True,
    )
    assert says(seen, Hypothesis.CONDENSER).count(Says.FOR) == 3
    assert Says.AGAINST not in says(seen, Hypothesis.CONDENSER)
    assert says(seen, Hypothesis.LOW_CHARGE).count(Says.AGAINST) == 2


def test_that_ice_speaks_for_poor_airflow_and_hides_the_rest() -> None:
    seen = Findings(frost=Frost.ICED, evaporator_fan=FanState.WEAK)
    assert says(seen, Hypothesis.AIRFLOW) == [Says.FOR, Says.FOR]
    assert set(says(seen, Hypothesis.LOW_CHARGE)) == {Says.NOTHING}


def test_that_a_warm_box_tells_no_fault_from_another() -> None:
    seen = Findings(box_temperature=Q(9, "degC"), set_point=Q(39, "degF"))
    assert {row.says for row in evidence(seen)} == {Says.NOTHING}
    assert "+5.1 K over" in evidence(seen)[0].reading


def test_that_the_maker_s_figure_counts_before_the_usual_one() -> None:
    usual = Findings(superheat=k(10))
    made_for_4 = Findings(superheat=k(10), expected_superheat=k(4), expected_from="sister unit")
    assert says(usual, Hypothesis.LOW_CHARGE) == [Says.NOTHING]
    assert says(made_for_4, Hypothesis.LOW_CHARGE) == [Says.FOR]
    assert "sister unit: 4.0 K" in evidence(made_for_4)[0].reading


def test_that_surfaces_are_believed_less() -> None:
    assert says(Findings(superheat=k(13)), Hypothesis.LOW_CHARGE) == [Says.FOR]
    seen = Findings(superheat=k(13), from_surfaces=True)
    assert says(seen, Hypothesis.LOW_CHARGE) == [Says.NOTHING]
    assert "from surfaces" in evidence(seen)[0].reading


def test_that_a_cold_drier_speaks_for_a_restriction() -> None:
    assert says(Findings(drier_drop=k(4)), Hypothesis.RESTRICTION) == [Says.FOR]
    assert says(Findings(drier_drop=k(0.5)), Hypothesis.RESTRICTION) == [Says.AGAINST]


def test_that_a_current_without_a_rating_is_not_judged() -> None:
    assert evidence(Findings(current=Current(Q(1, "A"), Q(0, "A")))) == ()


def test_that_the_next_measurement_is_one_not_yet_made_and_tells_open_faults_apart() -> None:
    seen = Findings(superheat=k(18), frost=Frost.INLET_ONLY)
    found = next_measurement(seen)
    assert found is not None
    assert found.measure not in ("superheat", "frost pattern")
    assert found.reason.startswith(found.measure.capitalize())


# Reckoned by hand from the table: what frost only at the inlet, a high superheat and a low
# subcooling leave open is low charge (3 for) and a valve fault (2 for); of what is not measured yet
# only the evaporator difference, where it is low, speaks against one and for the other.
@pytest.mark.parametrize("from_surfaces", [False, True])
def test_that_two_open_faults_are_told_apart_by_what_parts_them(*, from_surfaces: bool) -> None:
    starved: dict[str, Any] = {"superheat": k(18), "frost": Frost.INLET_ONLY}
    found = next_measurement(Findings(**starved, subcooling=k(0.5), from_surfaces=from_surfaces))
    assert found is not None
    assert found.measure == "evaporator difference"
    assert found.reason == "Evaporator difference would tell low charge from valve fault."
    assert found.needs_hose is not from_surfaces


# By hand: ice opens all six faults. The current parts the three that starve the compressor from the
# two that load it, six pairs; the evaporator difference parts ten, but counts half with a hose.
def test_that_a_measurement_with_a_hose_must_part_twice_as_many() -> None:
    without = next_measurement(Findings(frost=Frost.ICED))
    assert without is not None
    assert not without.needs_hose
    assert without.reason == (
        "Compressor current would tell low charge from overcharge, and 5 more such pairs."
    )
    surfaces = next_measurement(Findings(frost=Frost.ICED, from_surfaces=True))
    assert surfaces is not None
    assert surfaces.measure == "evaporator difference"
    assert "and 9 more such pairs" in surfaces.reason


# By hand: frost at the inlet leaves low charge, restriction, valve fault and, one behind, a dirty
# condenser. The current parts two pairs, the evaporator difference four: with a hose no more.
def test_that_of_equals_the_easier_comes_first() -> None:
    found = next_measurement(Findings(frost=Frost.INLET_ONLY))
    assert found is not None
    assert found.reason == (
        "Compressor current would tell low charge from dirty condenser, and 1 more such pairs."
    )


# By hand: an even frost, a low superheat and a usual split leave airflow (0), valve and overcharge
# (1 each). The current parts one pair of them; the evaporator difference all three, halved to 1.5.
def test_that_a_hose_is_worth_connecting_for_three_pairs_against_one() -> None:
    seen = Findings(frost=Frost.EVEN, superheat=k(1), condensing_split=k(8))
    found = next_measurement(seen)
    assert found is not None
    assert found.needs_hose
    assert found.reason == (
        "Evaporator difference would tell poor airflow or iced coil from valve fault, "
        "and 2 more such pairs."
    )


# By hand: an even frost speaks against three faults and for none, so all six stay open.
def test_that_one_reading_against_a_fault_does_not_close_it() -> None:
    found = next_measurement(Findings(frost=Frost.EVEN))
    assert found is not None
    assert found.reason == (
        "Compressor current would tell low charge from overcharge, and 5 more such pairs."
    )


# By hand: liquid in the suction line leaves poor airflow, valve fault, overcharge and condenser.
def test_that_faults_far_behind_are_not_asked_about() -> None:
    found = next_measurement(Findings(frost=Frost.FLOODED))
    assert found is not None
    assert found.reason.startswith("Compressor current would tell poor airflow or iced coil from ")


def test_that_nothing_more_is_asked_when_nothing_would_decide() -> None:
    everything = Findings(
        superheat=k(18),
        subcooling=k(1),
        condensing_split=k(3),
        evaporator_difference=k(20),
        drier_drop=k(0),
        box_temperature=Q(9, "degC"),
        set_point=Q(4, "degC"),
        frost=Frost.INLET_ONLY,
        condenser=CondenserState.CLEAN,
        condenser_fan=FanState.RUNS,
        evaporator_fan=FanState.RUNS,
        current=Current(Q(1, "A"), Q(2, "A")),
    )
    assert next_measurement(everything) is None


# Geometry and CoolProp 8.0.0 (tests/checkdata/hose_residual.csv): 36 in of 4.8 mm bore full of
# liquid R290 at 20 °C hold 8.27 g, 7.52 % of 110 g.
def test_that_the_cost_of_a_connection_is_said_in_shares_of_the_charge() -> None:
    found = connection_cost(hose=Q(8.27424, "g"), nameplate=Q(110, "g"))
    assert found.share.m_as("percent") == pytest.approx(7.52203, rel=1e-4)
    assert "8.3 g, 7.5 % of the charge" in found.sentence


KELVIN = st.none() | st.floats(-1e6, 1e6).map(k)


@given(
    st.builds(
        Findings,
        superheat=KELVIN,
        subcooling=KELVIN,
        condensing_split=KELVIN,
        evaporator_difference=KELVIN,
        drier_drop=KELVIN,
        expected_superheat=KELVIN,
        frost=st.none() | st.sampled_from(Frost),
        condenser=st.none() | st.sampled_from(CondenserState),
        condenser_fan=st.none() | st.sampled_from(FanState),
        from_surfaces=st.booleans(),
    )
)
def test_that_any_findings_give_whole_rows(findings: Findings) -> None:
    rows: tuple[Evidence, ...] = evidence(findings)
    assert len(rows) % len(Hypothesis) == 0
    found = next_measurement(findings)
    assert found is None or found.measure in set(Measure)
