"""The catalogue against published lists: compositions, warming potentials, classes, limits."""

import dataclasses
import tomllib
from collections.abc import Iterator
from decimal import Decimal
from typing import Any, get_args

import chemicals
import pytest

from chargebench.errors import UnknownRefrigerant
from chargebench.fluids import GWP_SETS, names, refrigerant
from chargebench.resource import resource
from chargebench.sources import SOURCES, Mark
from tests.fluids.published import label, rows

CAS = {
    "R290": "74-98-6", "R600a": "75-28-5", "R1270": "115-07-1", "R170": "74-84-0",
    "R717": "7664-41-7", "R744": "124-38-9", "R32": "75-10-5", "R125": "354-33-6",
    "R134a": "811-97-2", "R143a": "420-46-2", "R152a": "75-37-6", "R1234yf": "754-12-1",
    "R1234ze(E)": "29118-24-9", "R22": "75-45-6", "R12": "75-71-8", "R227ea": "431-89-0",
    "R1336mzz(E)": "66711-86-2", "R115": "76-15-3", "R600": "106-97-8", "R601a": "78-78-4",
    "R13I1": "2314-97-8",
}  # fmt: skip

# EU and IPCC figures of blends as commonly printed, rounded (AR4 with 4 for R1234yf, 7 for
# R1234ze(E)); the AR6 ones of R404A, R407C, R410A, R452A, R452B, R454A and R513A stand in
# drawdown.org, "Deploy alternative refrigerants", figure 1 (SEEN), the others are sums by hand.
PRINTED_GWP = {  # AR4, AR5, AR6, EU-2024
    "R404A": ("3922", "3943", "4728", "3921.6"),
    "R407A": ("2107", "1923", "2262", "2107"),
    "R407C": ("1774", "1624", "1908", "1773.9"),
    "R407F": ("1825", "1674", "1965", "1824.5"),
    "R407H": ("1495", "1378", "1615", "1495.1"),
    "R410A": ("2088", "1924", "2256", "2087.5"),
    "R422D": ("2729", "2473", "2917", "2729"),
    "R427A": ("2138", "2024", "2397", "2138"),
    "R438A": ("2265", "2059", "2425", "2264"),
    "R442A": ("1888", "1754", "2042", "1888"),
    "R448A": ("1387", "1273", "1494", "1386.0"),
    "R449A": ("1397", "1282", "1504", "1396.2"),
    "R450A": ("605", "547", "643", "601.4"),
    "R452A": ("2140", "1945", "2292", "2139.4"),
    "R452B": ("698", "676", "779", "697.4"),
    "R454A": ("239", "237", "270", "236.6"),
    "R454B": ("466", "467", "531", "465.2"),
    "R454C": ("148", "146", "166", "145.5"),
    "R455A": ("148", "146", "166", "145.5"),
    "R466A": ("733", "696", "808", "733"),
    "R471A": (None, "146", "159", "142.6"),
    "R502": ("4657", "4786", "5872", None),
    "R507A": ("3985", "3985", "4775", "3985"),
    "R513A": ("631", "572", "673", "629.5"),
    "R515B": ("293", "299", "322", "287.8"),
}


@pytest.mark.parametrize("row", rows("compositions"), ids=label)
def test_that_compositions_are_the_published_ones(row: dict[str, str]) -> None:
    found = {part.name: part.mass_percent for part in refrigerant(row["refrigerant"]).composition}
    parts = [part.strip() for part in row["condition"].split(";")]
    shares = [Decimal(share) for share in row["expected"].split("/")]
    assert found == dict(zip(parts, shares, strict=True))


def test_that_every_blend_has_a_published_composition() -> None:
    blends = {name for name in names() if refrigerant(name).kind != "pure"}
    assert blends == {row["refrigerant"] for row in rows("compositions")}
    assert blends == set(PRINTED_GWP)


@pytest.mark.parametrize("name", PRINTED_GWP)
@pytest.mark.parametrize("which", GWP_SETS)
def test_that_blend_warming_potentials_are_the_printed_ones(name: str, which: str) -> None:
    printed = PRINTED_GWP[name][GWP_SETS.index(which)]
    if printed is None:  # a component has no value in that set
        assert which not in refrigerant(name).gwp
        return
    digits = len(printed.split(".")[1]) if "." in printed else 0
    found = refrigerant(name).gwp[which].value
    assert abs(found - Decimal(printed)) <= Decimal("0.51") * Decimal(10) ** -digits


# Regulation (EU) 2024/573, annex VI, worked example: 60 % dimethyl ether, 10 % R152a and
# 30 % R600a give 13.0; dimethyl ether counts 1 there. SEEN.
def test_that_the_mass_weighted_sum_gives_the_regulation_s_own_example() -> None:
    r152a, r600a = (refrigerant(name).gwp["EU-2024"].value for name in ("R152a", "R600a"))
    assert round(Decimal("0.6") * 1 + Decimal("0.1") * r152a + Decimal("0.3") * r600a, 1) == 13


# IPCC tables of 2007, 2014 and 2021 as shipped in the package chemicals: SEEN there.
@pytest.mark.parametrize(("which", "edition"), [("AR4", "2007"), ("AR5", "2014"), ("AR6", "2021")])
def test_that_ipcc_warming_potentials_are_those_of_its_tables(which: str, edition: str) -> None:
    compared = 0
    for fluid in _fluids():
        figure = fluid["gwp"].get(which, {"source": ""})
        if figure["source"] != f"IPCC-{which}" or figure["mark"] == "MEMORY":
            continue
        printed = chemicals.GWP(CAS[fluid["name"]], method=f"IPCC ({edition}) 100yr")
        if printed is None:  # ammonia is not in the tables; zero by its few days in the air
            assert (fluid["name"], figure["value"]) == ("R717", "0")
            continue
        assert float(figure["value"]) == printed, fluid["name"]
        compared += 1
    assert compared >= 10


# 42 U.S.C. 7675(c)(1), exchange values: SEEN, and equal to the fourth assessment report.
@pytest.mark.parametrize(
    ("name", "exchange_value"),
    [("R32", 675), ("R125", 3500), ("R134a", 1430), ("R143a", 4470), ("R152a", 124)],
)
def test_that_ar4_equals_the_american_exchange_values(name: str, exchange_value: int) -> None:
    assert refrigerant(name).gwp["AR4"].value == exchange_value
    assert refrigerant(name).gwp["EU-2024"].value == exchange_value


def test_that_a_blend_with_a_recalled_component_is_marked_so() -> None:
    assert refrigerant("R448A").gwp["AR4"].mark == "MEMORY"  # R1234yf counts 4 there, recalled
    assert refrigerant("R448A").gwp["EU-2024"].mark == "CALC"
    assert refrigerant("R32").gwp["EU-2024"].mark == "SEEN"


# Examples named in the definitions of 40 CFR 82.152: which refrigerants are of which class.
# MEMORY, but for R32 and R744: the figure of 355 psia and the critical temperature decide those.
@pytest.mark.parametrize(
    ("name", "pressure_class"),
    [
        ("R744", "very high"), ("R170", "very high"), ("R32", "very high"), ("R410A", "high"),
        ("R404A", "high"), ("R507A", "high"), ("R22", "high"), ("R407C", "high"),
        ("R407A", "high"), ("R502", "high"), ("R134a", "medium"), ("R12", "medium"),
    ],
)  # fmt: skip
def test_that_pressure_classes_follow_the_federal_definitions(
    name: str, pressure_class: str
) -> None:
    assert refrigerant(name).pressure_class == pressure_class


def test_that_the_data_may_overrule_the_pressure_class() -> None:
    overruled = dataclasses.replace(refrigerant("R410A"), pressure_class_override="very high")
    assert overruled.pressure_class == "very high"


# drawdown.org, "Deploy alternative refrigerants", figure 1 prints these classes: SEEN.
@pytest.mark.parametrize(
    ("name", "safety_class"),
    [
        ("R290", "A3"), ("R600a", "A3"), ("R717", "B2L"), ("R744", "A1"), ("R32", "A2L"),
        ("R1234yf", "A2L"), ("R134a", "A1"), ("R404A", "A1"), ("R410A", "A1"), ("R452B", "A2L"),
        ("R454A", "A2L"), ("R513A", "A1"),
    ],
)  # fmt: skip
def test_that_safety_classes_are_the_published_ones(name: str, safety_class: str) -> None:
    assert refrigerant(name).safety_class == safety_class
    assert refrigerant(name).flammable == (safety_class not in ("A1", "B1"))


def test_that_every_flammable_refrigerant_has_a_lower_limit() -> None:
    for name in names():
        assert (refrigerant(name).lfl is not None) == refrigerant(name).flammable, name


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


# NFPA 497 (2008) as shipped in the package chemicals.
def test_that_volume_limits_are_those_of_nfpa_497_where_it_is_cited() -> None:
    cited = {
        fluid["name"]: float(fluid["lfl_volume"]["value"]) / 100
        for fluid in _fluids()
        if fluid.get("lfl_volume", {"source": ""})["source"].startswith("NFPA497")
    }
    assert len(cited) == 3
    for name, share in cited.items():
        assert share == pytest.approx(chemicals.LFL(CASRN=CAS[name], method="NFPA 497 (2008)"))


def test_that_molar_masses_are_those_of_the_atomic_weights() -> None:
    for fluid in _fluids():
        if fluid["name"] == "R1336mzz(E)":  # not in the package's list: CF3CH=CHCF3
            expected = chemicals.molecular_weight({"C": 4, "H": 2, "F": 6})
        else:
            expected = chemicals.MW(CAS[fluid["name"]])
        assert float(fluid["molar_mass"]["value"]) == pytest.approx(expected, rel=1e-4)


# Lemmon 2003 prints molar masses of the pseudo-pure fluids: 97.6038, 86.2036, 72.5854, 98.8592
# g/mol; MEMORY.
@pytest.mark.parametrize(
    ("name", "grams"),
    [("R404A", 97.6038), ("R407C", 86.2036), ("R410A", 72.5854), ("R507A", 98.8592)],
)
def test_that_a_blend_s_molar_mass_follows_its_composition(name: str, grams: float) -> None:
    assert refrigerant(name).molar_mass.m_as("g/mol") == pytest.approx(grams, rel=1e-5)


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


def _fluids() -> list[dict[str, Any]]:
    table = tomllib.loads(resource("refrigerants.toml").read_text(encoding="utf-8"))
    found: list[dict[str, Any]] = table["fluid"]
    return found


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
