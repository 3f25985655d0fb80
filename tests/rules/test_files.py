"""Rule files as shipped, and every way a bad one is refused, word for word."""

import dataclasses
import tomllib
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from chargebench import rules
from chargebench.errors import RuleSetRefused
from chargebench.resource import resource
from chargebench.sources import SOURCES
from chargebench.units import Q

GENERIC = resource("rules", "generic.toml").read_text("utf-8")
HEAD = """[rule_set]
name = "shop"
title = "Our shop"
jurisdiction = "none"
edition = "1"
effective = 2026-10-01
extends = "us-federal"
"""
TARE = 'tare_loss = { value = 5, unit = "percent", source = "49CFR173", place = "180.209(c)", '


def refusal(tmp_path: Path, content: str) -> str:
    path = tmp_path / "bad.toml"
    path.write_text(content, "utf-8")
    with pytest.raises(RuleSetRefused) as refused:
        rules.load_file(path)
    return str(refused.value)


def extended(tmp_path: Path, content: str) -> rules.RuleSet:
    path = tmp_path / "shop.toml"
    path.write_text(HEAD + content, "utf-8")
    return rules.load_file(path)


@pytest.mark.parametrize("name", ["us-federal", "eu-2024-573", "gb", "generic"])
def test_that_a_shipped_set_loads_and_bears_its_name(name: str) -> None:
    assert rules.load(name).name == name
    assert name in rules.names()


def test_that_no_other_sets_are_shipped() -> None:
    assert rules.names() == ("eu-2024-573", "gb", "generic", "us-federal")


@pytest.mark.parametrize("name", rules.names())
def test_that_each_figure_names_source_mark_and_day(name: str) -> None:
    listed = rules.figures(rules.load(name))
    assert len(listed) > 80
    assert all(figure.source in SOURCES for figure in listed)
    assert all(figure.place for figure in listed)
    assert all(figure.effective <= date(2026, 12, 31) for figure in listed)


@pytest.mark.parametrize("name", rules.names())
def test_that_what_was_recalled_is_shown_as_unverified(name: str) -> None:
    for figure in rules.figures(rules.load(name)):
        assert figure.unverified == figure.reference.endswith("[unverified]")
        assert figure.unverified == (figure.mark == "MEMORY")


def test_that_unverified_figures_are_there_to_be_shown() -> None:
    keys = {figure.key for figure in rules.figures(rules.load("generic")) if figure.unverified}
    assert "flammability.marking.share_of_lfl" in keys
    assert "charge.tolerances.1.mass" in keys
    assert "recovery.levels.1.newer_machine" not in keys


def test_that_a_figure_prints_as_written_with_its_reference() -> None:
    figure = rules.load("us-federal").cylinder.hot_temperature
    assert figure.text == "130 degF"
    assert figure.reference == (
        "49 CFR 173.304a, 178.65, 180.205, 180.209: cylinders (snapshot of about 2021), "
        "173.304a(a)(2), refrigerant gas n.o.s. [SEEN]"
    )


def test_that_days_and_words_print_as_they_are() -> None:
    recovery = rules.load("us-federal").recovery
    assert recovery is not None
    assert recovery.machine_date.text == "1993-11-15"
    assert rules.load("us-federal").gwp.set.text == "AR4"
    forms = rules.load("generic").flammability.room_forms
    assert forms[0].coefficient.text == "2.5"


def test_that_a_figure_has_the_day_of_its_own_file_unless_it_names_one() -> None:
    european = rules.load("eu-2024-573")
    assert european.gwp.set.effective == date(2024, 3, 11)
    assert european.flammability.alarm_share.effective == date(2026, 9, 25)
    american = rules.load("us-federal").leak_rate
    assert american is not None
    assert american.regulation("84.106").charge_from.effective == date(2026, 1, 1)


def test_that_a_rule_set_can_not_be_changed() -> None:
    rule_set = rules.load("generic")
    with pytest.raises(dataclasses.FrozenInstanceError):
        rule_set.name = "other"  # type: ignore[misc]
    american = rules.load("us-federal").leak_rate
    assert american is not None
    with pytest.raises(TypeError):
        american.regulations[0].thresholds["other"] = None  # type: ignore[index]


# Which set of potentials counts where: 42 U.S.C. 7675(c)(1); Regulation 2024/573 annexes.
@pytest.mark.parametrize(
    ("name", "gwp_set"), [("us-federal", "AR4"), ("eu-2024-573", "EU-2024"), ("gb", "AR4")]
)
def test_that_each_jurisdiction_has_its_set_of_potentials(name: str, gwp_set: str) -> None:
    assert rules.load(name).gwp.set.value == gwp_set


# 82.157(l): three years; Regulation 2024/573 article 7 and 517/2014 article 6: five years.
@pytest.mark.parametrize(("name", "years"), [("us-federal", 3), ("eu-2024-573", 5), ("gb", 5)])
def test_that_each_jurisdiction_keeps_records_its_own_time(name: str, years: int) -> None:
    keep = rules.load(name).records.keep
    assert (int(keep.value), keep.unit) == (years, "year")


# 49 CFR 173.304a(a)(2): 130 °F, 131 °F (55 °C); 60 °C for ADR P200 (from memory).
@pytest.mark.parametrize(
    ("name", "celsius"), [("us-federal", 54.44), ("generic", 55.0), ("eu-2024-573", 60), ("gb", 60)]
)
def test_that_each_jurisdiction_has_its_hot_temperature(name: str, celsius: float) -> None:
    hot = rules.load(name).cylinder.hot_temperature.quantity
    assert hot.m_as("degC") == pytest.approx(celsius, abs=0.01)


# 40 CFR 82.156 table 1 is a duty of the United States only.
def test_that_europe_sets_no_recovery_level_and_america_no_leak_checks_by_co2() -> None:
    assert rules.load("eu-2024-573").recovery is None
    assert rules.load("gb").recovery is None
    assert rules.load("us-federal").climate is None
    assert rules.load("generic").leak_rate is None


# RD 552/2019 IF-09 1.6.3: below 270 Pa, three hours, at most 2 Pa.
def test_that_the_vacuum_rule_of_the_standard_is_there_in_pascal() -> None:
    rule = rules.load("eu-2024-573").evacuation.pass_rules[0]
    assert rule.pull_to.quantity.m_as("Pa") == 270
    assert rule.hold.quantity.m_as("hour") == 3
    assert rule.rise_at_most is not None
    assert rule.rise_at_most.quantity.m_as("Pa") == 2


def test_that_a_shop_file_states_only_what_differs(tmp_path: Path) -> None:
    changed = extended(tmp_path, "[cylinder]\n" + TARE.replace("5", "4", 1) + 'mark = "SEEN" }\n')
    american = rules.load("us-federal")
    assert changed.name == "shop"
    assert changed.cylinder.tare_loss.value == Decimal(4)
    assert changed.cylinder.tare_loss.effective == date(2026, 10, 1)
    assert changed.cylinder.fill_share == american.cylinder.fill_share
    assert changed.leak_rate == american.leak_rate


def test_that_a_shop_file_replaces_a_list_whole(tmp_path: Path) -> None:
    row = """[[charge.tolerances]]
title = "Ours"
classes = []
share = { value = 3.5, unit = "percent", source = "CHARGEBENCH", place = "shop", mark = "MEMORY" }
"""
    tolerances = extended(tmp_path, row).charge.tolerances
    assert [one.title for one in tolerances] == ["Ours"]
    assert tolerances[0].share.value == Decimal("3.5")


def test_that_a_shop_file_drops_a_table(tmp_path: Path) -> None:
    path = tmp_path / "shop.toml"
    path.write_text(HEAD + 'drops = ["leak_rate"]\n', "utf-8")
    assert rules.load_file(path).leak_rate is None


def test_that_a_figure_laid_over_another_takes_nothing_of_it(tmp_path: Path) -> None:
    figure = (
        '[cylinder]\ntare_loss = { value = 5, source = "49CFR173", place = "x", mark = "SEEN" }'
    )
    path = tmp_path / "bad.toml"
    path.write_text(HEAD + figure, "utf-8")
    with pytest.raises(RuleSetRefused, match=r"^bad.toml, line 9, cylinder.tare_loss.unit: missi"):
        rules.load_file(path)


BAD = tomllib.loads((Path(__file__).parent / "bad_files.toml").read_text("utf-8"))["bad"]


@pytest.mark.parametrize("bad", BAD, ids=[bad["words"] for bad in BAD])
def test_that_a_bad_rule_file_is_refused_by_file_line_and_key(
    tmp_path: Path, bad: dict[str, str]
) -> None:
    good = resource("rules", f"{bad['file']}.toml").read_text("utf-8")
    before, old, after = good.partition(bad["old"])
    assert old
    line = good.partition(bad.get("at", old))[0].count("\n") + 1
    last = line + bad["new"].count("\n")
    assert refusal(tmp_path, before + bad["new"] + after) == bad["words"].format(
        line=line, last=last
    )


def test_that_a_missing_table_is_refused_at_the_head_of_the_file(tmp_path: Path) -> None:
    content = GENERIC[: GENERIC.index("[records]")]
    assert refusal(tmp_path, content) == "bad.toml, line 1, records: missing."


def test_that_a_file_without_identity_is_refused(tmp_path: Path) -> None:
    assert refusal(tmp_path, "") == (
        "bad.toml, line 1, rule_set: expected a table with name, title, jurisdiction, edition, "
        "effective."
    )


def test_that_a_missing_part_of_the_identity_is_refused(tmp_path: Path) -> None:
    assert refusal(tmp_path, '[rule_set]\nname = "x"\n') == (
        "bad.toml, line 1, rule_set.title: missing."
    )


def test_that_a_file_that_is_no_toml_is_refused_with_its_line(tmp_path: Path) -> None:
    assert refusal(tmp_path, "[rule_set]\nname = \n") == (
        "bad.toml: not a TOML file: Invalid value (at line 2, column 8)."
    )


def test_that_a_file_that_is_no_text_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "bad.toml"
    path.write_bytes(b"\xff\xfe")
    with pytest.raises(RuleSetRefused, match=r"^bad\.toml: can not be read as a text file\.$"):
        rules.load_file(path)


def test_that_a_missing_file_is_refused(tmp_path: Path) -> None:
    with pytest.raises(RuleSetRefused, match=r"^no\.toml: can not be read as a text file\.$"):
        rules.load_file(tmp_path / "no.toml")


def test_that_an_unknown_name_is_refused_with_those_there_are() -> None:
    with pytest.raises(RuleSetRefused) as refused:
        rules.load("mars")
    assert str(refused.value) == (
        "No rule set “mars”; expected one of eu-2024-573, gb, generic, us-federal."
    )


AMERICAN = resource("rules", "us-federal.toml").read_text("utf-8")


def test_that_empty_thresholds_are_refused(tmp_path: Path) -> None:
    start = AMERICAN.index("[leak_rate.regulations.thresholds]")
    end = AMERICAN.index("[[leak_rate.regulations.inspections]]")
    header = "[leak_rate.regulations.thresholds]\n"
    said = refusal(tmp_path, AMERICAN[:start] + header + AMERICAN[end:])
    assert said.endswith("leak_rate.regulations.1.thresholds: expected a table of figures.")


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (
            (
                'mass = { value = 1, unit = "kg", source = "COMMON", place = "x", '
                'mark = "MEMORY" }\n'
                'times_lfl = { value = 1, unit = "m^3", source = "COMMON", place = "x", '
                'mark = "MEMORY" }\n'
            ),
            "bad.toml, line 8, flammability.limits.1: expected either mass or times_lfl.",
        ),
        ("", "bad.toml, line 8, flammability.limits.1: expected either mass or times_lfl."),
    ],
)
def test_that_a_limit_is_a_mass_or_a_multiple(tmp_path: Path, change: str, words: str) -> None:
    limit = '[[flammability.limits]]\ntitle = "x"\ncabinets = ["other"]\nclasses = ["A3"]\n'
    assert refusal(tmp_path, HEAD + limit + change) == words


def test_that_a_set_without_a_room_form_is_refused(tmp_path: Path) -> None:
    assert refusal(tmp_path, HEAD + "[flammability]\nroom_forms = []\n") == (
        "bad.toml, line 9, flammability.room_forms: expected at least one form."
    )


def test_that_a_room_form_and_a_regulation_are_found_by_key() -> None:
    rule_set = rules.load("us-federal")
    assert rule_set.flammability.room_form("before 2018").sealed_factor is None
    assert rule_set.leak_rate is not None
    assert rule_set.leak_rate.regulation("84.106").charge_from.quantity == Q(15, "lb")
