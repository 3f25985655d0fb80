"""Standing pressure test: against temperature, against design pressure, in any unit."""

from typing import Any

import pytest

from chargebench import steps
from chargebench.calc.pressure_test import PressureVerdict
from chargebench.steps import Case, Typed
from chargebench.steps.pressure_test import PressureTested
from chargebench.units import Q
from tests.steps.cases import case

HELD = {
    "gas": "dry nitrogen",
    "regulated": "yes",
    "start_pressure": "150 psig",
    "start_temperature": "70 F",
    "hold": "30 min",
    "end_pressure": "150 psig",
    "end_temperature": "70 F",
    "gauge_resolution": "0.5 psig",
    "temperature_uncertainty": "0.5 K",
}


def held(typed: dict[str, str] | None = None, **more: Any) -> Case:
    answers: Typed = {**HELD, **(typed or {})}
    return case({"pressure_test": answers}, **more)


def verdict(given: Case) -> PressureVerdict:
    found = steps.work_out(given, "pressure_test").result
    assert isinstance(found, PressureTested)
    return found.verdict


def test_that_a_steady_pressure_shows_no_leak() -> None:
    assert verdict(held()).word == "no leak seen"


def test_that_a_fall_beyond_its_doubt_is_a_leak() -> None:
    # u = sqrt(2) (0.5 / sqrt(12)) psi and sqrt(2) 164.7 x 0.5 / 294 psi: U = 2 x 0.45 = 0.9 psi.
    assert verdict(held({"end_pressure": "149.5 psig"})).word == "no leak seen"
    assert verdict(held({"end_pressure": "148.5 psig"})).word == "leak"
    assert verdict(held({"end_pressure": "152 psig"})).word not in ("leak", "no leak seen")


def test_that_cooling_explains_a_fall() -> None:
    # ACHR News 153295, inputs SEEN, result COMPUTED there: 150 psig at 80 F -> 70 F: 146.95 psig.
    cooled = {"start_temperature": "80 F", "end_pressure": "147 psig"}
    found = verdict(held(cooled))
    assert found.word == "no leak seen"
    gauge = found.expected - Q(1, "atm")
    assert gauge.m_as("psi") == pytest.approx(146.95, abs=0.1)  # real nitrogen: 0.03 psi less


def test_that_a_test_may_reach_the_lowest_design_pressure_and_not_pass_it() -> None:
    assert steps.refusals(held(), "pressure_test") == {}
    assert steps.refusals(held({"start_pressure": "10.342 bar(g)"}), "pressure_test") == {}
    refused = steps.refusals(held({"start_pressure": "151 psig"}), "pressure_test")
    assert list(refused) == ["start_pressure"]
    assert "the design pressure of the low side" in refused["start_pressure"]


# Whichever side bears less counts, and without the weaker side's no test is allowed.
@pytest.mark.parametrize(
    ("low", "high", "start", "refused"),
    [
        ("150 psig", "320 psig", "150 psig", ""),
        (
            "150 psig",
            "320 psig",
            "150.1 psig",
            "150.0 psig, the design pressure of the low side",
        ),
        ("320 psig", "150 psig", "150 psig", ""),
        ("320 psig", "150 psig", "150.1 psig", "150.0 psig, the design pressure of the high side"),
        ("150 psig", "", "150 psig", ""),
        ("150 psig", "", "150.1 psig", "at most 150.0 psig"),
        ("", "320 psig", "150 psig", "Expected the low-side design pressure too"),
    ],
)
def test_that_the_lowest_design_pressure_of_the_nameplate_counts(
    low: str, high: str, start: str, refused: str
) -> None:
    plate = {"low_side_design": low, "high_side_design": high}
    found = steps.refusals(held({"start_pressure": start}, equipment=plate), "pressure_test")
    assert refused in found.get("start_pressure", "")
    assert bool(found) is bool(refused)


def texts(given: Case) -> dict[str, str]:
    return {
        each.key: each.value if isinstance(each.value, str) else given.shown(each.value)
        for each in steps.work_out(given, "pressure_test").figures
    }


# 29 CFR and EU practice differ on tracers: the words are the rule set's own, with its source.
@pytest.mark.parametrize(
    ("rule_set", "advice", "source"),
    [
        ("us-federal", "trace of R22", "EPA608, test topics"),
        ("eu-2024-573", "No fluorinated or other organohalogen gas", "RD552/2019, IF-09 1.4.2"),
        ("gb", "No fluorinated gas as a tracer", "COMMON, good practice"),
        ("generic", "Nitrogen alone first", "COMMON, good practice"),
    ],
)
def test_that_advice_on_trace_gas_is_the_rule_sets_and_stands_before_pressure_goes_in(
    rule_set: str, advice: str, source: str
) -> None:
    given = case({"pressure_test": {"gas": "nitrogen with trace gas"}}, rule_set=rule_set)
    found = {each.key: each for each in steps.work_out(given, "pressure_test").figures}
    assert advice in str(found["trace-gas"].value)
    assert found["trace-gas"].source == source
    assert found["trace-gas"].mark == given.rule_set.pressure_test.trace_gas.mark
    assert (found["not-above"].value, found["not-above"].mark) == ("150.0 psig", "MEMORY")


def test_that_the_smallest_leak_and_the_time_a_wanted_one_needs_are_shown() -> None:
    # U V / t (Pfeiffer, 7.1.2): 2 sqrt(2) sqrt((0.5/sqrt(12))**2 + (164.7 0.5/294.26)**2) psi are
    # 0.89 psi or 6.1 kPa; in 4.5 L over 30 min: 6.1e3 x 4.5e-3 / 1800 = 0.0154 Pa m3/s.
    given = held({"leak_wanted": "5 g/yr"})
    found = steps.work_out(given, "pressure_test").result
    assert found.verdict.smallest_leak.m_as("Pa * m**3 / s") == pytest.approx(0.0154, rel=0.02)
    assert texts(given)["smallest-leak"] == "0.15 mbar L/s"
    # As long again as the leak wanted is smaller: 30 min x upper / 5 g/yr.
    hours = 0.5 * found.seen.upper.m_as("g/year") / 5
    needed, still = (
        each.value
        for each in steps.work_out(given, "pressure_test").figures
        if each.key in ("time-needed", "time-still-needed")
    )
    assert not isinstance(needed, str)
    assert not isinstance(still, str)
    assert needed.m_as("hour") == pytest.approx(hours)
    assert still.m_as("hour") == pytest.approx(hours - 0.5)
    assert "time-needed" not in texts(held())
    coarse = held({"leak_wanted": f"{2 * found.seen.upper.m_as('kg/year'):.3f} kg/yr"})
    assert "time-still-needed" not in texts(coarse)


@pytest.mark.parametrize(
    ("hold", "more"), [("29.5 min", "1 more"), ("30 min", ""), ("10 min", "20")]
)
def test_that_a_hold_shorter_than_the_rule_sets_says_how_long_still(hold: str, more: str) -> None:
    said = " ".join(steps.work_out(held({"hold": hold}), "pressure_test").sentences)
    assert ("more minutes" in said) is bool(more)
    assert more in said


def test_that_an_absolute_design_pressure_is_not_taken_as_gauge() -> None:
    # 164.7 psia at sea level is 150 psig, for the air has 14.7 psi.
    plate = {"equipment": {"low_side_design": "164.7 psia"}}
    assert steps.refusals(held({"start_pressure": "150 psig"}, **plate), "pressure_test") == {}
    assert steps.refusals(held({"start_pressure": "155 psig"}, **plate), "pressure_test") != {}


def test_that_without_a_design_pressure_no_test_is_signed() -> None:
    bare = {"equipment": {"low_side_design": "", "high_side_design": ""}}
    assert steps.refusals(held(**bare), "pressure_test") == {
        "start_pressure": (
            "Expected a design pressure from the nameplate before a pressure test is planned."
        )
    }


def test_that_todays_nameplate_counts_before_the_register() -> None:
    given = case({"pressure_test": HELD, "nameplate": {"low_side_design": "140 psig"}})
    assert list(steps.refusals(given, "pressure_test")) == ["start_pressure"]


def test_that_a_test_wants_a_gauge_pressure_and_a_regulator() -> None:
    assert steps.refusals(held({"start_pressure": "150 psia"}), "pressure_test") == {
        "start_pressure": "Expected a gauge pressure, such as 150 psig or 10 bar(g)."
    }
    assert list(steps.refusals(held({"regulated": "no"}), "pressure_test")) == ["regulated"]


# The same readings: 150 psig = 10.342 136 bar, 147 psig = 10.135 293 bar (NIST SP 811, B.8).
METRIC = {
    "start_pressure": "10.342136 bar(g)",
    "start_temperature": "26.6667 °C",
    "end_pressure": "10.135293 bar(g)",
    "end_temperature": "21.1111 °C",
    "gauge_resolution": "3447.38 Pa",
    "temperature_uncertainty": "0.9 F",
}


def test_that_units_do_not_change_the_verdict() -> None:
    typed = {"start_temperature": "80 F", "end_pressure": "147 psig"}
    imperial, metric = verdict(held(typed)), verdict(held(METRIC))
    assert imperial.word == metric.word
    for name in ("expected", "drop", "expanded_uncertainty"):
        found = getattr(imperial, name).m_as("Pa"), getattr(metric, name).m_as("Pa")
        assert found[0] == pytest.approx(found[1], abs=5)


def test_that_a_pressure_below_a_vacuum_is_no_state() -> None:
    given = held({"end_pressure": "-31 inHg"})
    assert steps.work_out(given, "pressure_test").result is None
