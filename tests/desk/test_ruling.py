"""The shop's rules: one of the shipped sets, with a file of the shop's own laid over it."""

from pathlib import Path

import pytest

from chargebench import rules
from chargebench.desk import Desk
from chargebench.desk.ruling import file_to_type, rules_said
from chargebench.errors import StepRefused
from tests.desk import shops

OWN = """[rule_set]
name = "larkmoor"
title = "Our shop"
jurisdiction = "Larkmoor"
edition = "7"
effective = 2026-10-01
extends = "us-federal"

[pressure_test]
hold_at_least = { value = 90, unit = "minute", source = "COMMON", place = "ours", mark = "MEMORY" }
"""


def lay(desk: Desk, content: str = OWN, name: str = "own.toml") -> str:
    (desk.path.parent / name).write_text(content, encoding="utf-8")
    return name


def test_that_a_file_of_the_shop_lies_over_the_rule_set_and_its_saving_is_an_entry(
    desk: Desk,
) -> None:
    job = desk.open_job("E-001")
    assert desk.job(job).case.rule_set.called == rules.load("us-federal").called
    desk.save_row("shop", "shop", shops.SHOP | {"rule_file": lay(desk)})
    rule = desk.job(job).case.rule_set
    assert (rule.called, desk.rule_trouble) == ("larkmoor 7", "")
    assert rule.pressure_test.hold_at_least.quantity.m_as("minute") == 90
    assert rule.recovery == rules.load("us-federal").recovery
    *_, last = desk.entries()
    assert last.payload["after"]["rule_file"] == "own.toml"
    assert "rule_file" not in last.payload["before"]


def test_that_a_signed_step_keeps_the_rules_it_was_judged_by(desk: Desk) -> None:
    desk.save_row("shop", "shop", shops.SHOP | {"rule_file": lay(desk)})
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", shops.NAMEPLATE)
    desk.save_row("shop", "shop", shops.SHOP | {"rule_set": "gb"})
    view = desk.job(job)
    assert (view.steps[0].rule_set, view.case.rule_set.name) == ("larkmoor 7", "gb")


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (OWN.replace("us-federal", "gb"), "own.toml, line 7, rule_set.extends: “gb” is not the"),
        (OWN.replace("90", '"90"'), "own.toml, line 10, pressure_test.hold_at_least.value"),
        ("[rule_set", "own.toml: not a TOML file"),
        (None, "own.toml: can not be read"),
    ],
)
def test_that_a_bad_rule_file_is_refused_beside_its_field_with_its_line(
    desk: Desk, content: str | None, says: str
) -> None:
    if content is not None:
        lay(desk, content)
    before = desk.reading.head()
    with pytest.raises(StepRefused) as refusal:
        desk.save_row("shop", "shop", shops.SHOP | {"rule_file": "own.toml"})
    assert list(refusal.value.fields) == ["rule_file"]
    assert says in refusal.value.fields["rule_file"]
    assert desk.reading.head() == before


def test_that_a_rule_file_gone_since_is_flagged_and_the_named_set_counts(desk: Desk) -> None:
    desk.save_row("shop", "shop", shops.SHOP | {"rule_file": lay(desk)})
    (desk.path.parent / "own.toml").unlink()
    with Desk.open_reading(desk.path) as again:
        assert again.rule_set.name == "us-federal"
        flag = next(flag for flag in again.all_flags() if flag.key == "rule-file")
        assert "own.toml: can not be read" in flag.says
        assert "us-federal counts alone" in flag.says


def test_that_rules_are_said_before_they_are_saved(tmp_path: Path) -> None:
    chosen = {"rule_set": "us-federal", "rule_file": "own.toml"}
    refusal, said = rules_said(chosen, tmp_path)
    assert (refusal, "Jurisdiction: United States" in said) == ("", True)  # still being typed
    (tmp_path / "own.toml").write_text(OWN, encoding="utf-8")
    refusal, said = rules_said(chosen, tmp_path)
    assert refusal == ""
    assert "Jurisdiction: Larkmoor. Edition 7, in effect from 2026-10-01." in said
    (tmp_path / "own.toml").write_text(OWN + "nonsense = 1\n", encoding="utf-8")
    refusal, said = rules_said(chosen, tmp_path)
    assert ("own.toml, line" in refusal, said) == (True, "")


def test_that_a_file_beside_the_records_is_written_by_its_name(tmp_path: Path) -> None:
    assert file_to_type(tmp_path / "own.toml", tmp_path) == "own.toml"
    other = tmp_path / "elsewhere" / "own.toml"
    assert file_to_type(other, tmp_path) == str(other)
