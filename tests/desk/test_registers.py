"""A shop made and opened, and its registers."""

from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, NotAllowed, ShopFileRefused, StepRefused
from tests.desk import shops
from tests.desk.shops import expect_refusal, expect_refused_fields


def test_that_a_new_shop_has_its_first_person_and_itself(tmp_path: Path) -> None:
    with Desk.create(tmp_path / "s.chargebench", shops.SHOP, shops.PERSON) as desk:
        assert [entry.kind for entry in desk.entries()] == ["register", "register"]
        assert desk.shop == shops.SHOP
        assert desk.rows("person") == {"P-01": shops.PERSON}
        assert (desk.person, desk.units, desk.rule_set.name) == ("P-01", "SI", "us-federal")


def test_that_a_shop_opens_as_it_was_left(tmp_path: Path) -> None:
    path = tmp_path / "s.chargebench"
    with shops.build(path) as desk:
        shops.receive(desk)
        rows, head = desk.rows("cylinder"), desk.reading.head()
    with Desk.open(path) as again:
        assert (again.rows("cylinder"), again.reading.head()) == (rows, head)
        assert shops.held(again, "cylinder:C-001") == 400_000
        assert again.person == "P-01"


@pytest.mark.parametrize(
    ("shop", "person", "fields"),
    [
        ({"name": ""}, {}, ["name"]),
        ({"units": "metric"}, {}, ["units"]),
        ({"rule_set": "atlantis"}, {}, ["rule_set"]),
        ({}, {"role": ""}, ["role"]),
    ],
)
def test_that_an_incomplete_shop_leaves_no_file(
    tmp_path: Path, shop: dict[str, str], person: dict[str, str], fields: list[str]
) -> None:
    path = tmp_path / "s.chargebench"
    with pytest.raises(StepRefused) as refusal:
        Desk.create(path, shops.SHOP | shop, shops.PERSON | person)
    assert list(refusal.value.fields) == fields
    assert not path.exists()


def test_that_a_file_that_is_there_is_not_made_anew(tmp_path: Path) -> None:
    path = tmp_path / "s.chargebench"
    shops.build(path).close()
    with pytest.raises(ShopFileRefused):
        Desk.create(path, shops.SHOP, shops.PERSON)
    with Desk.open(path) as desk:
        assert len(desk.rows("cylinder")) == 4


def test_that_a_changed_row_is_an_entry_with_before_and_after(desk: Desk) -> None:
    changed = shops.CYLINDERS["C-001"] | {"tare": "3610 g"}
    desk.save_row("cylinder", "C-001", changed)
    entry = list(desk.entries())[-1]
    assert (entry.kind, entry.by) == ("register", "P-01")
    assert entry.payload == {
        "register": "cylinder",
        "id": "C-001",
        "before": shops.CYLINDERS["C-001"],
        "after": changed,
    }
    assert desk.row("cylinder", "C-001") == changed


def test_that_a_row_is_kept_without_empty_fields_and_edges(desk: Desk) -> None:
    desk.save_row("site", "L-002", {"name": "  Harbour Kitchen ", "address": "  "})
    assert desk.row("site", "L-002") == {"name": "Harbour Kitchen"}


def test_that_ids_go_on_from_the_highest(desk: Desk) -> None:
    assert desk.next_id("cylinder") == "C-010"
    assert desk.save_row("site", None, {"name": "Harbour Kitchen"}) == "L-002"
    desk.save_row("site", "L-x", {"name": "Own way of counting"})
    assert desk.next_id("site") == "L-003"


@pytest.mark.parametrize("row_id", ["", "-1", "a b", "C:1", "x" * 41, "É-1"])
def test_that_an_id_that_can_be_no_place_is_refused(desk: Desk, row_id: str) -> None:
    if not row_id:
        assert desk.save_row("site", row_id, {"name": "Next"}) == "L-002"
        return
    with expect_refusal(desk, ChargebenchError, "Expected an id of letters, digits"):
        desk.save_row("site", row_id, {"name": "Next"})


def test_that_a_wrong_row_is_refused_by_field(desk: Desk) -> None:
    with expect_refused_fields(desk, "refrigerant", "contents", "tare", "refillable"):
        desk.save_row("cylinder", "C-005", {"refrigerant": "R2900", "contents": "milk",
                                            "tare": "heavy"})  # fmt: skip
    assert desk.row("cylinder", "C-005") == {}


def test_that_rows_are_called_by_what_people_know(desk: Desk) -> None:
    assert desk.label("cylinder", "C-001") == "C-001 R290"
    assert desk.label("equipment", "E-001") == "Bakery freezer"
    assert desk.label("site", "gone") == "gone"


def test_that_nobody_signs_until_a_person_is_chosen(desk: Desk) -> None:
    desk.person = ""
    with expect_refusal(desk, ChargebenchError, "choose a person first"):
        shops.receive(desk)
    desk.person = "P-02"
    shops.receive(desk)
    assert list(desk.entries())[-1].by == "P-02"


def test_that_a_reader_sees_what_is_recorded_and_records_nothing(desk: Desk) -> None:
    with desk.reader() as reader:
        shops.receive(desk)
        assert shops.held(reader, "cylinder:C-001") == 400_000
        with pytest.raises(NotAllowed, match="only to be read"):
            shops.receive(reader)
