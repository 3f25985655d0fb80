"""Recovery, release, and taking out of service: what moves, what was missing, what is refused."""

from typing import Any

import pytest

from chargebench import steps
from chargebench.ledger import Transfer
from chargebench.steps import Case, Typed
from chargebench.steps.recovery import Recovered
from tests.steps.cases import FREEZER, case

LINE = {"cylinder": "C-015", "scale": "S-1", "before": "8.000 kg", "after": "8.0412 kg"}
RECOVERED = {"how": "recovered", "opening": "opened for repair", "machine": "R-1"}
OUT = {"close": {"ends": "taken out of service"}}


def recovered(*lines: dict[str, str], answers: dict[str, str] | None = None, **more: Any) -> Case:
    typed: Typed = {
        **RECOVERED, **(answers or {}), "lines": [LINE | line for line in lines or ({},)]
    }  # fmt: skip
    return case({"recovery": typed}, **more)


def other_way(how: str, /, answers: dict[str, str] | None = None, **more: Any) -> Case:
    return case({"recovery": {"how": how, **(answers or {})}}, **more)


def result(given: Case) -> Recovered:
    found = steps.work_out(given, "recovery").result
    assert isinstance(found, Recovered)
    return found


def outcome(given: Case) -> str:
    reached = result(given).outcome
    assert reached is not None
    return reached.word


def test_that_what_the_cylinder_gained_came_from_the_equipment() -> None:
    given = recovered(equipment_content_mg=100_000)
    assert steps.movements(given, "recovery") == (
        Transfer(FREEZER, "cylinder:C-015", "R290", 41_200, "8.000 kg → 8.0412 kg"),
    )
    assert result(given).missing_mg == 58_800  # of 100 g


def test_that_more_than_the_book_had_is_first_brought_in_from_outside() -> None:
    moved = steps.movements(recovered(equipment_content_mg=30_000), "recovery")
    assert [(line.source, line.target, line.mass_mg) for line in moved] == [
        ("outside", FREEZER, 11_200),
        (FREEZER, "cylinder:C-015", 41_200),
    ]


def test_that_several_weighings_add_up() -> None:
    given = recovered({}, {"cylinder": "C-014", "before": "4000 g", "after": "4030.5 g"},
                      equipment_content_mg=100_000)  # fmt: skip
    assert [line.mass_mg for line in steps.movements(given, "recovery")] == [41_200, 30_500]
    assert result(given).taken_mg == 71_700
    # Two net masses of U = 2 x 0.1 / sqrt(6) g each: sqrt(2) x 81.65 mg.
    assert result(given).doubt_mg == pytest.approx(115, abs=1)


def test_that_a_release_goes_to_the_air_with_its_text() -> None:
    given = other_way("released where the law allows", {"released": "40 g", "ground": "R290"},
                      equipment_content_mg=100_000)  # fmt: skip
    assert steps.movements(given, "recovery") == (
        Transfer(FREEZER, "atmosphere", "R290", 40_000, "released: 40 g"),
    )
    assert result(given).missing_mg == 60_000


def test_that_with_nothing_left_the_book_is_presumed_lost() -> None:
    given = other_way("nothing left in the system", equipment_content_mg=85_000)
    assert steps.movements(given, "recovery") == (
        Transfer(FREEZER, "atmosphere", "R290", 85_000, "presumed lost"),
    )


def test_that_out_of_service_after_recovery_empties_the_book() -> None:
    given = case(OUT, signed=("recovery",), equipment_content_mg=800)
    assert steps.movements(given, "close") == (
        Transfer(FREEZER, "atmosphere", "R290", 800, "presumed lost"),
    )


def test_that_out_of_service_without_recovery_leaves_the_content_in_the_book() -> None:
    assert steps.movements(case(OUT, equipment_content_mg=800), "close") == ()
    running: Typed = {"ends": "left running"}
    given = case({"close": running}, signed=("recovery",), equipment_content_mg=800)
    assert steps.movements(given, "close") == ()


# 40 CFR 82.156(b): a small appliance with a machine of after 1993: 90 % with the compressor
# running, 80 % without, or 4 inHg of vacuum in its place.
@pytest.mark.parametrize(
    ("after", "works", "level", "word"),
    [
        ("8.0900 kg", "yes", "", "met"),
        ("8.0899 kg", "yes", "", "not met"),
        ("8.0850 kg", "no", "", "met"),
        ("8.0800 kg", "no", "", "met"),
        ("8.0799 kg", "no", "", "not met"),
        ("8.0200 kg", "yes", "-4 inHg", "met"),
        ("8.0200 kg", "yes", "-3.9 inHg", "not met"),
    ],
)
def test_that_a_small_appliance_is_held_to_its_share_or_vacuum(
    after: str, works: str, level: str, word: str
) -> None:
    given = recovered({"after": after}, answers={"compressor_works": works, "level": level})
    assert outcome(given) == word


def test_that_a_vacuum_is_one_pressure_at_any_height() -> None:
    # 4 inHg under the standard atmosphere is 101 325 - 13 546 = 87 779 Pa; at 2000 m the open air
    # has 79 495 Pa (ISO 2533, from memory), so a gauge at zero has reached it.
    thin = {"site": {"elevation": "2000 m"}}
    for level in ("0 inHg", "87 kPa(a)"):
        given = recovered({"after": "8.01 kg"}, answers={"level": level}, **thin)
        assert outcome(given) == "met"
    assert outcome(recovered({"after": "8.01 kg"}, answers={"level": "0 inHg"})) == "not met"


def test_that_a_jurisdiction_without_levels_asks_for_none() -> None:
    found = result(recovered(rule_set="eu-2024-573"))
    assert (found.requirement, found.outcome) == (None, None)


def test_that_not_opening_the_circuit_asks_for_no_level() -> None:
    assert result(recovered(answers={"opening": "not opened"})).requirement is None


@pytest.mark.parametrize(
    ("refrigerant", "exempt"), [("R290", True), ("R600a", True), ("R134a", False)]
)
def test_that_only_exempt_releases_are_told_lawful(refrigerant: str, exempt: bool) -> None:
    # 40 CFR 82.154(a)(1): R290 and R600a in stand-alone retail food units.
    given = other_way("released where the law allows", {"released": "40 g"},
                      equipment={"refrigerant": refrigerant})  # fmt: skip
    assert result(given).exemption is exempt


@pytest.mark.parametrize(
    ("line", "path", "says"),
    [
        ({"cylinder": "C-1"}, "lines[0].cylinder", "Expected a cylinder of the register."),
        ({"scale": "X"}, "lines[0].scale", "Expected a scale of the register."),
        ({"cylinder": "C-016"}, "lines[0].cylinder",
         "C-016 is non-refillable; recover into a refillable recovery cylinder."),
        ({"after": "8.000 kg"}, "lines[0].after",
         "Expected more after than before; nothing was recovered."),
        ({"after": "7 kg"}, "lines[0].after",
         "Expected more after than before; nothing was recovered."),
    ],
)  # fmt: skip
def test_that_a_weighing_that_can_not_be_is_refused(
    line: dict[str, str], path: str, says: str
) -> None:
    assert steps.refusals(recovered(line), "recovery") == {path: says}


def test_that_filling_over_the_limit_wants_a_reason() -> None:
    # 0.80 x 10 kg x 0.494, propane against water at 25 °C (CoolProp 8.0.0, COMPUTED): 3.95 kg; it
    # is less than the 42 % of 49 CFR 173.304a(d).
    over = {"before": "8 kg", "after": "11.96 kg"}
    assert steps.refusals(recovered({"after": "11.94 kg"}), "recovery") == {}
    refused = steps.refusals(recovered(over), "recovery")
    assert list(refused) == ["lines[0].after"]
    assert "over its limit of 3.951 kg (80 % at 25 °C)" in refused["lines[0].after"]
    assert steps.refusals(recovered(over | {"override": "only one here"}), "recovery") == {}


@pytest.mark.parametrize(
    ("how", "answers", "path"),
    [
        ("recovered", {}, "lines"),
        ("released where the law allows", {"ground": "exempt"}, "released"),
        ("released where the law allows", {"released": "4 g"}, "ground"),
        ("nothing left in the system", {"level": "-31 inHg"}, "level"),
    ],
)
def test_that_what_a_way_of_recovering_wants_is_asked(
    how: str, answers: dict[str, str], path: str
) -> None:
    assert list(steps.refusals(other_way(how, answers), "recovery")) == [path]


def test_that_weighings_contradict_nothing_left() -> None:
    given = recovered(answers={"how": "nothing left in the system"})
    assert list(steps.refusals(given, "recovery")) == ["how"]


def test_that_an_impossible_level_is_worked_out_as_not_shown() -> None:
    # Deeper than a perfect vacuum: no crash while it is typed, refused when it is signed.
    assert result(other_way("recovered", {"level": "-31 inHg"})).level is None
