"""The job report, read back as text beside what was typed in the sample job files."""

from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image as Pixels
from pypdf import PdfReader

from chargebench.desk import Desk
from chargebench.reports import JobRecord, pdf
from chargebench.reports.drawn import Image, Ring, Stroke, Words
from chargebench.reports.job_report import draw_job_report
from chargebench.reports.letterhead import DEFERENCE
from chargebench.reports.photos import Photo
from chargebench.reports.readings import side_by_side
from chargebench.steps import STEPS
from tests.desk import shops
from tests.reports.papers import faults, overlaps, text_of


def record(shop: Desk, number: str) -> JobRecord:
    return shop.job_record(next(line.id for line in shop.jobs() if line.number == number))


def report(shop: Desk, job: JobRecord, folder: Path, *photos: Photo) -> Path:
    drawn = draw_job_report(shop.letterhead("A4"), job, photos)
    return pdf.write(drawn, folder / "report.pdf")


@pytest.fixture(scope="module")
def freezer(shop: Desk, tmp_path_factory: pytest.TempPathFactory) -> str:
    """The report of the freezer charged over its nameplate."""
    return text_of(report(shop, record(shop, "B-0010"), tmp_path_factory.mktemp("report")))


def test_that_it_says_whose_it_is_and_what_was_worked_on(freezer: str) -> None:
    for words in (
        "Larkmoor Cold",
        "LC-2019-077",
        "Job report B-0010",
        "Tamsin Arkwell",
        "4 Quay Street",
        "21C-04417",
        "R290, A3 highly flammable",
        "3.0 oz (85.0 g)",
        "N. Okafor, 608-U-40417, Universal",
    ):
        assert words in freezer


def test_that_findings_stand_as_typed_with_settings_before_and_after(freezer: str) -> None:
    assert "Found Process valve core leaking, bubbles at the stem, cap without gasket." in freezer
    assert "Set: set point -11 F → -4 F" in freezer


def test_that_the_charge_stands_with_its_uncertainty_and_scale(freezer: str) -> None:
    # 10 012.2 g - 9 923.5 g = 88.7 g, of which the hose keeps 0.3 g; the nameplate is 3.0 oz.
    assert "C-014 on S-2 Bench scale: 10 012.2 g → 9 923.5 g." in freezer
    assert "In 88.4 g of 85.0 g: over (±0.9 g, k = 2)." in freezer
    assert "Uncertainty of the charge" in freezer


def test_that_flags_that_stand_are_said_with_level_and_source(freezer: str) -> None:
    assert "STOP Over nameplate by 3.4 g (±0.9 g)" in freezer
    assert "CHECK 1 of 6 lines of the safety list" in freezer


def test_that_a_job_still_open_says_so_and_which_steps_are_not_signed(freezer: str) -> None:
    assert "Job closed still open" in freezer
    assert "Not signed yet: As left, Maker, Time, parts, Reseal." in freezer


def test_that_every_page_defers_to_codes_maker_and_licence(shop: Desk, tmp_path: Path) -> None:
    path = report(shop, record(shop, "B-0010"), tmp_path)
    for page in PdfReader(path).pages:
        assert DEFERENCE in " ".join(page.extract_text().split())


def test_that_the_decay_test_is_drawn_reading_by_reading(shop: Desk) -> None:
    job = record(shop, "B-0010")
    drawn = draw_job_report(shop.letterhead("A4"), job)
    rings = [mark for page in drawn.pages for mark in page if isinstance(mark, Ring)]
    evacuation = job.counts("evacuation")
    assert evacuation is not None
    assert len(rings) == len(evacuation.answers.lines("decay"))
    assert [ring.x for ring in rings] == sorted(ring.x for ring in rings)
    curve = max(
        (mark for page in drawn.pages for mark in page if isinstance(mark, Stroke)),
        key=lambda mark: len(mark.points),
    )
    assert curve.points[0][0] == pytest.approx(rings[0].x)
    assert curve.points[-1][0] == pytest.approx(rings[-1].x)


def test_that_a_short_job_fits_on_one_page(shop: Desk) -> None:
    for paper in ("A4", "Letter"):
        assert len(draw_job_report(shop.letterhead(paper), record(shop, "B-0008")).pages) == 1


def test_that_readings_as_found_and_as_left_stand_side_by_side(shop: Desk) -> None:
    jobs = [record(shop, line.number) for line in shop.jobs()]
    both = next(job for job in jobs if job.counts("as_found") and job.counts("as_left"))
    read = side_by_side(both)
    assert read.heads[:3] == ("Reading", "As found", "As left")
    labels = {STEPS["as_found"].field(key).label: key for key in ("box", "ambient", "suction_line")}
    compared = 0
    for label, *cells in read.rows:
        for step, cell in zip(("as_found", "as_left"), cells, strict=False):
            typed = both.case.step(step).reading(labels[label]) if label in labels else None
            if typed is not None:
                number = float(cell.split()[0].replace("−", "-"))
                assert number == pytest.approx(typed.quantity.m_as("degC"), abs=0.05)
                compared += 1
    assert compared >= 2


def test_that_the_makers_figures_stand_last(shop: Desk) -> None:
    jobs = [record(shop, line.number) for line in shop.jobs()]
    told = [job for job in jobs if job.case.step("support").lines("figures")]
    assert told
    for job in told:
        read = side_by_side(job)
        assert read.heads[-1] == "Maker"
        expected = {line.text("expected") for line in job.case.step("support").lines("figures")}
        said = " ".join(row[-1] for row in read.rows)
        assert all(words in said for words in expected)


def test_that_calls_claim_numbers_parts_and_times_are_there(shop: Desk, tmp_path: Path) -> None:
    seen = 0
    for line in shop.jobs():
        job = record(shop, line.number)
        text = text_of(report(shop, job, tmp_path))
        for step, lines, key in (
            ("support", "calls", "number"),
            ("time_and_parts", "parts", "number"),
        ):
            signed = job.counts(step)
            for each in signed.answers.lines(lines) if signed else ():
                assert each.text(key) in text
                seen += bool(each.text(key))
    assert seen >= 3


def test_that_a_job_with_nothing_signed_is_one_page_that_says_so(
    shop: Desk, tmp_path: Path
) -> None:
    job = replace(record(shop, "B-0010"), steps=(), flags=())
    path = report(shop, job, tmp_path)
    assert len(PdfReader(path).pages) == 1
    assert "No findings are signed yet." in text_of(path)


def test_that_a_step_taken_back_is_said_with_its_reason(shop: Desk, tmp_path: Path) -> None:
    job = record(shop, "B-0010")
    undone = replace(job.steps[0], reversed="wrong nameplate read")
    text = text_of(report(shop, replace(job, steps=(undone, *job.steps[1:])), tmp_path))
    assert f"Taken back: Nameplate ({undone.number}), wrong nameplate read." in text


def _picture(kind: str, mode: str, size: tuple[int, int], turned: int = 1) -> bytes:
    made = Pixels.new(mode, size, 0)
    exif = Pixels.Exif()
    exif[0x0112] = turned  # TIFF 6.0 and Exif: orientation
    kept = BytesIO()
    made.save(kept, kind, exif=exif)
    return kept.getvalue()


def test_that_photos_are_set_with_captions_upright_and_without_transparency(
    shop: Desk, tmp_path: Path
) -> None:
    photos = (
        Photo("nameplate", "image/jpeg", _picture("JPEG", "RGB", (4000, 2000), turned=6)),
        Photo("leak", "image/png", _picture("PNG", "RGBA", (300, 300))),
        Photo("letter", "application/pdf", b"%PDF-1.4 no picture"),
    )
    job = record(shop, "B-0008")
    path = report(shop, job, tmp_path, *photos)
    assert faults(path) == []
    text = text_of(path)
    assert "nameplate leak" in text
    assert "letter (no picture that can be printed: application/pdf)" in text
    drawn = draw_job_report(shop.letterhead("A4"), job, photos)
    first, second = (m for page in drawn.pages for m in page if isinstance(m, Image))
    assert first.height == pytest.approx(2 * first.width)  # the camera was held upright
    with Pixels.open(BytesIO(first.jpeg)) as opened:
        assert max(opened.size) <= 1100
    with Pixels.open(BytesIO(second.jpeg)) as opened:
        assert opened.getpixel((5, 5)) == (255, 255, 255)  # what shone through is paper


def test_that_marks_are_explained_by_what_they_are_held_against(shop: Desk, tmp_path: Path) -> None:
    jobs = [record(shop, line.number) for line in shop.jobs()]
    marked = next(job for job in jobs if "As left" in side_by_side(job).says)
    text = text_of(report(shop, marked, tmp_path))
    assert "◆ off “As left” by more than" in text


LONG = " ".join(f"sentence {n} of a long story told by a patient person." for n in range(70))


def test_that_long_texts_many_readings_and_many_calls_are_all_there(tmp_path: Path) -> None:
    with shops.build(tmp_path / "long.chargebench") as desk:
        job = desk.open_job("E-001", LONG)
        calls = [{"who": f"caller {n}", "about": "a" * 90, "number": f"W-{n}"} for n in range(80)]
        decay = [{"at": f"{n / 10} min", "reading": f"{300 + n // 10} micron"} for n in range(400)]
        desk.sign(job, "nameplate", {**shops.NAMEPLATE, "complaint": LONG})
        desk.sign(job, "findings", {"found": LONG, "cause": "x" * 900, "done": LONG})
        desk.sign(job, "evacuation", {"decay": decay, "remarks": LONG})
        desk.sign(job, "support", {"calls": calls})
        for paper in ("A4", "Letter"):
            drawn = desk.job_report(job, paper)
            for marks in drawn.pages:
                assert overlaps([mark for mark in marks if isinstance(mark, Words)]) == []
                assert all(m.y < drawn.height - 5 for m in marks if isinstance(m, Words))
            path = pdf.write(drawn, tmp_path / "long.pdf")
            assert faults(path) == []
            text = text_of(path)
            assert text.count("sentence 69 of a long story") == 5
            assert "caller 79" in text
            assert text.replace(" ", "").count("x" * 900) == 1
            rings = sum(isinstance(mark, Ring) for page in drawn.pages for mark in page)
            assert rings == 400
