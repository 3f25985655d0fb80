"""Flags of a whole job: what is missing between its steps."""

import pytest

from chargebench import flags, rules
from chargebench.steps import STEPS, Typed, answer
from tests.flags import raised
from tests.steps.cases import TODAY, case

CHARGED: Typed = {
    "kind": "into an evacuated system",
    "lines": [
        {
            "cylinder": "C-014",
            "scale": "S-1",
            "arrangement": "cylinder on the scale",
            "start": "4312.5 g",
            "end": "4212.5 g",
            "hose_state": "no hose, closed at the equipment",
        }
    ],
}
DECAY: Typed = {
    "decay": [{"at": f"{2 * number} min", "reading": "400 micron"} for number in range(11)]
}
NOT_FLAMMABLE = {"refrigerant": "R134a", "cabinet": "self-contained open"}
TESTS = {"decay-test-missing", "pressure-test-missing"}


def ticked(step: str, leave_open: int = 0) -> Typed:
    lines = [line for line in rules.checklist("A3") if line.step == step]
    return {
        "ticks": [
            {"line": line.key, "at": "2026-03-02 09:00", "by": "P-01"}
            for line in lines[leave_open:]
        ]
    }


def test_that_charging_without_tests_on_record_is_flagged() -> None:
    found = raised.of_job(case({"weigh_in": CHARGED}, signed=("weigh_in",)))
    missing = found["decay-test-missing"]
    assert missing.says == (
        "Charged without a decay test on record. Recover, evacuate and prove it dry and tight."
    )
    assert (missing.level, missing.about) == ("stop", "step:evacuation")
    pressure = found["pressure-test-missing"]
    assert pressure.says == (
        "Charged without a pressure test on record. Test with dry nitrogen first."
    )
    assert (pressure.level, pressure.source) == ("check", "ANNEX-DD")


def test_that_tests_on_record_raise_nothing() -> None:
    signed = ("pressure_test", "evacuation", "weigh_in")
    found = raised.of_job(case({"weigh_in": CHARGED, "evacuation": DECAY}, signed=signed))
    assert not TESTS & set(found)


def test_that_a_vacuum_without_a_decay_test_does_not_serve() -> None:
    signed = ("pressure_test", "evacuation", "weigh_in")
    pulled: Typed = {"pulled_to": "300 micron"}
    found = raised.of_job(case({"weigh_in": CHARGED, "evacuation": pulled}, signed=signed))
    assert TESTS & set(found) == {"decay-test-missing"}


@pytest.mark.parametrize("signed", [(), ("evacuation",)])
def test_that_tests_are_not_missed_before_the_charge_is_signed(signed: tuple[str, ...]) -> None:
    assert not TESTS & set(raised.of_job(case({"weigh_in": CHARGED}, signed=signed)))


def test_that_a_part_charge_wants_no_new_tests() -> None:
    typed: Typed = {**CHARGED, "kind": "part of a charge"}
    assert not TESTS & set(raised.of_job(case({"weigh_in": typed}, signed=("weigh_in",))))


def test_that_opening_a_flammable_circuit_wants_its_whole_safety_list() -> None:
    listed = sum(line.step == "safety" for line in rules.checklist("A3"))
    given = case({"safety": ticked("safety", 1)}, signed=("safety", "recovery"))
    (flag,) = (each for each in raised.by_job(given) if each.about == "step:safety")
    assert (flag.key, flag.level) == ("safety-list-incomplete", "stop")
    assert flag.says.startswith(
        f"1 of {listed} lines of the safety list for A3 highly flammable are open at Safety. First:"
    )
    assert (flag.figure, flag.limit) == (str(listed - 1), str(listed))
    first = next(line for line in rules.checklist("A3") if line.step == "safety")
    assert flag.says.endswith(first.text)
    assert flag.source == f"{first.source}, {first.place}"


def test_that_a_whole_safety_list_raises_nothing() -> None:
    given = case({step: ticked(step) for step in ("safety", "recovery")},
                 signed=("safety", "recovery"))  # fmt: skip
    assert "safety-list-incomplete" not in raised.of_job(given)


def test_that_a_signed_step_wants_its_own_lines() -> None:
    given = case({"safety": ticked("safety")}, signed=("safety", "recovery"))
    flag = raised.of_job(given)["safety-list-incomplete"]
    assert (flag.level, flag.about) == ("check", "step:recovery")


def test_that_a_closed_circuit_owes_no_safety_list() -> None:
    assert "safety-list-incomplete" not in raised.of_job(case(signed=("nameplate", "as_found")))


@pytest.mark.parametrize("refrigerant", ["R134a", ""])
def test_that_only_flammable_classes_owe_a_safety_list(refrigerant: str) -> None:
    plate = NOT_FLAMMABLE | {"refrigerant": refrigerant}
    given = case(signed=("recovery",), equipment=plate)
    assert "safety-list-incomplete" not in raised.of_job(given)


@pytest.mark.parametrize(
    ("due", "done", "raises"),
    [
        ("2026-03-02", "", True),  # today
        ("2026-03-03", "", False),
        ("2026-02-01", "2026-02-03", False),
        ("", "", False),
    ],
)
def test_that_a_follow_up_is_called_for_on_its_day(due: str, done: str, raises: bool) -> None:
    typed: Typed = {"due": due, "done_on": done, "what": "is the box still cold"}
    found = flags.of_follow_up(answer(STEPS["follow_up"], typed), TODAY)
    assert [flag.key for flag in found] == (["follow-up-due"] if raises else [])
    for flag in found:
        assert flag.says == "Follow-up was due on 2026-03-02: is the box still cold"
        assert flag.level == "note"


def test_that_flags_are_read_worst_first() -> None:
    levels: tuple[flags.Level, ...] = ("note", "stop", "check", "stop")
    made = [
        flags.Flag(level, key, "says", "step:close")
        for level, key in zip(levels, "abcd", strict=True)
    ]
    assert [flag.key for flag in flags.worst_first(tuple(made))] == ["b", "d", "c", "a"]


@pytest.mark.parametrize(
    ("safety_class", "words"),
    [
        ("A1", "A1 not flammable"),
        ("A2L", "A2L mildly flammable"),
        ("A3", "A3 highly flammable"),
        ("B2L", "B2L toxic, mildly flammable"),
    ],
)
def test_that_a_class_is_said_in_words(safety_class: str, words: str) -> None:
    assert flags.class_words(safety_class) == words  # ISO 817: B is toxic, 2L burns slowly
