"""Readings of a pressure test against the first, by the ideal gas law worked by hand."""

import pytest

from chargebench import steps
from chargebench.steps import Typed
from chargebench.steps.held import series
from tests.steps.cases import case

# Gay-Lussac at constant volume: 164.696 psia at 300 K is 159.206 psia at 290 K, 5.490 psi less;
# real nitrogen shows 0.16 psi less: its second virial coefficient is about -4.2 cm3/mol at 300 K,
# 0.22 cm3/mol less per kelvin below (Dymond and Smith; from memory). Which of the two laws serves
# hangs on whether the property process runs already, so a tolerance holds both.
READINGS = [
    {"at": "0 min", "reading": "150 psig", "temperature": "26.85 °C"},
    {"at": "10 min", "reading": "144.51 psig", "temperature": "16.85 °C"},
    {"at": "20 min", "reading": "140 psig", "temperature": "16.85 °C"},
    {"at": "25 min", "reading": "150 psig"},
]
TYPED: Typed = {"air_pressure": "1013.25 hPa", "gauge_resolution": "0.1 psig", "readings": READINGS}
PSI = 6894.757


def test_that_temperature_is_taken_out_of_each_reading() -> None:
    held = series(case({"pressure_test": TYPED}))
    assert [each.minutes for each in held] == [0, 10, 20]  # one without a temperature tells nothing
    first = held[0].corrected / PSI
    assert first == pytest.approx(164.696, abs=0.01)
    assert held[1].corrected / PSI == pytest.approx(first, abs=0.2)
    assert first - held[2].corrected / PSI == pytest.approx(4.51, abs=0.2)
    assert held[1].doubt > 0


def test_that_a_test_without_readings_in_between_is_its_start_and_end() -> None:
    typed: Typed = {
        "start_pressure": "150 psig",
        "start_temperature": "70 F",
        "hold": "30 min",
        "end_pressure": "149 psig",
        "end_temperature": "70 F",
    }
    held = series(case({"pressure_test": typed}))
    assert [each.minutes for each in held] == [0, 30]
    assert (held[0].corrected - held[1].corrected) / PSI == pytest.approx(1.0, abs=5e-3)


def test_that_what_can_not_be_excluded_is_said_with_the_verdict() -> None:
    typed: Typed = {
        **TYPED,
        "start_pressure": "150 psig",
        "start_temperature": "70 F",
        "end_pressure": "150 psig",
        "end_temperature": "70 F",
        "hold": "30 min",
        "volume": "4.5 L",
    }
    said = steps.work_out(case({"pressure_test": typed}), "pressure_test").sentences
    assert "can not be excluded" in said[1]
