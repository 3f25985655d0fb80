"""Loss reasoning in the leak search and the follow-up.

By hand: 40 g of 100 g came out 365 days after it was last full, so 60 g are missing and the average
loss is 60 g x 365.25 / 365 = 60.04 g a year; 10 g and 20 g more are gone after 60.8 and 121.7 days.
"""

import math
from typing import Any

import pytest

from chargebench import steps
from chargebench.steps import Case, Typed, Worked
from tests.steps.cases import case

TAKEN: Typed = {
    "how": "recovered",
    "lines": [{"cylinder": "C-015", "scale": "S-1", "before": "8 kg", "after": "8.04 kg"}],
}
SEARCH: dict[str, str] = {
    "method": "electronic detector",
    "detector": "D-1",
    "checked_before": "yes",
    "checked_after": "yes",
}
HELD: Typed = {
    "gas": "dry nitrogen",
    "start_pressure": "10 bar(g)",
    "start_temperature": "20 °C",
    "hold": "1 h",
    "end_pressure": "10 bar(g)",
    "end_temperature": "20 °C",
    "gauge_resolution": "0.1 bar(g)",
}
DECAY: Typed = {"decay": [{"at": "0 min", "reading": "50 Pa"}, {"at": "5 min", "reading": "50 Pa"}]}


def lost(**typed: Any) -> Case:
    nameplate = {"last_known_full": "2025-03-02"}
    return case({"recovery": TAKEN, "nameplate": nameplate, "leak_search": SEARCH, **typed})


def worked(given: Case, step: str = "leak_search") -> Worked:
    return steps.work_out(given, step)


def searched(given: Case, step: str = "leak_search") -> dict[str, list[Any]]:
    found = [each for each in worked(given, step).tables if each.key == "searches"]
    return {
        str(name.value): [sees.value, word.value, word.why]
        for one in found
        for name, sees, word in one.rows
    }


@pytest.mark.parametrize("step", ["leak_search", "follow_up"])
def test_that_the_average_loss_stands_with_its_doubt_and_dates(step: str) -> None:
    figures = {each.key: each for each in worked(lost(), step).figures}
    loss = figures["loss"]
    assert not isinstance(loss.value, str)
    assert loss.value.m_as("g/year") == pytest.approx(60.04, abs=0.01)
    assert "365 days" in loss.label
    # Two readings of a 0.1 g scale: U = 2 x 0.1 / sqrt(6) = 0.082 g, in a year 0.082 g/yr.
    assert loss.doubt is not None
    assert loss.doubt.m_as("g/year") == pytest.approx(0.082, abs=0.001)
    assert str(figures["short-10"].value).startswith("2026-05-01")
    assert str(figures["short-20"].value).startswith("2026-07-01")


def test_that_dates_count_from_what_was_weighed_in() -> None:
    line = {
        "cylinder": "C-014",
        "scale": "S-1",
        "arrangement": "cylinder on the scale",
        "start": "4312.5 g",
        "end": "4217.5 g",
        "hose_state": "no hose, closed at the equipment",
    }
    given = lost(weigh_in={"kind": "into an evacuated system", "lines": [line]})
    figures = {each.key: each for each in worked(given, "follow_up").figures}
    # 95 g in: 5 g more are gone after 30.4 days.
    assert str(figures["short-10"].value).startswith("2026-04-01")


def test_that_a_search_says_whether_it_could_have_seen_the_loss() -> None:
    rows = searched(lost())
    sees, word, _ = rows["electronic detector"]
    assert (sees.m_as("g/year"), word) == (pytest.approx(3), "would have seen it")
    unchecked = SEARCH | {"checked_after": "no"}
    sees, word, why = searched(lost(leak_search=unchecked))["electronic detector"]
    assert (sees, word) == ("does not count", "could not have seen it")
    assert "does not count" in why


def test_that_a_search_with_a_find_is_no_search_without_one() -> None:
    found = {**SEARCH, "leaks": [{"where": "valve core"}]}
    assert searched(lost(leak_search=found)) == {}


def test_that_a_pressure_test_sees_a_range_of_refrigerant() -> None:
    given = lost(pressure_test=HELD)
    leak = worked(given, "pressure_test").result.verdict.smallest_leak.m_as("Pa m**3 / s")
    sees, *_ = searched(given, "follow_up")["pressure test"]
    # The formulas of calc.leak_flow by hand: R290 at 20 °C has 8.365 bar (NIST Webbook, from
    # memory) and 44.096 g/mol; nitrogen 11.013 bar and 28.013 g/mol, its viscosity 1.76 of R290's
    # taken one.
    seconds, kelvin = 365.25 * 86_400, 293.15
    bare = leak * 44.096 / (8.314462618 * kelvin) * seconds
    molecular = bare * (8.365 - 1.013) / 10 * math.sqrt(28.013 / 44.096)
    viscous = bare * (8.365**2 - 1.013**2) / (11.013**2 - 1.013**2) * 1.76
    low, high = (float(each) for each in str(sees).removesuffix(" g/yr").split(" to "))
    assert low == pytest.approx(min(molecular, viscous), rel=0.05)
    assert high == pytest.approx(max(molecular, viscous), rel=0.05)


def test_that_a_pressure_test_of_a_volume_unknown_says_so() -> None:
    given = lost(pressure_test={**HELD, "hold": ""})
    assert searched(given)["pressure test"][:2] == ["not known", "may have seen it or not"]


def test_that_a_decay_test_is_never_turned_into_grams() -> None:
    sees, word, why = searched(lost(evacuation=DECAY), "follow_up")["decay test"]
    assert (sees, word) == ("does not count", "could not have seen it")
    assert "never turned into grams a year" in why


def test_that_nothing_is_said_before_a_recovery_is_weighed() -> None:
    assert worked(case({"leak_search": SEARCH}), "follow_up").figures == ()
    assert searched(case({"leak_search": SEARCH})) == {}


def test_that_a_charge_with_nothing_missing_has_no_dates() -> None:
    full: Typed = {
        "how": "recovered",
        "lines": [{"cylinder": "C-015", "scale": "S-1", "before": "8 kg", "after": "8.1 kg"}],
    }
    found = worked(lost(recovery=full), "follow_up")
    assert [each.key for each in found.figures] == ["missing", "loss"]
    assert "neither a leak nor tightness" in found.sentences[0]
