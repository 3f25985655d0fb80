"""How far the stored curves are off CoolProp: one row a refrigerant, at random points of its own.

    python -m tests.curve_accuracy [--points 1500] [NAME ...]

Worst errors over both lines, in per cent and kelvin. Where the mixture solver fails, a traced
phase envelope is asked instead: another way through the same equation. What that can not answer
either, or answers from another root (off by more than a per cent), is counted and compared with
nothing. Ends with 1 where a limit is missed.
"""

import argparse
import random
import sys
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

from CoolProp import CoolProp

from chargebench.fluids import names, refrigerant, saturation
from chargebench.fluids.child import equation_state
from chargebench.fluids.saturated import Saturation

POINTS = 1500
# What the curves are to hold.
PRESSURE_MOST = 0.001  # per cent
KELVIN_MOST = 0.01
DENSITY_MOST = 0.01  # per cent
OTHER_ROOT = 1.0  # per cent; a trace that jumped to another root is off by far more
QUALITIES = (0, 1)
BAND_GAP = 1.0  # K; failures closer together than this are one band


@dataclass
class Worst:
    """Largest errors of one refrigerant, and what could not be compared."""

    name: str
    pressure: float = 0.0  # per cent
    kelvin: float = 0.0
    liquid: float = 0.0  # per cent
    vapour: float = 0.0  # per cent
    compared: int = 0
    traced: int = 0  # of these, answered by the traced envelope
    skipped: list[tuple[int, float]] = field(default_factory=list)  # quality, kelvin

    @property
    def held(self) -> bool:
        """Whether every limit is kept."""
        return (
            self.pressure <= PRESSURE_MOST
            and self.kelvin <= KELVIN_MOST
            and max(self.liquid, self.vapour) <= DENSITY_MOST
        )

    def take(self, curve: Saturation, quality: int, kelvin: float, state: Any) -> None:
        """Compare the curves with an answered state."""
        bubble = quality == 0
        pascal, density = float(state.p()), float(state.rhomass())
        own = curve.bubble_pa(kelvin) if bubble else curve.dew_pa(kelvin)
        self.pressure = max(self.pressure, 100 * abs(own / pascal - 1))
        self.kelvin = max(self.kelvin, abs(_temperature(curve, quality, pascal) - kelvin))
        if bubble:
            self.liquid = max(self.liquid, 100 * abs(curve.liquid_kgm3(kelvin) / density - 1))
        else:
            self.vapour = max(self.vapour, 100 * abs(curve.vapour_kgm3(kelvin) / density - 1))
        self.compared += 1

    def bands(self) -> str:
        """Temperatures of what was skipped, as bands [°C] of each line."""
        said = []
        for quality, line in zip(QUALITIES, ("bubble", "dew"), strict=True):
            at = sorted(kelvin - 273.15 for each, kelvin in self.skipped if each == quality)
            said += [f"{line} {low:.1f} to {high:.1f}" for low, high in _joined(at)]
        return ", ".join(said) or "none"


def _temperature(curve: Saturation, quality: int, pascal: float) -> float:
    """Temperature of a pressure; at the ends of the domain the last digits may lie outside."""
    low, high = curve.axis.low, curve.axis.high
    line = curve.bubble_pa if quality == 0 else curve.dew_pa
    inside = min(max(pascal, line(low)), line(high))
    return curve.bubble_kelvin(inside) if quality == 0 else curve.dew_kelvin(inside)


def _joined(sorted_at: Iterable[float]) -> Iterator[tuple[float, float]]:
    band: tuple[float, float] | None = None
    for at in sorted_at:
        if band is not None and at - band[1] <= BAND_GAP:
            band = (band[0], at)
            continue
        if band is not None:
            yield band
        band = (at, at)
    if band is not None:
        yield band


def worst(name: str, points: int) -> Worst:
    """Largest errors of one refrigerant over both lines at random temperatures."""
    curve, known = saturation(name), refrigerant(name)
    state = equation_state(known.equation, known.equation_shares)
    traced: Any = None
    dice = random.Random(f"accuracy of {name}")  # noqa: S311 - repeatable, not secret
    found = Worst(name)
    for kelvin in (dice.uniform(curve.axis.low, curve.axis.high) for _ in range(points)):
        for quality in QUALITIES:
            if _answers(state, quality, kelvin):
                found.take(curve, quality, kelvin, state)
                continue
            if traced is None:
                traced = equation_state(known.equation, known.equation_shares)
                traced.build_phase_envelope("")
            if _answers(traced, quality, kelvin) and _same_root(curve, quality, kelvin, traced):
                found.take(curve, quality, kelvin, traced)
                found.traced += 1
            else:
                found.skipped.append((quality, kelvin))
    return found


def _answers(state: Any, quality: int, kelvin: float) -> bool:
    try:
        state.update(CoolProp.QT_INPUTS, quality, kelvin)
    except ValueError:
        return False
    return True


def _same_root(curve: Saturation, quality: int, kelvin: float, state: Any) -> bool:
    own = curve.bubble_pa(kelvin) if quality == 0 else curve.dew_pa(kelvin)
    return bool(100 * abs(own / state.p() - 1) <= OTHER_ROOT)


HEADS = (
    "refrigerant",
    "pressure %",
    "temperature K",
    "liquid %",
    "vapour %",
    "compared",
    "of these traced",
    "skipped",
    "bands skipped, °C",
    "kept",
)


def row(found: Worst) -> str:
    """One refrigerant, tab-separated."""
    errors = (found.pressure, found.kelvin, found.liquid, found.vapour)
    counts = (found.compared, found.traced, len(found.skipped))
    kept = "yes" if found.held else "NO"
    return "\t".join(
        (found.name, *(f"{e:.1e}" for e in errors), *map(str, counts), found.bands(), kept)
    )


def main() -> int:
    """Print the table; 1 where a limit is missed."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--points", type=int, default=POINTS, help="random points a line")
    options.add_argument("names", nargs="*", help="these refrigerants only")
    given = options.parse_args()
    sys.stdout.write("\t".join(HEADS) + "\n")
    missed = 0
    for name in given.names or names():
        found = worst(name, given.points)
        missed += not found.held
        sys.stdout.write(row(found) + "\n")
        sys.stdout.flush()
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
