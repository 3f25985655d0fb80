"""Readings side by side, evidence by fault, the maker's figures, and what a hose would cost."""

import csv
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench import steps
from chargebench.steps import STEPS, Case, Table, beside
from chargebench.steps.beside import Taken
from tests.steps.anything import typed
from tests.steps.cases import case

HOSES = Path(__file__).parents[1] / "checkdata" / "hose_residual.csv"
# Surfaces only: superheat -12 - (-26) = 14 K, subcooling 43 - 35 = 8 K, condensing 43 - 24 = 19 K.
SURFACES: dict[str, Any] = {
    "tapped": "no",
    "evaporator_inlet": "-26 °C",
    "suction_line": "-12 °C",
    "condenser_surface": "43 °C",
    "liquid_line": "35 °C",
    "ambient": "24 °C",
}


def ran(step: str = "as_found", maker: Any = (), **typed: Any) -> Case:
    figures = [
        {"reading": of, "expected": expected, "tolerance": tolerance, "given_by": "service sheet"}
        for of, expected, tolerance in maker
    ]
    return case({step: {**SURFACES, **typed}, "support": {"figures": figures}})


def table(given: Case, others: Any = (), step: str = "as_found") -> Table:
    found = beside.table(given, step, others)
    assert found is not None
    return found


def other(head: str = "as left 2025-06-01", **typed: Any) -> Taken:
    found = beside.taken(ran(**typed), "as_found", head)
    assert found is not None
    return found


def rows(found: Table) -> dict[str, Any]:
    return {str(row[0].value): row[1:] for row in found.rows}


def kelvin(value: Any) -> float:
    return float(value.m_as("delta_degC"))


def test_that_an_earlier_visit_stands_beside_today() -> None:
    found = table(ran(), [other(suction_line="-20 °C")])
    assert found.heads == ("Reading", "today", "as left 2025-06-01")
    today, earlier = rows(found)["Superheat"]
    assert kelvin(today.value) == pytest.approx(14)
    assert kelvin(earlier.value) == pytest.approx(6)
    assert earlier.marked  # 8 K apart: more than 3 K, and 2 K for surfaces
    assert "8.0 K higher" in earlier.why
    assert [cell.marked for cell in rows(found)["Subcooling"]] == [False, False]


@pytest.mark.parametrize(
    ("suction", "marked"),
    [("-17 °C", False), ("-17.1 °C", True), ("-7 °C", False), ("-6.9 °C", True)],
)
def test_that_the_mark_begins_beyond_the_band(suction: str, marked: bool) -> None:
    _, earlier = rows(table(ran(), [other(suction_line=suction)]))["Superheat"]
    assert earlier.marked is marked


def test_that_single_temperatures_are_shown_and_never_marked() -> None:
    today, earlier = rows(table(ran(), [other(ambient="38 °C")]))["Air onto the condenser"]
    assert (today.value.m_as("degC"), earlier.value.m_as("degC")) == (
        pytest.approx(24),
        pytest.approx(38),
    )
    assert not earlier.marked


def test_that_as_left_stands_beside_as_found_of_the_same_day() -> None:
    given = case({"as_found": SURFACES, "as_left": SURFACES | {"suction_line": "-20 °C"}})
    found = table(given, step="as_left")
    assert found.heads == ("Reading", "today", "as found today")
    assert rows(found)["Superheat"][1].marked


def test_that_there_is_no_table_with_nothing_to_hold_beside() -> None:
    assert beside.table(ran(), "as_found", ()) is None
    assert beside.table(case(), "as_found", [other()]) is None


# 14 K today, from surfaces: 2 K either side more.
@pytest.mark.parametrize(
    ("expected", "tolerance", "told", "marked"),
    [
        ("9 K", "", "9.0 K", False),
        ("8.9 K", "", "8.9 K", True),
        ("10 K", "2 K", "10.0 K ± 2.0 K", False),
        ("10 K", "1.9 K", "10.0 K ± 1.9 K", True),
        ("8 to 12 K", "", "10.0 K ± 2.0 K", False),
        ("8 \u2013 11.8 K", "", "9.9 K ± 1.9 K", True),
        ("18 °F", "3.6 F", "10.0 K ± 2.0 K", False),
    ],
)
def test_that_the_makers_figure_is_what_readings_are_held_against(
    expected: str, tolerance: str, told: str, marked: bool
) -> None:
    given = ran(maker=[("superheat", expected, tolerance)])
    evidence = steps.work_out(given, "as_found").result.evidence
    assert f"(service sheet: {told}" in " ".join(each.reading for each in evidence)
    cell = rows(table(given))["Superheat"][1]
    assert cell.value == (f"{expected} ± {tolerance}" if tolerance else expected)
    assert cell.marked is marked
    assert "service sheet" in cell.why


# 0 bar gauge is the air's 1.01325 bar; 10 psi are 68.9 kPa (NIST SP 811, B.8).
@pytest.mark.parametrize(
    ("of", "key", "today", "expected", "tolerance", "marked"),
    [
        ("suction pressure", "suction_pressure", "20 psig", "10 psig", "10 psi", False),
        ("suction pressure", "suction_pressure", "20 psig", "10 psig", "9.9 psi", True),
        ("suction pressure", "suction_pressure", "20 psig", "10 psig", "", False),
        ("suction pressure", "suction_pressure", "34.7 psia", "8 to 20.1 psig", "", False),
        ("compressor current", "current", "0.9 A", "0.65 to 0.80 A", "", True),
        ("compressor current", "current", "0.8 A", "0.65 to 0.80 A", "", False),
        ("box temperature", "box", "-16 °C", "0 °F", "3 °F", True),
        ("box temperature", "box", "-16 °C", "0 °F", "2 K", False),
    ],
)
def test_that_single_readings_are_held_against_the_makers_own_tolerance(
    of: str, key: str, today: str, expected: str, tolerance: str, marked: bool
) -> None:
    given = ran(maker=[(of, expected, tolerance)], **{key: today})
    label = STEPS["as_found"].field(key).label
    assert rows(table(given))[label][1].marked is marked


def test_that_figures_of_no_reading_stand_in_the_makers_words() -> None:
    lines = [
        {"what": "superheat", "expected": "2 K"},  # as job files and entries had it before
        {"what": "pull-down to 5 °C", "expected": "under 90 min"},
        {"reading": "superheat", "expected": "12 K"},
        {"reading": "superheat", "what": "box at 0 °C", "expected": "14 K"},
    ]
    given = case({"as_found": SURFACES, "support": {"figures": lines}})
    found = rows(table(given))
    assert found["superheat"][1].value == "2 K"
    assert found["pull-down to 5 °C"][1].value == "under 90 min"
    assert found["Superheat"][1].value == "12 K"
    assert found["superheat, box at 0 °C"][1].value == "14 K"
    assert steps.refusals(given, "support") == {}


@pytest.mark.parametrize(
    ("line", "field", "says"),
    [
        ({"expected": "6 K"}, "reading", "Expected the reading it is of"),
        ({"reading": "superheat", "expected": "warm"}, "expected", "Expected a temperature diff"),
        ({"reading": "superheat", "expected": "5 to 8 to 9 K"}, "expected", "or two"),
        ({"reading": "superheat", "expected": "8 to 5 K"}, "expected", "the lower"),
        ({"reading": "box temperature", "expected": "4 K to 2 °C"}, "expected", "the same unit"),
        ({"reading": "suction pressure", "expected": "5 K"}, "expected", "unit of temperature"),
        ({"reading": "superheat", "expected": "6 K", "tolerance": "some"}, "tolerance", "Expected"),
        ({"reading": "superheat", "expected": "6 K", "tolerance": "-1 K"}, "tolerance", "above"),
    ],
)
def test_that_a_makers_figure_that_can_not_be_compared_is_refused(
    line: dict[str, str], field: str, says: str
) -> None:
    refused = steps.refusals(case({"support": {"figures": [line]}}), "support")
    assert says in refused.pop(f"figures[0].{field}")
    assert not refused


def test_that_the_evidence_is_a_table_of_faults_by_readings() -> None:
    (found,) = (each for each in steps.work_out(ran(), "as_found").tables if each.key == "evidence")
    assert sorted(found.heads[1:]) == [
        "over ambient: usual",
        "subcooling: usual",
        "superheat: usual",
    ]
    assert [row[0].value for row in found.rows] == [
        "low charge",
        "restriction",
        "poor airflow or iced coil",
        "valve fault",
        "overcharge",
        "dirty condenser",
    ]
    for row in found.rows:
        for cell in row[1:]:
            assert cell.value in ("for", "against", "nothing")
            assert cell.why


def hose_rows() -> list[Any]:
    """Geometry, and density by CoolProp 8.0.0: COMPUTED outside of this program, of 110 g."""
    with HOSES.open(encoding="utf-8") as file:
        return [row for row in csv.DictReader(file) if row["refrigerant"] == "R290"]


@pytest.mark.parametrize("hose", hose_rows(), ids=lambda row: f"{row['id_mm']}x{row['length_in']}")
def test_that_a_hose_is_said_to_cost_its_content(hose: dict[str, str]) -> None:
    line = {"hose_length": f"{hose['length_in']} in", "hose_bore": f"{hose['id_mm']} mm"}
    given = case(
        {"as_found": SURFACES | {"ambient": f"{hose['t_C']} °C"}, "weigh_in": {"lines": [line]}},
        equipment={"charge": "110 g"},
    )
    said = " ".join(steps.work_out(given, "as_found").sentences)
    assert f"costs {float(hose['sat_vapour_g']):.1f} g" in said
    assert f"{float(hose['satvap_pct_of_110g']):.1f} % of the charge" in said
    assert f"with liquid in it {float(hose['liquid_g']):.1f} g" in said
    assert f"{float(hose['liq_pct_of_110g']):.1f} % of the charge" in said
    assert "the hose given at the weigh-in" in said


def test_that_a_hose_assumed_is_said_to_be() -> None:
    said = " ".join(steps.work_out(ran(), "as_found").sentences)
    assert "a 36 in hose of 4.8 mm bore, for none is given" in said
    assert "weighing in does" in said


@pytest.mark.parametrize(
    ("typed", "equipment"),
    [({"tapped": "yes"}, {}), ({}, {"factory_sealed": "no"}), ({}, {"charge": ""})],
)
def test_that_no_cost_is_said_where_there_is_none_to_mind(
    typed: dict[str, str], equipment: dict[str, str]
) -> None:
    given = case({"as_found": SURFACES | typed}, equipment=equipment)
    assert "hose" not in " ".join(steps.work_out(given, "as_found").sentences).replace(
        "It needs a hose", ""
    )


@pytest.mark.parametrize("step", ["as_found", "as_left"])
@given(data=st.data())
def test_that_any_readings_stand_beside_any_others(step: str, data: st.DataObject) -> None:
    drawn = {key: data.draw(typed(STEPS[key])) for key in ("as_found", "as_left", "support")}
    found = beside.table(case(drawn), step, [other(), other("E-2, as left 2025-01-01")])
    if found is not None:
        assert all(len(each) == len(found.heads) for each in found.rows)
