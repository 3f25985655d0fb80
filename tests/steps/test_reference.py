"""The reference table against points printed elsewhere, and what is asked for badly."""

import csv
import re
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import ChargebenchError, ReadingRefused
from chargebench.fluids import names, refrigerant
from chargebench.steps import NOTHING, answer
from chargebench.steps.forms.reference import BY_PRESSURE, BY_TEMPERATURE, FORMS, PRESSURES, usual
from chargebench.steps.known import known
from chargebench.steps.reference import Tabled, tabled
from tests.steps.anything import typed
from tests.steps.cases import row

CHECKDATA = Path(__file__).parents[1] / "checkdata"
HEADS = {
    "saturation_pressure": 2,  # dew: as printed for pure fluids, where both are one
    "saturated_liquid_density": 3,
    "saturated_vapour_density": 4,
}


def published() -> list[Any]:
    """Printed points of pure refrigerants at a temperature; each row names its source."""
    with (CHECKDATA / "saturation_published.csv").open(encoding="utf-8") as file:
        return [
            pytest.param(line, id=f"{line['refrigerant']} {line['quantity']} {line['condition']}")
            for line in csv.DictReader(file)
            if line["quantity"] in HEADS
            and line["refrigerant"] in names()
            and refrigerant(line["refrigerant"]).kind == "pure"
            and re.fullmatch(r"t=-?[\d.]+ C", line["condition"])
        ]


def asked(by: str, name: str, system: Any = "SI", site: Any = NOTHING, **typed: str) -> Tabled:
    return tabled(answer(FORMS[by], usual(system, name, by) | typed), by, site)


def number(text: str) -> float:
    return float(text.replace("\u2212", "-"))


@pytest.mark.parametrize("line", published())
def test_that_a_row_agrees_with_the_printed_point(line: dict[str, str]) -> None:
    at = line["condition"].removeprefix("t=")
    unit = {"pressure": "Pa", "density": "kg/m³"}
    table = asked(BY_TEMPERATURE, line["refrigerant"], low=at, high=at, step="1 K", **unit)
    (shown,) = table.rows
    expected, tolerance = float(line["expected"]), float(line["tolerance"])
    found = number(shown[HEADS[line["quantity"]]])
    # Four digits that count are shown: half of the last one is added to the source's tolerance.
    rounding = 0.5 * 10 ** (len(str(int(expected))) - 4) if expected >= 1 else 0.0005
    assert found == pytest.approx(expected, abs=tolerance + rounding)


# Johnson Controls, CSV series manual, table 15: R410A saturation temperatures by gauge pressure,
# printed in whole degrees.
@pytest.mark.parametrize(("psig", "fahrenheit"), [("0 psig", -60), ("20 psig", -28)])
def test_that_a_chart_by_pressure_agrees_with_the_printed_one(psig: str, fahrenheit: int) -> None:
    table = asked(BY_PRESSURE, "R410A", "IP", low=psig, high=psig, step="1 psig")
    ((pressure, bubble, dew, *_),) = table.rows
    assert f"{number(pressure):.0f} psig" == psig
    assert number(bubble) == pytest.approx(fahrenheit, abs=1)
    assert number(dew) == pytest.approx(fahrenheit, abs=1)


def test_that_gauge_pressures_are_above_the_air_of_the_site() -> None:
    high = row("site", {"name": "Mountain hut", "elevation": "2000 m"})
    # ISO 2533, table: 795.0 hPa at 2000 m, against 1013.25 hPa at sea level (from memory).
    at_sea = asked(BY_TEMPERATURE, "R290", low="0 °C", high="0 °C")
    on_high = asked(BY_TEMPERATURE, "R290", site=high, low="0 °C", high="0 °C")
    apart = on_high.points[0].dew_pressure - at_sea.points[0].dew_pressure
    assert apart == pytest.approx(0.21825, abs=1e-4)
    assert "795.0 hPa" in on_high.says[0]
    absolute = asked(BY_TEMPERATURE, "R290", site=high, low="0 °C", high="0 °C", pressure="bar(a)")
    assert absolute.points[0].dew_pressure == pytest.approx(
        on_high.points[0].dew_pressure + 0.7950, abs=1e-4
    )


@pytest.mark.parametrize("unit", PRESSURES)
def test_that_every_unit_of_pressure_is_the_same_pressure(unit: str) -> None:
    table = asked(BY_TEMPERATURE, "R134a", low="0 °C", high="0 °C", pressure=unit)
    # R134a at 0 °C: 292.8 kPa, ASHRAE Handbook of Fundamentals (from memory).
    factor = {"Pa": 1e-3, "hPa": 0.1, "mbar": 0.1, "kPa(a)": 1, "MPa(a)": 1e3, "bar(a)": 100}
    factor |= {"kPa(g)": 1, "MPa(g)": 1e3, "bar(g)": 100, "psia": 6.894757, "psig": 6.894757}
    factor |= {"atm": 101.325, "Torr": 0.1333224, "mmHg": 0.1333224, "micron": 0.0001333224}
    factor |= {"inHg": 3.386389, "inHg(a)": 3.386389}
    gauge = 101.325 if unit in ("psig", "bar(g)", "kPa(g)", "MPa(g)", "inHg") else 0
    kilopascal = table.points[0].dew_pressure * factor[unit] + gauge
    assert kilopascal == pytest.approx(292.8, abs=0.2)


def test_that_rows_outside_the_domain_are_left_out_and_said() -> None:
    table = asked(BY_TEMPERATURE, "R744", low="20 °C", high="40 °C", step="5 K")
    assert [each[0] for each in table.rows] == ["20.0", "25.0", "30.0"]
    assert "2 rows outside are left out" in table.says[1]


def test_that_a_zeotrope_has_a_glide_and_a_pure_fluid_none() -> None:
    assert asked(BY_TEMPERATURE, "R407C").glides
    assert not asked(BY_TEMPERATURE, "R290").glides
    assert asked(BY_PRESSURE, "R407C").glides
    assert not asked(BY_PRESSURE, "R290").glides
    for bubble, dew in ((each[1], each[2]) for each in asked(BY_PRESSURE, "R407C").chart):
        assert bubble > dew


@pytest.mark.parametrize(
    "typed",
    [
        {"low": "10 °C", "high": "0 °C"},
        {"step": "0 K"},
        {"step": "-5 K"},
        {"step": "0.01 K"},
    ],
)
def test_that_a_range_without_end_is_refused(typed: dict[str, str]) -> None:
    with pytest.raises(ReadingRefused, match="Expected a step"):
        asked(BY_TEMPERATURE, "R290", **typed)


@pytest.mark.parametrize("name", names())
def test_that_every_refrigerant_has_a_table_and_what_is_known_of_it(name: str) -> None:
    assert asked(BY_TEMPERATURE, name).rows
    assert asked(BY_PRESSURE, name, "IP").rows
    facts = {each.what: each for each in known(name, "SI")}
    for what in ("Model", "Equation", "Computed by", "Largest fit error", "Holds from, to"):
        assert facts[what].value
    assert facts["Safety class"].source
    assert facts["Safety class"].mark
    assert any(what.startswith("GWP") for what in facts)
    assert ("Estimated pair data" in facts) == (name == "R438A")


@pytest.mark.parametrize("by", FORMS)
@given(data=st.data(), name=st.sampled_from(names()))
def test_that_any_text_is_tabled_or_refused_in_words(
    by: str, data: st.DataObject, name: str
) -> None:
    drawn = data.draw(typed(FORMS[by]))
    few = data.draw(st.sets(st.sampled_from(sorted(drawn)), max_size=3)) if drawn else set()
    answers = answer(FORMS[by], usual("SI", name, by) | {key: drawn[key] for key in few})
    if answers.refusals or answers.missing:
        return
    try:
        table = tabled(answers, by, NOTHING)
    except ChargebenchError:  # the only thing a person is told; anything else is a bug
        return
    assert len(table.rows) == len(table.points) <= 400
    assert all(len(each) == len(table.heads) for each in table.rows)
