"""Flags of leak search, pressure test, recovery and vacuum."""

from typing import Any

import pytest

from chargebench.steps import Case, Typed, pressure_test
from tests.flags import raised
from tests.steps.cases import case

SEARCH = {"method": "electronic detector", "checked_before": "yes", "checked_after": "yes"}
HELD = {
    "start_pressure": "150 psig",
    "start_temperature": "70 F",
    "hold": "30 min",
    "end_pressure": "150 psig",
    "end_temperature": "70 F",
    "gauge_resolution": "0.5 psig",
    "temperature_uncertainty": "0.5 K",
}
LINE = {"cylinder": "C-015", "scale": "S-1", "before": "8.000 kg", "after": "8.0950 kg"}


def searched(typed: dict[str, str], *leaks: dict[str, str]) -> Case:
    answers: Typed = {**SEARCH, **typed, "leaks": leaks}
    return case({"leak_search": answers})


def recovered(
    line: dict[str, str] | None = None, answers: dict[str, str] | None = None, **more: Any
) -> Case:
    typed: Typed = {
        "how": "recovered", "opening": "opened for repair", "machine": "R-1",
        "compressor_works": "yes", **(answers or {}), "lines": [LINE | (line or {})],
    }  # fmt: skip
    return case({"recovery": typed}, **more)


def evacuated(typed: Typed) -> Case:
    return case({"evacuation": typed})


def decay(micron: list[float]) -> Typed:
    return {
        "pulled_to": "300 micron",
        "decay": [
            {"at": f"{2 * number} min", "reading": f"{each} micron"}
            for number, each in enumerate(micron)
        ],
    }


def test_that_a_leak_not_verified_tight_is_counted() -> None:
    mended, open_one = {"where": "valve", "verified": "yes"}, {"where": "bend", "verified": "no"}
    flag = raised.by_step(searched({}, mended, open_one, {"where": "cap"}), "leak_search")[
        "leak-not-verified"
    ]
    assert flag.says == (
        "2 of 3 leaks found are not verified tight. Test them before refrigerant goes back in."
    )
    assert (flag.level, flag.source) == ("check", "40CFR82F, 82.152")
    assert raised.by_step(searched({}, mended), "leak_search") == {}


@pytest.mark.parametrize(
    ("after", "words"), [("no", "does not count"), ("", "not proven"), ("yes", "")]
)
def test_that_a_search_without_a_find_has_to_count(after: str, words: str) -> None:
    found = raised.by_step(searched({"checked_after": after}), "leak_search")
    if not words:
        assert found == {}
        return
    assert found["search-not-proven"].says.startswith("Nothing was found, but it")
    assert words in found["search-not-proven"].says
    assert found["search-not-proven"].level == "note"


@pytest.fixture
def ideal(monkeypatch: pytest.MonkeyPatch) -> None:
    """No density of nitrogen at hand, whatever ran before: the ideal law serves."""
    monkeypatch.setattr(pressure_test, "gas_density_ready", lambda: False)


@pytest.mark.usefixtures("ideal")
def test_that_a_fallen_pressure_stops_the_job() -> None:
    fell = raised.by_step(case({"pressure_test": HELD | {"end_pressure": "140 psig"}}),
                          "pressure_test")["pressure-leak"]  # fmt: skip
    # 10 psi are 68.9 kPa (NIST SP 811, B.8); the doubt stands beside it.
    assert fell.says.startswith("Pressure fell by 68.9 kPa (±")
    assert fell.says.endswith("Find the leak before going on.")
    assert (fell.level, fell.figure.split(" (")[0]) == ("stop", "68.9 kPa")


@pytest.mark.usefixtures("ideal")
def test_that_a_risen_pressure_is_read_again() -> None:
    rose = raised.by_step(case({"pressure_test": HELD | {"end_pressure": "160 psig"}}),
                          "pressure_test")["pressure-rise"]  # fmt: skip
    assert rose.says.startswith("Pressure rose by 68.9 kPa (±")
    assert (rose.level, rose.says.endswith("Read again before going on.")) == ("check", True)


def test_that_a_steady_or_unfinished_pressure_test_raises_nothing() -> None:
    assert raised.by_step(case({"pressure_test": HELD}), "pressure_test") == {}
    assert raised.by_step(case({"pressure_test": HELD | {"end_pressure": ""}}),
                          "pressure_test") == {}  # fmt: skip


def test_that_refilling_a_non_refillable_is_flagged() -> None:
    flag = raised.by_step(recovered({"cylinder": "C-016"}), "recovery")["non-refillable-refilled"]
    assert flag.says.startswith("C-016 is non-refillable; recover into a refillable")
    assert (flag.level, flag.about) == ("stop", "cylinder:C-016")
    assert raised.by_step(recovered(), "recovery") == {}


# 0.80 x 10 kg of water x 0.494 (propane at 25 °C, CoolProp 8.0.0, COMPUTED): 3.95 kg.
@pytest.mark.parametrize(("after", "over"), [("11.94 kg", False), ("11.96 kg", True)])
def test_that_filling_over_the_limit_is_flagged(after: str, over: bool) -> None:
    found = raised.by_step(recovered({"after": after}), "recovery")
    assert ("cylinder-overfilled" in found) is over


def test_that_an_overfilling_stays_a_flag_with_its_reason() -> None:
    line = {"after": "12 kg", "override": "no other cylinder here"}
    typed = raised.by_step(recovered(line), "recovery")["cylinder-overfilled"]
    assert typed.says.endswith("Filled all the same: no other cylinder here")
    # Once signed the book holds it already; it is not counted twice.
    signed = recovered(
        line, signed=("recovery",), cylinder_content_mg={"C-015": {"R290": 4_000_000}}
    )
    assert "would hold 4.000 kg" in raised.by_step(signed, "recovery")["cylinder-overfilled"].says


def test_that_mixing_refrigerants_is_flagged_but_for_mixed_waste() -> None:
    other = {"C-015": {"refrigerant": "R134a", "contents": "recovered", "refillable": "no"}}
    found = raised.by_step(recovered(cylinders=other), "recovery")
    assert found["wrong-refrigerant"].says.startswith("R290 where the nameplate says R134a.")
    waste = raised.by_step(recovered({"cylinder": "C-099"}), "recovery")
    assert "wrong-refrigerant" not in waste


@pytest.mark.parametrize(
    ("due", "word"), [("2026-03-02", ""), ("2026-03-01", "overdue"), ("", "unknown")]
)
def test_that_a_cylinder_past_its_requalification_is_not_filled(due: str, word: str) -> None:
    # 49 CFR 180.205(c): it may be filled up to its day, and used up after; today is 2026-03-02.
    row = {"refrigerant": "R290", "contents": "recovered", "refillable": "yes",
           "requalification_due": due}  # fmt: skip
    found = raised.by_step(recovered(cylinders={"C-015": row}), "recovery")
    if not word:
        assert found == {}
        return
    flag = found["requalification-due"]
    assert f"({word})" in flag.says
    assert flag.says.endswith("Do not fill it; what is in it may be used.")
    assert (flag.level, flag.figure) == ("check", due)


# 40 CFR 82.156(b): 90 % of a small appliance's charge with its compressor running.
@pytest.mark.parametrize(("after", "raises"), [("8.0900 kg", False), ("8.0899 kg", True)])
def test_that_a_recovery_level_not_met_stops(after: str, raises: bool) -> None:
    found = raised.by_step(recovered({"after": after}), "recovery")
    assert ("recovery-level" in found) is raises
    if raises:
        assert found["recovery-level"].level == "stop"
        assert found["recovery-level"].source == "40CFR82F, 82.156(b)"


def test_that_a_recovery_level_not_shown_is_to_be_checked() -> None:
    bare = recovered({"after": ""}, {"level": ""})
    flag = raised.by_step(bare, "recovery")["recovery-level"]
    assert flag.says.startswith("The required recovery is not shown.")
    assert flag.level == "check"


@pytest.mark.parametrize(("refrigerant", "raises"), [("R290", False), ("R134a", True)])
def test_that_a_release_without_exemption_stops(refrigerant: str, raises: bool) -> None:
    # 40 CFR 82.154(a)(1) names R290 in stand-alone retail food units, and no HFC.
    typed: Typed = {"how": "released where the law allows", "released": "40 g",
                    "opening": "not opened"}  # fmt: skip
    given = case({"recovery": typed}, equipment={"refrigerant": refrigerant})
    found = raised.by_step(given, "recovery")
    assert ("release-not-exempt" in found) is raises
    if raises:
        assert found["release-not-exempt"].source == "40CFR82F, 82.154(a)"


def test_that_nothing_typed_or_an_unknown_cylinder_raises_nothing() -> None:
    empty = case()
    for step in ("leak_search", "pressure_test", "recovery", "evacuation", "weigh_in", "close"):
        assert raised.by_step(empty, step) == {}
    assert raised.by_step(recovered({"cylinder": "C-0"}), "recovery") == {}
    unnamed = recovered(equipment={"refrigerant": ""}, cylinders={"C-015": {"refillable": "no"}})
    assert list(raised.by_step(unnamed, "recovery")) == ["non-refillable-refilled"]


@pytest.mark.parametrize(
    ("pulled_to", "raises"), [("500 micron", False), ("0.5 mmHg", False), ("501 micron", True)]
)
def test_that_a_vacuum_short_of_its_target_is_flagged(pulled_to: str, raises: bool) -> None:
    found = raised.by_step(evacuated({"pulled_to": pulled_to}), "evacuation")
    assert ("vacuum-not-deep" in found) is raises
    if raises:
        flag = found["vacuum-not-deep"]
        assert flag.says.startswith("Pulled down to 501 micron, short of 500 micron")
        assert (flag.level, flag.source) == ("check", "ACHR-BLENDS, deep vacuum")


@pytest.mark.parametrize(
    ("micron", "word", "level", "then"),
    [
        ([400 + 120 * n for n in range(11)], "leak", "stop", "Find the leak; do not charge."),
        (
            [round(400 + 2500 * (1 - 0.5**n)) for n in range(13)],
            "moisture",
            "stop",
            "Dry on: break with nitrogen and pull again.",
        ),
        ([400, 401], "not yet decided", "check", "Watch on before charging."),
    ],
)
def test_that_a_decay_test_that_is_not_tight_says_what_to_do(
    micron: list[float], word: str, level: str, then: str
) -> None:
    flag = raised.by_step(evacuated(decay(micron)), "evacuation")["decay-not-tight"]
    assert flag.says.startswith(f"Decay test: {word}. ")
    assert flag.says.endswith(then)
    assert (flag.level, flag.figure, flag.limit) == (level, word, "tight")


def test_that_a_tight_decay_test_raises_nothing() -> None:
    assert raised.by_step(evacuated(decay([400.0] * 11)), "evacuation") == {}
