"""Every paper of the sample shop: kept as PDF/A-1b, on A4 and Letter, with its text to search."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from fpdf import FPDF
from pypdf import PdfReader

from chargebench.desk import Desk
from chargebench.reports import pdf
from chargebench.reports.drawn import POINT_MM, Drawn, Words
from chargebench.reports.letterhead import usual_paper
from chargebench.reports.letters import lines, width
from chargebench.reports.page import Page
from tests.reports.papers import POINTS, boxes, faults, overlaps, text_of


def _job(shop: Desk, number: str) -> str:
    return next(line.id for line in shop.jobs() if line.number == number)


def _drawn(shop: Desk, what: str, paper: str) -> Drawn:
    if what == "report":
        return shop.job_report(_job(shop, "B-0010"), paper)
    if what == "checklist":
        return shop.checklist(_job(shop, "B-0010"), paper)
    if what == "disposal":
        return shop.disposal_statement(_job(shop, "B-0008"), paper)
    if what == "hand-over":
        (entry,) = (each.id for each in shop.entries() if each.kind == "returned")
        return shop.hand_over_statement(entry, paper)
    return shop.cylinder_labels([line.id for line in shop.cylinders()], paper)


@pytest.mark.parametrize("paper", POINTS)
@pytest.mark.parametrize("what", ["report", "checklist", "disposal", "hand-over", "labels"])
def test_that_every_paper_can_be_kept_and_fits_its_sheet(
    shop: Desk, tmp_path: Path, what: str, paper: str
) -> None:
    path = pdf.write(_drawn(shop, what, paper), tmp_path / "paper.pdf")
    assert faults(path) == []
    (box,) = boxes(path)
    assert box == pytest.approx(POINTS[paper], abs=0.1)


def test_that_what_may_not_be_kept_is_found_out(tmp_path: Path) -> None:
    plain = FPDF()
    plain.add_page()
    plain.set_font("helvetica")
    plain.cell(text="not embedded")
    with plain.local_context(fill_opacity=0.5):
        plain.rect(1, 1, 5, 5, style="F")
    plain.output(str(tmp_path / "plain.pdf"))
    clauses = {fault.partition(":")[0] for fault in faults(tmp_path / "plain.pdf")}
    assert {"6.1.2", "6.2.2", "6.3.4", "6.4", "6.7.2"} <= clauses


@pytest.mark.parametrize("what", ["report", "checklist", "disposal", "hand-over", "labels"])
@pytest.mark.parametrize("paper", POINTS)
def test_that_nothing_is_drawn_over_the_edge(shop: Desk, what: str, paper: str) -> None:
    drawn = _drawn(shop, what, paper)
    for marks in drawn.pages:
        for mark in marks:
            if isinstance(mark, Words):
                end = mark.x + width(mark.text, mark.size, bold=mark.bold)
                assert mark.x >= 5
                assert end <= drawn.width - 5, mark.text
                assert mark.y - mark.size * POINT_MM >= 5
                assert mark.y <= drawn.height - 5, mark.text


def test_that_no_line_is_drawn_over_another(shop: Desk) -> None:
    for paper in POINTS:
        for line in shop.jobs():
            for marks in shop.job_report(line.id, paper).pages:
                assert overlaps([mark for mark in marks if isinstance(mark, Words)]) == []


# Advance widths of DejaVu Sans 2.37 as its own tables give them to another reader of fonts: the
# library that writes the PDF measures each line anew.
@pytest.mark.parametrize("bold", [False, True])
def test_that_lines_are_as_wide_as_the_pdf_library_measures_them(bold: bool) -> None:
    from chargebench.reports.letters import FACES, FONT
    from chargebench.resource import resource

    measured = FPDF()
    measured.add_font(FONT, "B" if bold else "", resource("fonts", FACES[bold]))
    measured.set_font(FONT, "B" if bold else "", 9)
    text = "R290: 88.4 g ± 0.9 g → ◆ ☑ ☐ über çà"
    expected = measured.get_string_width(text)
    for font in measured.fonts.values():
        font.close()
    assert width(text, 9, bold=bold) == pytest.approx(expected, rel=0.01)


def test_that_a_word_longer_than_a_line_is_broken_and_none_is_lost() -> None:
    text = "short " + "x" * 300 + " end\nnew line"
    found = lines(text, 40, 9)
    assert all(width(line, 9) <= 40 for line in found)
    assert "".join(found).replace(" ", "") == text.replace(" ", "").replace("\n", "")
    assert found[-1] == "new line"


def test_that_a_long_text_goes_on_over_the_end_of_the_page(tmp_path: Path) -> None:
    page = Page(paper="A4", head="head", foot="foot")
    page.facts([("Long", " ".join(f"word{n}" for n in range(3000)), "")])
    page.table(("Cell",), [(" ".join(f"cell{n}" for n in range(3000)),)], (1,))
    drawn = page.finish("Long", datetime(2026, 11, 25, tzinfo=UTC), "chargebench test")
    text = text_of(pdf.write(drawn, tmp_path / "long.pdf"))
    for wanted in ("word0", "word2999", "cell0", "cell2999"):
        assert wanted in text.split()
    for marks in drawn.pages:
        assert all(mark.y <= drawn.height for mark in marks if isinstance(mark, Words))
    assert f"page {len(drawn.pages)} of {len(drawn.pages)}" in text


@pytest.mark.parametrize(
    ("spoken", "units", "paper"),
    [
        ("en_US", "SI", "Letter"),
        ("de_DE", "IP", "A4"),
        ("en_GB", "SI", "A4"),
        ("English_United States", "SI", "Letter"),
        (None, "IP", "Letter"),
        (None, "SI", "A4"),
    ],
)
def test_that_paper_is_as_the_country_has_it_unless_the_shop_says(
    monkeypatch: pytest.MonkeyPatch, spoken: str | None, units: str, paper: str
) -> None:
    monkeypatch.setattr("locale.getlocale", lambda: (spoken, "UTF-8"))
    assert usual_paper({"units": units}) == paper
    for chosen in POINTS:
        assert usual_paper({"units": units, "paper": chosen}) == chosen


def test_that_the_title_is_that_of_the_paper(shop: Desk, tmp_path: Path) -> None:
    path = pdf.write(_drawn(shop, "disposal", "A4"), tmp_path / "paper.pdf")
    kept = PdfReader(path).xmp_metadata
    assert kept is not None
    assert kept.dc_title == {"x-default": "Statement of recovery, job B-0008"}
