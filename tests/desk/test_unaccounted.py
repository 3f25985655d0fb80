"""Mass nobody can account for: by weighing, presumed lost, against what was charged."""

from pathlib import Path

import openpyxl
import pytest

from chargebench.desk import Desk
from chargebench.ledger import NewEntry, Transfer
from tests.desk import shops


@pytest.fixture
def year(desk: Desk) -> Desk:
    """March: 100 g charged, 40 g found missing; April: 10 g found over, of a year of R290."""
    shops.receive(desk, "400 g", happened_at=shops.at("2026-03-01"))
    job = desk.open_job("E-001", happened_at=shops.at("2026-03-02"))
    desk.sign(job, "nameplate", shops.NAMEPLATE, shops.at("2026-03-02"))
    desk.sign(job, "weigh_in", shops.weigh_in(100), shops.at("2026-03-02"))
    weigh = {"cylinder": "C-001", "scale": "I-001", "accept": "yes", "reason": "found so"}
    desk.act("weigh", weigh | {"gross": "3860 g"}, shops.at("2026-03-31", "23:59"))
    desk.act("weigh", weigh | {"gross": "3870 g"}, shops.at("2026-04-01", "00:01"))
    return desk


def test_that_what_scales_miss_stands_against_what_was_charged(year: Desk) -> None:
    (march,) = year.unaccounted(shops.at("2026-03-01").date(), shops.at("2026-03-31").date())
    assert (march.refrigerant, march.used_mg, march.missing_mg, march.over_mg) == (
        "R290", 100_000, 40_000, 0,
    )  # fmt: skip
    assert march.share == pytest.approx(0.40)
    (whole,) = year.unaccounted()
    assert (whole.missing_mg, whole.over_mg, whole.unaccounted_mg) == (40_000, 10_000, 30_000)
    (april,) = year.unaccounted(shops.at("2026-04-01").date())
    assert (april.unaccounted_mg, april.share) == (-10_000, None)  # nothing was charged


def test_that_what_was_taken_back_is_not_missing(year: Desk) -> None:
    entry = next(each for each in year.entries() if each.kind == "weighed")
    year.reverse(entry.id, "another cylinder stood on the scale")
    (whole,) = year.unaccounted()
    assert (whole.missing_mg, whole.over_mg) == (0, 10_000)


def test_that_lost_released_and_left_in_hoses_are_told_apart(year: Desk) -> None:
    lines = (
        Transfer("equipment:E-001", "atmosphere", "R290", 60_000, "released: 60 g"),
        Transfer("equipment:E-001", "atmosphere", "R290", 7_000, "presumed lost"),
        Transfer("cylinder:C-001", "atmosphere", "R290", 300, "0.3 g"),
    )
    for line in lines:
        year.ledger.post(NewEntry("step-signed", "P-01", shops.at("2026-05-02"), {}, (line,)))
    (whole,) = year.unaccounted()
    assert (whole.released_mg, whole.lost_mg, whole.hoses_mg) == (60_000, 7_000, 300)
    assert whole.unaccounted_mg == 37_000


def test_that_the_workbook_has_it_as_a_sheet(year: Desk, tmp_path: Path) -> None:
    year.export(tmp_path / "out")
    book = openpyxl.load_workbook(tmp_path / "out" / "audit.xlsx")
    (row,) = (row for row in book["Unaccounted"].values if row[0] == "R290")
    assert list(row[1:7]) == pytest.approx([0.1, 0.04, 0.01, 0, 0.03, 30])
