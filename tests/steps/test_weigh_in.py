"""Weigh-in: what it moves to the milligram, where to stop, how it stands against the nameplate."""

import csv
from pathlib import Path
from typing import Any

import pytest

from chargebench import steps
from chargebench.ledger import Transfer
from chargebench.steps import Case, Typed, weigh_in
from tests.steps.cases import FREEZER, case

NO_HOSE = "no hose, closed at the equipment"
EVACUATED = "into an evacuated system"
LINE = {
    "cylinder": "C-014",
    "scale": "S-1",
    "arrangement": "cylinder on the scale",
    "start": "4312.5 g",
    "end": "4212.5 g",
    "hose_state": NO_HOSE,
}
# Geometry, and density by CoolProp 8.0.0: COMPUTED outside of this program.
HOSES = Path(__file__).parents[1] / "checkdata" / "hose_residual.csv"


def weighed(*lines: dict[str, str], kind: str = EVACUATED, **changes: Any) -> Case:
    typed: Typed = {"kind": kind, "lines": [LINE | line for line in lines or ({},)]}
    return case({"weigh_in": typed}, **changes)


def moved(given: Case) -> tuple[Transfer, ...]:
    return steps.movements(given, "weigh_in")


def result(given: Case) -> weigh_in.WeighedIn:
    found = steps.work_out(given, "weigh_in").result
    assert isinstance(found, weigh_in.WeighedIn)
    return found


def test_that_what_left_the_cylinder_is_in_the_equipment() -> None:
    assert moved(weighed()) == (
        Transfer("cylinder:C-014", FREEZER, "R290", 100_000, "4312.5 g → 4212.5 g"),
    )


@pytest.mark.parametrize(
    ("arrangement", "start", "end"),
    [
        ("cylinder on the scale", "4.3125 kg", "4.2125 kg"),
        ("equipment on the scale", "55.000 kg", "55.100 kg"),
        ("zeroed display", "0 g", "-100.0 g"),
        ("zeroed display", "0,0 g", "\u2212100,0 g"),
    ],
)
def test_that_every_arrangement_gives_the_same_charge(
    arrangement: str, start: str, end: str
) -> None:
    given = weighed({"arrangement": arrangement, "start": start, "end": end})
    assert [line.mass_mg for line in moved(given)] == [100_000]
    assert result(given).charged.m_as("g") == pytest.approx(100, abs=1e-9)
    assert steps.refusals(given, "weigh_in") == {}


def _hose_row() -> dict[str, str]:
    rows = list(csv.DictReader(HOSES.read_text(encoding="utf-8").splitlines()))
    return next(row for row in rows if row["refrigerant"] == "R290" and row["length_in"] == "36")


@pytest.mark.parametrize(
    ("state", "column"), [("liquid", "liquid_g"), ("saturated vapour", "sat_vapour_g")]
)
def test_that_the_hose_goes_to_the_air_as_its_own_line(state: str, column: str) -> None:
    row = _hose_row()
    hose = {
        "hose_state": state,
        "hose_length": f"{row['length_in']} in",
        "hose_bore": f"{row['id_mm']} mm",
        "hose_temperature": f"{row['t_C']} °C",
    }
    into, lost = moved(weighed(hose))
    assert (lost.source, lost.target) == ("cylinder:C-014", "atmosphere")
    assert lost.as_typed == "left in the hose"
    assert lost.mass_mg == pytest.approx(1_000 * float(row[column]), rel=5e-4, abs=1)
    assert into.mass_mg + lost.mass_mg == 100_000


def test_that_the_hose_does_not_count_with_the_equipment_on_the_scale() -> None:
    hose = {"hose_state": "liquid", "hose_volume": "16.5 mL"}
    scale = {"arrangement": "equipment on the scale", "start": "55.000 kg", "end": "55.100 kg"}
    into, lost = moved(weighed(hose | scale))
    assert into.mass_mg == 100_000
    assert lost.mass_mg > 0


def test_that_several_cylinders_make_one_charge() -> None:
    first = {"start": "4000 g", "end": "3940 g"}
    second = {"cylinder": "C-015", "start": "8.400 kg", "end": "8.3612 kg"}
    given = weighed(first, second)
    assert [(line.source, line.mass_mg) for line in moved(given)] == [
        ("cylinder:C-014", 60_000),
        ("cylinder:C-015", 38_800),
    ]
    assert result(given).charged.m_as("g") == pytest.approx(98.8, abs=1e-9)


def test_that_the_second_cylinder_is_stopped_at_what_is_left_to_charge() -> None:
    first = {"start": "4000 g", "end": "3940 g"}  # 60 g in: 40 g of 100 g are left
    second = {"cylinder": "C-015", "start": "8400 g", "end": ""}
    lines = result(weighed(first, second)).lines
    assert [line.stop_shown for line in lines] == ["3\u202f900.0 g", "8\u202f360.0 g"]


def test_that_a_zeroed_display_is_stopped_below_zero() -> None:
    given = weighed({"arrangement": "zeroed display", "start": "0 g", "end": ""})
    assert result(given).lines[0].stop_shown == "\u2212100.0 g"
    assert result(given).verdict is None  # nothing has gone in yet


def test_that_the_display_is_stopped_in_its_own_unit() -> None:
    given = weighed(
        {"start": "9 lb", "end": ""},
        equipment={"charge": "8 oz"},
        instruments={"S-1": {"kind": "scale", "name": "Bench scale", "resolution": "0.01 lb"}},
    )
    assert result(given).lines[0].stop_shown == "8.50 lb"  # 9 lb less half a pound


# A3 of 500 g and less: the larger of 2 g and 2 % (common practice). A scale of 0.1 g:
# U = 2 x 0.1 / sqrt(6) = 0.082 g (JCGM 100, 4.3.7), so 98.082 to 101.918 g is within.
@pytest.mark.parametrize(
    ("end", "word"),
    [
        ("4212.5 g", "within"),
        ("4210.6 g", "within"),  # 101.9 g
        ("4210.5 g", "scale too coarse to tell"),  # 102.0 g
        ("4210.4 g", "over"),  # 102.1 g
        ("4214.4 g", "within"),  # 98.1 g
        ("4214.6 g", "under"),  # 97.9 g
    ],
)
def test_that_the_verdict_minds_the_doubt_of_the_scale(end: str, word: str) -> None:
    verdict = result(weighed({"end": end})).verdict
    assert verdict is not None
    assert verdict.word == word
    assert verdict.expanded_uncertainty.m_as("g") == pytest.approx(0.08165, abs=1e-5)


def test_that_the_coarsest_scale_used_decides_the_doubt() -> None:
    fine, coarse = {"start": "4000 g", "end": "3940 g"}, {"scale": "S-5", "end": "4272.5 g"}
    # Two net masses: U = 2 x 5 x sqrt(2 / 6) = 5.774 g.
    found = result(weighed(fine, coarse))
    assert found.budget.expanded.m_as("g") == pytest.approx(5.7735, abs=1e-4)


def test_that_no_verdict_is_given_where_the_content_before_is_not_known() -> None:
    worked = steps.work_out(weighed(kind="part of a charge"), "weigh_in")
    assert worked.result.verdict is None
    (said,) = worked.sentences
    assert said == (
        "What was in the equipment before was not weighed, so the mass alone can not tell whether "
        "the charge is right."
    )


# The book has 100 g in it; 30 g go in to fill it up, so 30 g had gone before.
@pytest.mark.parametrize(
    ("content_mg", "lost_mg"), [(100_000, 30_000), (80_000, 10_000), (70_000, 0), (-5_000, 0)]
)
def test_that_what_full_charge_tells_of_before_is_presumed_lost(
    content_mg: int, lost_mg: int
) -> None:
    given = weighed(
        {"end": "4282.5 g"}, kind="brought to full charge", equipment_content_mg=content_mg
    )
    lost = [line for line in moved(given) if line.as_typed == "presumed lost"]
    assert [(line.source, line.target, line.mass_mg) for line in lost] == (
        [(FREEZER, "atmosphere", lost_mg)] if lost_mg else []
    )


def test_that_presumed_lost_is_never_more_than_the_book_has() -> None:
    given = weighed(kind="brought to full charge", equipment_content_mg=20_000,
                    equipment={"charge": "50 g"})  # fmt: skip
    # 20 + 100 - 50 = 70 g too much, but only 20 g were there to be lost.
    assert moved(given)[-1].mass_mg == 20_000


@pytest.mark.parametrize(
    ("line", "path", "says"),
    [
        ({"cylinder": "C-1"}, "cylinder", "Expected a cylinder of the register."),
        ({"scale": "X"}, "scale", "Expected a scale of the register."),
        ({"end": "4312.5 g"}, "end",
         "Expected less at the end than at the start; nothing was charged."),
        ({"arrangement": "equipment on the scale"}, "end",
         "Expected more at the end than at the start; nothing was charged."),
        ({"hose_state": "liquid"}, "hose_length",
         "Expected length and bore of the hose, or its volume; or no hose."),
        ({"hose_state": "liquid", "hose_volume": "1 L"}, "hose_state",
         "The hose would hold more than left the cylinder."),
        ({"hose_state": "liquid", "hose_volume": "1 mL", "hose_temperature": "150 °C"},
         "hose_state", "The hose's content can not be worked out from these readings."),
        ({"hose_state": "vapour at suction pressure", "hose_volume": "9 mL"}, "hose_pressure",
         "Expected the pressure in the hose at disconnection."),
    ],
)  # fmt: skip
def test_that_a_weigh_in_that_can_not_be_is_refused(
    line: dict[str, str], path: str, says: str
) -> None:
    assert steps.refusals(weighed(line), "weigh_in")[f"lines[0].{path}"] == says


def test_that_a_zeotrope_drawn_as_vapour_is_told() -> None:
    given = weighed({"drawn_as": "vapour"}, equipment={"refrigerant": "R407C", "charge": "5 kg"})
    assert any(
        said.startswith("Draw R407C as liquid.")
        for said in steps.work_out(given, "weigh_in").sentences
    )


def test_that_a_cylinder_may_be_overdrawn_by_what_its_weighing_can_not_tell() -> None:
    # 400 g in it and 3600 g tare: 0.5 % of 4 kg is 20 g, more than 3 g and than the scale's doubt.
    assert steps.overdraw_allowed_mg(weighed(), "weigh_in") == {"cylinder:C-014": 20_000}


def test_that_pounds_and_ounces_move_what_grams_do() -> None:
    # 10 lb = 4535.923 7 g and 9 lb 12.5 oz = 4436.700 369 g (NIST SP 811, B.8): 99.223 331 g.
    (line,) = moved(weighed({"start": "10 lb", "end": "9 lb 12.5 oz"}))
    assert abs(line.mass_mg - 99_223) <= 1  # each reading is rounded to the milligram


def test_that_the_budget_is_a_table_of_its_lines() -> None:
    given = weighed({"end": "4212.5 g"}, instruments={
        "S-1": {"kind": "scale", "name": "S", "resolution": "0.1 g", "repeatability": "0.2 g"}
    })  # fmt: skip
    (table,) = steps.work_out(given, "weigh_in").tables
    sizes: dict[str, float] = {}
    for name, how, size in table.rows:
        assert how.value
        assert not isinstance(size.value, str)
        sizes[str(name.value)] = size.value.m_as("g")
    # JCGM 100, 4.3.7 by hand: 0.1 / sqrt(12) x sqrt(2) = 0.0408; 0.2 x sqrt(2) = 0.2828;
    # together 0.2858, twice that 0.5715.
    assert sizes == pytest.approx(
        {
            "resolution": 0.0408,
            "repeatability": 0.2828,
            "gain": 0,
            "hose content": 0,
            "combined": 0.2858,
            "expanded": 0.5715,
        },
        abs=1e-4,
    )


@pytest.mark.parametrize(
    ("scale", "says"),
    [("S-1", "This scale decides"), ("S-5", "This scale can not decide")],
)
def test_that_the_budget_says_what_resolution_is_enough(scale: str, says: str) -> None:
    (table,) = steps.work_out(weighed({"scale": scale}), "weigh_in").tables
    assert table.says.startswith(says)
    assert "resolution" in table.says
