"""The catalogue against published lists: compositions, warming potentials, classes, limits."""

import dataclasses
import tomllib
from collections.abc import Iterator
from decimal import Decimal
from typing import get_args

import pytest

from chargebench.errors import UnknownRefrigerant
from chargebench.fluids import names, refrigerant
from chargebench.resource import resource
from chargebench.sources import SOURCES, Mark
from tests.outside.rows import rows


def test_that_every_blend_has_a_published_composition() -> None:
    blends = {name for name in names() if refrigerant(name).kind != "pure"}
    assert blends == {row["refrigerant"] for row in rows("compositions")}
    potentials = {row["refrigerant"] for row in rows("catalogue") if row["quantity"] == "GWP"}
    assert blends == potentials


# Regulation (EU) 2024/573, annex VI, worked example: 60 % dimethyl ether, 10 % R152a and
# 30 % R600a give 13.0; dimethyl ether counts 1 there. SEEN.
def test_that_the_mass_weighted_sum_gives_the_regulation_s_own_example() -> None:
    r152a, r600a = (refrigerant(name).gwp["EU-2024"].value for name in ("R152a", "R600a"))
    assert round(Decimal("0.6") * 1 + Decimal("0.1") * r152a + Decimal("0.3") * r600a, 1) == 13


def test_that_a_blend_with_a_recalled_component_is_marked_so() -> None:
    assert refrigerant("R448A").gwp["AR4"].mark == "MEMORY"  # R1234yf counts 4 there, recalled
    assert refrigerant("R448A").gwp["EU-2024"].mark == "CALC"
    assert refrigerant("R32").gwp["EU-2024"].mark == "SEEN"


def test_that_the_data_may_overrule_the_pressure_class() -> None:
    overruled = dataclasses.replace(refrigerant("R410A"), pressure_class_override="very high")
    assert overruled.pressure_class == "very high"


def test_that_every_flammable_refrigerant_has_a_lower_limit() -> None:
    for name in names():
        known = refrigerant(name)
        assert known.flammable == (known.safety_class not in ("A1", "B1"))
        assert (known.lfl is not None) == known.flammable, name


# ISO 817 and ASHRAE 34 convert at 23 °C and one atmosphere: m = x p M / (R T).
def test_that_limits_by_mass_and_by_volume_are_of_one_set() -> None:
    compared = 0
    for known in map(refrigerant, names()):
        if known.lfl is None or known.lfl_volume is None:
            continue
        by_volume = known.lfl_volume.value.m_as("") * 101_325 * known.molar_mass.m_as("kg/mol")
        by_mass = known.lfl.value.m_as("kg/m**3")
        assert by_mass == pytest.approx(by_volume / (8.314_46 * 296.15), rel=0.03), known.name
        compared += 1
    assert compared >= 10


def test_that_ozone_depletion_follows_the_components() -> None:
    depleting = {name: refrigerant(name).ods_class for name in names()}
    assert {name: found for name, found in depleting.items() if found} == {
        "R22": "II",
        "R12": "I",
        "R502": "I",
    }
    assert refrigerant("R502").contains_hcfc_or_cfc
    assert not refrigerant("R502").contains_hfc
    assert refrigerant("R449A").contains_hfc
    assert refrigerant("R449A").contains_hfo
    assert not refrigerant("R290").contains_hfc


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("R-290", "“R-290” is not a refrigerant known here; did you mean R290?"),
        ("r600A", "“r600A” is not a refrigerant known here; did you mean R600a?"),
        ("R1234ze", "“R1234ze” is not a refrigerant known here; did you mean R1234ze(E)?"),
        ("steam", "“steam” is not a refrigerant known here; expected a designation such as R290."),
        ("", "“” is not a refrigerant known here; expected a designation such as R290."),
    ],
)
def test_that_an_unknown_name_is_refused_with_what_is_near(typed: str, said: str) -> None:
    with pytest.raises(UnknownRefrigerant) as refusal:
        refrigerant(typed)
    assert str(refusal.value) == said


def _figures(node: object) -> Iterator[dict[str, str]]:
    if isinstance(node, dict):
        if "mark" in node:
            yield node
        for value in node.values():
            yield from _figures(value)
    elif isinstance(node, list):
        for value in node:
            yield from _figures(value)


def test_that_every_figure_cites_a_known_source_and_says_how_it_was_checked() -> None:
    table = tomllib.loads(resource("refrigerants.toml").read_text(encoding="utf-8"))
    figures = list(_figures(table))
    assert len(figures) > 250
    for figure in figures:
        assert figure["source"].split(",")[0] in SOURCES, figure
        assert figure["mark"] in get_args(Mark), figure
    for known in map(refrigerant, names()):
        for gwp in known.gwp.values():
            assert gwp.source.split(",")[0] in SOURCES
