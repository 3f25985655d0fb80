"""Standing pressure test with nitrogen: corrected for temperature, with what it could have seen.

Nitrogen only, through a regulator and with a relief valve: never oxygen, never compressed air.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from chargebench.calc.leak_flow import smallest_leak, time_needed
from chargebench.calc.scale import COVERAGE
from chargebench.errors import OutsideDomain, PressureTooHigh
from chargebench.units import Q, Quantity, dimensions, gauge
from chargebench.words import say

__all__ = [
    "PressureVerdict",
    "PressureWord",
    "State",
    "check_test_pressure",
    "drop_uncertainty",
    "expected_pressure",
    "ideal_pressure",
    "judge",
    "smallest_leak",
    "time_needed",
]

# Ideal less real change of nitrogen's pressure at constant volume, near 15 °C: 8.3e-6 of
# p**2 |dT| per bar and kelvin, from 10 to 40 bar (COOLPROP, equation of state of nitrogen).
_IDEAL_ERROR_PER_BAR_K = 8.3e-6


class PressureWord(StrEnum):
    """What a standing pressure test says."""

    HOLDS = "no leak seen"
    LEAKS = "leak"
    ROSE = "rose more than its temperature explains"


@dataclass(frozen=True, slots=True)
class State:
    """Nitrogen at one reading: absolute pressure, temperature, and real density where known."""

    pressure: Quantity
    temperature: Quantity
    density: Quantity | None = None


@dataclass(frozen=True, slots=True)
class PressureVerdict:
    """A pressure test judged: expected and measured end pressure, doubt, smallest leak seen."""

    word: PressureWord
    expected: Quantity  # Pa, absolute
    drop: Quantity  # Pa, expected - measured
    expanded_uncertainty: Quantity  # Pa, k = 2
    ideal: bool  # no real density was given
    smallest_leak: Quantity | None  # Pa m3/s of nitrogen; None without volume and time


@dimensions(planned="[pressure]")
def check_test_pressure(*, planned: Quantity, design_pressures: Mapping[str, Quantity]) -> None:
    """Refuse a test pressure above the lowest design pressure of the parts under test.

    Parameters
    ----------
    planned : Quantity [Pa]
        Test pressure, gauge.
    design_pressures : mapping of str to Quantity [Pa]
        Gauge pressures from the nameplate by side, as "low side": each part under test.

    Raises
    ------
    PressureTooHigh
        Above the lowest, or none is known.

    Source
    ------
    COMMON (not above the nameplate's low-side design pressure; from memory).
    """
    if not design_pressures:
        raise PressureTooHigh(
            "Expected a design pressure from the nameplate before a pressure test is planned."
        )
    side = min(design_pressures, key=lambda name: design_pressures[name].m_as("Pa"))
    lowest = design_pressures[side]
    if planned.m_as("Pa") > lowest.m_as("Pa") * (1 + 1e-9):
        unit = str(lowest.units)
        raise PressureTooHigh(
            say(
                "Expected a test pressure of at most {lowest}, the design pressure of the "
                "{side}; {planned} could burst it.",
                lowest=gauge(lowest, unit, 1),
                side=side,
                planned=gauge(planned, unit, 1),
            )
        )


@dimensions(
    start_pressure="[pressure]", start_temperature="[temperature]", end_temperature="[temperature]"
)
def ideal_pressure(
    *, start_pressure: Quantity, start_temperature: Quantity, end_temperature: Quantity
) -> Quantity:
    """End pressure of a tight system by the ideal gas law.

    Parameters
    ----------
    start_pressure : Quantity [Pa]
        Absolute.
    start_temperature, end_temperature : Quantity [K]
        Of the gas, which lags behind the air around it.

    Returns
    -------
    Quantity [Pa]
        Absolute.

    Raises
    ------
    OutsideDomain
        Pressure or temperature not above absolute zero.

    Notes
    -----
    p2 = p1 T2 / T1. Above 10 bar use `expected_pressure` with densities: at 30 bar and 10 K the
    ideal law is 0.08 bar off.

    Source
    ------
    ACHR153295.
    """
    first, last = start_temperature.m_as("kelvin"), end_temperature.m_as("kelvin")
    pressure = start_pressure.m_as("Pa")
    if min(first, last, pressure) <= 0:
        raise OutsideDomain("Expected absolute pressure and temperatures above zero.")
    return Q(pressure * last / first, "Pa")


def expected_pressure(*, start: State, end: State) -> Quantity:
    """End pressure a tight system would show at the end temperature.

    Parameters
    ----------
    start, end : State [Pa, K, kg/m**3]
        As read; with both densities the real gas is used, otherwise the ideal law.

    Returns
    -------
    Quantity [Pa]
        Absolute.

    Raises
    ------
    OutsideDomain
        Pressure, temperature or density not above zero.

    Notes
    -----
    A tight system keeps its density: p2 = p_end rho_start / rho_end, with rho_end at the end
    reading. Compressibility changes by under 1 % of a drop, so the step to it is taken as linear.

    Source
    ------
    COOLPROP (density of nitrogen, passed in); ACHR153295 (ideal form).
    """
    if start.density is None or end.density is None:
        return ideal_pressure(
            start_pressure=start.pressure,
            start_temperature=start.temperature,
            end_temperature=end.temperature,
        )
    first, last = start.density.m_as("kg/m**3"), end.density.m_as("kg/m**3")
    if min(first, last, end.pressure.m_as("Pa")) <= 0:
        raise OutsideDomain("Expected pressures and densities above zero.")
    return Q(end.pressure.m_as("Pa") * first / last, "Pa")


@dimensions(gauge_resolution="[pressure]", thermometer="[temperature]", other_gauge="[pressure]")
def drop_uncertainty(
    *,
    start: State,
    end: State,
    gauge_resolution: Quantity,
    thermometer: Quantity,
    other_gauge: Quantity | None = None,
) -> Quantity:
    """Standard uncertainty of the drop left after correction for temperature.

    Parameters
    ----------
    start, end : State [Pa, K, kg/m**3]
        As read.
    gauge_resolution : Quantity [Pa]
        Smallest step the gauge shows.
    thermometer : Quantity [K]
        Standard uncertainty of one temperature of the gas, as a difference.
    other_gauge : Quantity [Pa] or None
        Standard uncertainty of one gauge where the two readings are from two; with the same gauge
        its error cancels.

    Returns
    -------
    Quantity [Pa]
        Standard uncertainty (k = 1).

    Notes
    -----
    u**2 = 2 (res / sqrt 12)**2 + 2 (p uT / T)**2 + 2 u_gauge**2, and without densities the error
    of the ideal law, 8.3e-6 p**2 |dT| per bar and kelvin, as a half-width.

    Source
    ------
    JCGM100, 4.3.7 and 5.1.2; COOLPROP (error of the ideal law).
    """
    pressure = start.pressure.m_as("Pa")
    first, last = start.temperature.m_as("kelvin"), end.temperature.m_as("kelvin")
    if min(first, last, pressure) <= 0:
        raise OutsideDomain("Expected absolute pressure and temperatures above zero.")
    parts = [
        math.sqrt(2 / 12) * gauge_resolution.m_as("Pa"),
        math.sqrt(2) * pressure * thermometer.m_as("delta_degC") / first,
    ]
    if other_gauge is not None:
        parts.append(math.sqrt(2) * other_gauge.m_as("Pa"))
    if start.density is None or end.density is None:
        bar = pressure / 1e5
        parts.append(_IDEAL_ERROR_PER_BAR_K * bar**2 * abs(last - first) * 1e5 / math.sqrt(3))
    return Q(math.hypot(*parts), "Pa")


@dimensions(
    gauge_resolution="[pressure]",
    thermometer="[temperature]",
    other_gauge="[pressure]",
    volume="[volume]",
    time="[time]",
)
def judge(
    *,
    start: State,
    end: State,
    gauge_resolution: Quantity,
    thermometer: Quantity,
    other_gauge: Quantity | None = None,
    volume: Quantity | None = None,
    time: Quantity | None = None,
) -> PressureVerdict:
    """Verdict on a standing pressure test.

    Parameters
    ----------
    start, end : State [Pa, K, kg/m**3]
        Readings; densities of nitrogen at them where known.
    gauge_resolution : Quantity [Pa]
        Smallest step the gauge shows.
    thermometer : Quantity [K]
        Standard uncertainty of one gas temperature.
    other_gauge : Quantity [Pa] or None
        Standard uncertainty of one gauge, where two were used.
    volume, time : Quantity [L, h] or None
        For the smallest leak the test could see.

    Returns
    -------
    PressureVerdict [Pa, Pa m**3/s]
        Leak only where the drop is larger than its expanded uncertainty.

    Raises
    ------
    OutsideDomain
        Pressure, temperature, density or time not above zero.

    Source
    ------
    JCGM100, 6.3.3 (k = 2).
    """
    expected = expected_pressure(start=start, end=end)
    standard = drop_uncertainty(
        start=start,
        end=end,
        gauge_resolution=gauge_resolution,
        thermometer=thermometer,
        other_gauge=other_gauge,
    )
    expanded = Q(COVERAGE * standard.m_as("Pa"), "Pa")
    drop = Q(expected.m_as("Pa") - end.pressure.m_as("Pa"), "Pa")
    word = PressureWord.HOLDS
    if abs(drop.m_as("Pa")) > expanded.m_as("Pa"):
        word = PressureWord.LEAKS if drop.m_as("Pa") > 0 else PressureWord.ROSE
    smallest = None
    if volume is not None and time is not None:
        smallest = smallest_leak(expanded_uncertainty=expanded, volume=volume, time=time)
    ideal = start.density is None or end.density is None
    return PressureVerdict(word, expected, drop, expanded, ideal, smallest)
