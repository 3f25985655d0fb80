"""The handling checklist: which lines hold for which class, and how a bad file is refused."""

from pathlib import Path

import pytest

from chargebench import rules
from chargebench.errors import RuleSetRefused
from chargebench.rules.checklist import STEPS, read_checklist
from chargebench.sources import SOURCES

LINE = """[[lines]]
key = "one"
text = "Something to do."
classes = ["A3"]
step = "safety"
before_opening = true
source = "COMMON"
place = "good practice"
mark = "MEMORY"
"""


def keys(safety_class: str) -> set[str]:
    return {line.key for line in rules.checklist(safety_class)}


@pytest.mark.parametrize("safety_class", ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"])
def test_that_every_class_has_lines_with_sources_and_the_deference_to_local_codes(
    safety_class: str,
) -> None:
    lines = rules.checklist(safety_class)
    assert all(line.source in SOURCES for line in lines)
    assert "deference" in keys(safety_class)
    assert any(line.before_opening for line in lines)


# Annex DD of IEC 60335-2-40/-2-89 as reprinted by makers asks these of flammable refrigerant.
def test_that_flammable_classes_ask_for_what_a_non_flammable_does_not() -> None:
    flammable = {"ignition", "detector", "extinguisher", "sequence", "pump_outlet", "ventilated"}
    assert flammable <= keys("A3")
    assert flammable <= keys("A2L")
    assert not flammable & keys("A1")


# Ammonia is lighter than air: nothing may say that it gathers low.
def test_that_the_toxic_classes_are_not_told_to_search_low() -> None:
    assert not {"ventilated", "search_low", "detector"} & keys("B2L")
    assert {"ventilated_toxic", "detector_toxic", "toxic"} <= keys("B2L")


def test_that_lines_come_in_the_order_of_the_steps() -> None:
    order = [STEPS.index(line.step) for line in rules.checklist("A3")]
    assert order == sorted(order)
    assert {line.step for line in rules.checklist("A3")} == set(STEPS)


def test_that_a_key_stands_for_one_line() -> None:
    every = [line.key for line in rules.checklist("A3")]
    assert len(every) == len(set(every))


def test_that_an_unknown_class_is_refused() -> None:
    with pytest.raises(RuleSetRefused) as refused:
        rules.checklist("A4")
    assert str(refused.value) == "“A4” is not one of A1, A2L, A2, A3, B1, B2L, B2, B3."


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (LINE + LINE, "bad.toml, line 11, lines.2.key: “one” is used twice."),
        (
            LINE.replace("COMMON", "HEARSAY"),
            "bad.toml, line 7, lines.1.source: “HEARSAY” is not a source in the bibliography.",
        ),
        (
            LINE.replace("MEMORY", "SURE"),
            "bad.toml, line 9, lines.1.mark: “SURE” is not one of SEEN, SEEN-2, CALC, MEMORY.",
        ),
        (
            LINE.replace("safety", "lunch"),
            (
                "bad.toml, line 5, lines.1.step: “lunch” is not one of safety, leak_search, "
                "pressure_test, recovery, evacuation, weigh_in, close."
            ),
        ),
        (
            LINE.replace("A3", "A4"),
            (
                "bad.toml, line 4, lines.1.classes: “A4” is not one of A1, A2L, A2, A3, B1, B2L, "
                "B2, B3."
            ),
        ),
        (
            LINE.replace("true", '"yes"'),
            "bad.toml, line 6, lines.1.before_opening: expected true or false.",
        ),
        (
            LINE + 'when = "raining"\n',
            (
                "bad.toml, line 10, lines.1.when: “raining” is not one of opened, recovered, "
                "released, out of service."
            ),
        ),
        (LINE.replace('key = "one"\n', ""), "bad.toml, line 1, lines.1.key: missing."),
        ("", "bad.toml, line 1, lines: missing."),
        ("lines = 3\n", "bad.toml, line 1, lines: expected a list."),
        ("lines = [3]\n", "bad.toml, line 1, lines.1: expected a table."),
    ],
)
def test_that_a_bad_checklist_is_refused_by_line_and_key(
    tmp_path: Path, content: str, words: str
) -> None:
    path = tmp_path / "bad.toml"
    path.write_text(content, "utf-8")
    with pytest.raises(RuleSetRefused) as refused:
        read_checklist(path)
    assert str(refused.value) == words
