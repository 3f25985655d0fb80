"""The checklist on paper, read back as text."""

from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader

from chargebench.errors import ExportRefused
from chargebench.reports import AuditContent, JobRecord, pdf
from chargebench.reports.checklist_pdf import draw_checklist
from chargebench.reports.letterhead import DEFERENCE, Letterhead
from tests.reports.books import MADE_AT
from tests.reports.papers import text_of as _text

HEAD = Letterhead({"name": "Larkmoor Cold"}, MADE_AT, "chargebench test", "A4", "all entries")


@pytest.fixture(scope="module")
def freezer(content: AuditContent) -> JobRecord:
    """The bakery freezer's job: R290, open, one line at the weigh-in not ticked."""
    return next(job for job in content.jobs if job.case.equipment_id == "E-001")


@pytest.fixture(scope="module")
def paper(freezer: JobRecord, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("paper") / "checklist.pdf"
    return pdf.write(draw_checklist(HEAD, (freezer,)), path)


def test_that_only_flammable_refrigerants_have_a_section(
    content: AuditContent, tmp_path: Path
) -> None:
    pdf.write(draw_checklist(HEAD, content.jobs), tmp_path / "checklist.pdf")
    text = _text(tmp_path / "checklist.pdf")
    flammable = {"R290", "R600a", "R32"}
    for job in content.jobs:
        assert job.case.refrigerant is not None
        assert (job.case.number in text) == (job.case.refrigerant.name in flammable)


def test_that_every_line_is_there_with_who_ticked_it_and_when(
    paper: Path, freezer: JobRecord
) -> None:
    text = _text(paper)
    for tick in freezer.checklist:
        assert " ".join(tick.line.text.split()) in text
        assert tick.line.source in text
    assert "N. Okafor 2026-11-24 08:20" in text


def test_that_lines_nobody_ticked_are_said_plainly_and_counted(
    paper: Path, freezer: JobRecord
) -> None:
    missing = [tick for tick in freezer.checklist if not tick.by]
    text = _text(paper)
    assert len(missing) >= 4  # earthing at the weigh-in, and the reseal not yet signed
    assert f"{len(missing)} of {len(freezer.checklist)} lines are NOT TICKED." in text
    assert text.count("NOT TICKED name, time") == len(missing)


def test_that_limits_are_worked_out_for_this_charge_and_room(paper: Path) -> None:
    text = _text(paper)
    # R290: lower limit 38 g/m³ and alarm at 25 % of it, 9.5 g/m³, as annex GG and annex DD of
    # IEC 60335-2-40 are printed in appliance manuals; 8 g/m³ is EN 378's practical limit.
    assert "38 g/m³" in text
    assert "9.5 g/m³" in text
    assert "8 g/m³" in text
    # 76 FR 78832: 150 g for R290 in stand-alone retail food units of that age.
    assert "150.0 g" in text
    # 85.05 g in 24 m² x 2.8 m is 1.266 g/m³, 3.3 % of 38 g/m³.
    assert "3.3 %; limit 25.0 %" in text


def test_that_class_charge_and_what_was_raised_are_on_the_first_page(paper: Path) -> None:
    first = " ".join(PdfReader(paper).pages[0].extract_text().split())
    assert "R290, A3 highly flammable" in first
    assert "3.0 oz (85.0 g)" in first
    assert "Stop: Over nameplate by 3.4 g" in first
    assert "heavier than air" in first


def test_that_every_page_defers_to_codes_maker_and_licence(paper: Path) -> None:
    for page in PdfReader(paper).pages:
        assert DEFERENCE in " ".join(page.extract_text().split())


def test_that_figures_from_memory_are_marked_unverified(paper: Path) -> None:
    assert "ASHRAE34, flammable concentration limit [unverified]" in _text(paper)


def test_that_the_fonts_are_inside(paper: Path) -> None:
    resources = PdfReader(paper).pages[0]["/Resources"]
    fonts = [font.get_object() for font in resources["/Font"].values()]  # type: ignore[index]
    assert fonts
    for font in fonts:
        described = font["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
        assert "DejaVu" in str(described["/FontName"])
        assert "/FontFile2" in described


def test_that_the_same_content_makes_the_same_file(
    paper: Path, freezer: JobRecord, tmp_path: Path
) -> None:
    again = pdf.write(draw_checklist(HEAD, (freezer,)), tmp_path / "checklist.pdf")
    assert again.read_bytes() == paper.read_bytes()


def test_that_a_step_set_aside_is_one_line_with_its_reason(
    content: AuditContent, tmp_path: Path
) -> None:
    cooler = next(job for job in content.jobs if job.case.equipment_id == "E-002")
    pdf.write(draw_checklist(HEAD, (cooler,)), tmp_path / "checklist.pdf")
    text = _text(tmp_path / "checklist.pdf")
    assert "13 lines not called for: The circuit was not opened and no gauge was connected." in text
    assert "NOT TICKED" not in text


def test_that_no_flammable_job_is_said_on_one_page(tmp_path: Path) -> None:
    pdf.write(draw_checklist(HEAD, ()), tmp_path / "checklist.pdf")
    assert len(PdfReader(tmp_path / "checklist.pdf").pages) == 1
    assert "No job on a flammable refrigerant" in _text(tmp_path / "checklist.pdf")


def test_that_text_no_font_can_draw_does_not_stop_the_paper(
    freezer: JobRecord, tmp_path: Path
) -> None:
    odd = replace(freezer, title="a\x00b \ud800 \U0001f9ca 冷 \u202e")
    pdf.write(draw_checklist(HEAD, (odd,)), tmp_path / "checklist.pdf")
    assert "B-0010 a b" in _text(tmp_path / "checklist.pdf")


def test_that_a_folder_that_is_not_there_is_refused(tmp_path: Path) -> None:
    drawn = draw_checklist(HEAD, ())
    with pytest.raises(ExportRefused, match=r"Handling checklist, .*could not be written"):
        pdf.write(drawn, tmp_path / "missing" / "checklist.pdf")
