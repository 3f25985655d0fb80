"""What stands beside today's readings: earlier visits, sister units."""

from chargebench.desk import Desk
from tests.desk import shops

READ = {"evaporator_inlet": "-26 °C", "suction_line": "-20 °C", "ambient": "24 °C"}
SISTER = shops.FREEZER | {"name": "Cold room freezer"}
ALIKE = {"make": "Tarrow", "model": "TF-2D"}


def visited(desk: Desk, equipment: str, step: str, day: str) -> str:
    job = desk.open_job(equipment, happened_at=shops.at(day))
    desk.sign(job, step, READ, happened_at=shops.at(day, "11:00"))
    return job


def heads(desk: Desk, job: str, sister: str = "") -> list[str]:
    return [each.head for each in desk.beside(job, {"sister": sister} if sister else {})]


def test_that_earlier_visits_stand_newest_first_and_no_later_one(desk: Desk) -> None:
    visited(desk, "E-001", "as_left", "2025-05-01")
    visited(desk, "E-001", "as_found", "2025-06-01")
    now = desk.open_job("E-001")
    visited(desk, "E-001", "as_left", "2026-09-01")
    assert heads(desk, now) == ["as found 2025-06-01", "as left 2025-05-01"]


def test_that_what_is_not_signed_does_not_stand_there(desk: Desk) -> None:
    job = desk.open_job("E-001")
    desk.keep(job, "as_left", READ)
    assert heads(desk, desk.open_job("E-001")) == []


def test_that_as_left_is_taken_before_as_found(desk: Desk) -> None:
    job = visited(desk, "E-001", "as_found", "2025-05-01")
    desk.sign(job, "as_left", READ, happened_at=shops.at("2025-05-01", "15:00"))
    assert heads(desk, desk.open_job("E-001")) == ["as left 2025-05-01"]


def test_that_a_unit_of_the_same_make_and_model_is_a_sister(desk: Desk) -> None:
    desk.save_row("equipment", "E-001", shops.FREEZER | ALIKE)
    desk.save_row("equipment", "E-003", SISTER | {key: v.upper() for key, v in ALIKE.items()})
    desk.save_row("equipment", "E-004", SISTER | {"make": "Fenwold", "model": "TF-2D"})
    visited(desk, "E-003", "as_left", "2025-05-01")
    visited(desk, "E-004", "as_left", "2025-05-02")
    now = desk.open_job("E-001")
    assert heads(desk, now) == ["E-003 Cold room freezer, as left 2025-05-01"]
    assert heads(desk, now, "E-004") == ["E-004 Cold room freezer, as left 2025-05-02"]
    assert heads(desk, now, "E-0") == ["E-003 Cold room freezer, as left 2025-05-01"]


def test_that_units_without_make_and_model_are_no_sisters(desk: Desk) -> None:
    desk.save_row("equipment", "E-003", SISTER)
    visited(desk, "E-003", "as_left", "2025-05-01")
    assert heads(desk, desk.open_job("E-001")) == []


def test_that_looking_at_readings_shows_what_stands_beside_them(desk: Desk) -> None:
    visited(desk, "E-001", "as_left", "2025-05-01")
    job = desk.open_job("E-001")
    (table,) = (t for t in desk.look(job, "as_found", READ).worked.tables if t.key == "beside")
    assert table.heads == ("Reading", "today", "as left 2025-05-01")
    desk.sign(job, "as_found", READ)
    now = desk.open_job("E-001")
    (table,) = (t for t in desk.look(now, "as_found", READ).worked.tables if t.key == "beside")
    assert table.heads[2].startswith("as found")
    assert all(t.key != "beside" for t in desk.look(job, "leak_search", {}).worked.tables)
