"""Labels of cylinders, and the code on them read back."""

from pathlib import Path

import pytest
import segno

from chargebench.desk import Desk
from chargebench.reports import pdf
from chargebench.reports.drawn import Words
from chargebench.reports.label_pdf import LABEL
from tests.reports.papers import boxes, faults, text_of
from tests.reports.qr import read_label
from tests.reports.qr import text_of as qr_text


def test_that_the_code_holds_the_id_and_nothing_else(shop: Desk, tmp_path: Path) -> None:
    for line in shop.cylinders():
        path = pdf.write(shop.cylinder_label(line.id), tmp_path / "label.pdf")
        assert read_label(path) == line.id


# ISO/IEC 18004:2015, annex I, prints the code of "01234567" in version 1-M; here the reader of the
# tests is held against a code of letters, and against one wrong module.
@pytest.mark.parametrize("text", ["C-014", "C-D-001", "c-014/ä", "CYLINDER-00000000042"])
def test_that_the_reader_reads_codes_and_sees_a_wrong_module(text: str) -> None:
    code = segno.make_qr(text, error="q" if len(text) < 12 else "m")
    rows = [[bool(module) for module in row] for row in code.matrix]
    assert qr_text(rows) == text
    rows[-1][-2] = not rows[-1][-2]  # of the mode
    with pytest.raises(AssertionError):
        qr_text(rows)


def test_that_a_label_says_what_the_register_says(shop: Desk, tmp_path: Path) -> None:
    path = pdf.write(shop.cylinder_label("C-032"), tmp_path / "label.pdf")
    text = text_of(path)
    row = shop.row("cylinder", "C-032")
    for words in ("C-032", "R290", "recovered, A3 highly flammable", "Larkmoor Cold"):
        assert words in text
    for key in ("tare", "requalification_due", "serial", "spec"):
        assert row[key] in text
    assert faults(path) == []
    (box,) = boxes(path)
    assert box == pytest.approx(tuple(side / 25.4 * 72 for side in LABEL), abs=0.1)


def test_that_the_fill_limit_is_80_percent_of_the_water_capacity_by_density(
    shop: Desk, tmp_path: Path
) -> None:
    # R290 at 25 °C: saturated liquid 492.4 kg/m³ (NIST WebBook, from memory); water capacity as
    # the register has it; 0.80 of it by the rule of the trade for refrigerant cylinders.
    capacity = shop.answers("cylinder", "C-014").reading("water_capacity")
    assert capacity is not None
    litres = capacity.quantity.m_as("kg") / 0.9982  # stamped as mass of water at 20 °C
    expected_kg = 0.80 * litres * 0.4924
    text = text_of(pdf.write(shop.cylinder_label("C-014"), tmp_path / "label.pdf"))
    said = float(text.partition("Fill at most net ")[2].split()[0])
    assert said == pytest.approx(expected_kg, rel=0.01)


def test_that_a_cylinder_without_capacity_must_not_be_filled(shop: Desk) -> None:
    bare = {"refrigerant": "R290", "contents": "new", "refillable": "yes"}
    made = shop.save_row("cylinder", "C-099", bare)
    words = [mark.text for mark in shop.cylinder_label(made).pages[0] if isinstance(mark, Words)]
    assert "not known: do not fill" in words


def test_that_a_sheet_holds_ten_labels_and_goes_on(shop: Desk) -> None:
    ids = [line.id for line in shop.cylinders()]
    assert len(ids) > 10
    for paper in ("A4", "Letter"):
        drawn = shop.cylinder_labels(ids, paper)
        said = [{mark.text for mark in page if isinstance(mark, Words)} for page in drawn.pages]
        assert [len(page & set(ids)) for page in said] == [10, len(ids) - 10]


def test_that_a_long_id_and_a_long_owner_stay_inside_the_label(shop: Desk, tmp_path: Path) -> None:
    row = {
        "refrigerant": "R1234ze(E)",
        "contents": "mixed waste",
        "refillable": "no",
        "serial": "S" * 60,
        "owner": "The owner of the cylinder with a long name " * 4,
    }
    made = shop.save_row("cylinder", "CYLINDER-WITH-A-LONG-NUMBER-0001", row)
    path = pdf.write(shop.cylinder_label(made), tmp_path / "label.pdf")
    assert made in text_of(path)
    for mark in shop.cylinder_label(made).pages[0]:
        if isinstance(mark, Words):
            assert 0 < mark.y < LABEL[1]
