"""The same weigh-in typed in any units comes to the same verdict and masses."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from chargebench import steps
from chargebench.steps import Typed
from tests.steps.cases import case

# NIST SP 811, B.8 (from memory): 1 lb = 453.592 37 g exactly, 1 oz = 1/16 lb.
GRAMS = {"g": Fraction(1), "kg": Fraction(1_000), "oz": Fraction(45_359_237, 1_600_000),
         "lb": Fraction(45_359_237, 100_000)}  # fmt: skip
UNITS = st.sampled_from(sorted(GRAMS))


def _typed(grams: Fraction, unit: str) -> str:
    """A mass in a unit, to ten digits after the mark: less than a tenth of a milligram off."""
    return f"{float(grams / GRAMS[unit]):.10f} {unit}"


@given(
    nameplate=st.integers(400, 5_000),
    start=st.integers(60_000, 90_000),
    off=st.integers(-60, 60),
    plate_unit=UNITS,
    scale_unit=UNITS,
)
def test_that_units_change_neither_verdict_nor_masses(
    nameplate: int, start: int, off: int, plate_unit: str, scale_unit: str
) -> None:
    """All in tenths of a gram, which is also the scale's resolution."""

    def work(plate: str, scale: str) -> tuple[str, list[int], float]:
        end = start - nameplate - off
        typed: Typed = {
            "kind": "into an evacuated system",
            "lines": [
                {
                    "cylinder": "C-014",
                    "scale": "S-1",
                    "arrangement": "cylinder on the scale",
                    "start": _typed(Fraction(start, 10), scale),
                    "end": _typed(Fraction(end, 10), scale),
                    "hose_state": "no hose, closed at the equipment",
                }
            ],
        }
        given_case = case(
            {"weigh_in": typed, "nameplate": {"charge": _typed(Fraction(nameplate, 10), plate)}}
        )
        worked = steps.work_out(given_case, "weigh_in").result
        moved = [line.mass_mg for line in steps.movements(given_case, "weigh_in")]
        return worked.verdict.word, moved, worked.verdict.difference.m_as("g")

    word, moved, difference = work("g", "g")
    other_word, other_moved, other_difference = work(plate_unit, scale_unit)
    assert word == other_word
    assert abs(moved[0] - other_moved[0]) <= 1
    assert abs(difference - other_difference) < 1e-3
    assert abs(difference - off / 10) < 1e-6
