"""What a rule file may leave out, and that every figure of one is listed."""

import dataclasses
import types
from collections.abc import Iterator
from pathlib import Path
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

import pytest

from chargebench import rules
from chargebench.errors import RuleSetRefused

HEAD = """[rule_set]
name = "shop"
title = "Our shop"
jurisdiction = "none"
edition = "1"
effective = 2026-10-01
extends = "us-federal"
"""


def _models(hint: Any, seen: set[type]) -> Iterator[type]:
    """Every dataclass a rule set is made of."""
    if get_origin(hint) is Annotated:
        hint = get_args(hint)[0]
    for part in get_args(hint):
        yield from _models(part, seen)
    if isinstance(hint, type) and dataclasses.is_dataclass(hint) and hint not in seen:
        seen.add(hint)
        yield hint
        for each in get_type_hints(hint).values():
            yield from _models(each, seen)


MODELS = tuple(_models(rules.RuleSet, set()))


@pytest.mark.parametrize("model", MODELS, ids=lambda model: model.__name__)
def test_that_what_a_rule_file_leaves_out_is_nothing_none_or_no(model: type) -> None:
    hints = get_type_hints(model)
    for field in dataclasses.fields(model):
        if field.default is dataclasses.MISSING:
            continue
        hint = hints[field.name]
        if get_origin(hint) in (Union, types.UnionType):
            assert field.default is None, field.name
        elif hint is str:
            assert (field.name, field.default) == ("inspected_from", "exceedance")
        elif hint is bool:
            assert field.default is False, field.name
        else:
            assert field.default == get_origin(hint)() == (), field.name


def test_that_the_models_of_a_rule_set_are_all_found() -> None:
    names = {model.__name__ for model in MODELS}
    assert {"RuleSet", "Regulation", "ChargeLimitRule", "PassRule", "Figure", "Day"} <= names


# 82.157(c): a threshold for each category; what stands in a table by name is listed by its name.
def test_that_figures_in_a_table_by_name_are_listed() -> None:
    keys = {figure.key for figure in rules.figures(rules.load("us-federal"))}
    assert "leak_rate.regulations.1.thresholds.other" in keys


def test_that_a_reference_without_a_place_has_no_comma_for_it() -> None:
    figure = rules.load("generic").cylinder.fill_share
    bare = dataclasses.replace(figure, place="")
    assert figure.reference == bare.reference.replace(" [", f", {figure.place} [")


def test_that_a_shop_file_extends_the_set_chosen_and_no_other(tmp_path: Path) -> None:
    path = tmp_path / "shop.toml"
    path.write_text(HEAD, "utf-8")
    assert rules.load_file(path, over="us-federal").name == rules.load_file(path).name == "shop"
    with pytest.raises(RuleSetRefused) as refused:
        rules.load_file(path, over="gb")
    assert str(refused.value) == (
        "shop.toml, line 7, rule_set.extends: “us-federal” is not the rule set chosen, gb."
    )


def test_that_a_rule_set_is_called_by_name_and_edition() -> None:
    rule_set = dataclasses.replace(rules.load("gb"), name="shop", edition="3")
    assert rule_set.called == "shop 3"
