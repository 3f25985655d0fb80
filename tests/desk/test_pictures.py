"""Photos of a job: kept by their hash, named by an entry, printed in the report, taken back."""

import hashlib
import shutil
import sqlite3
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image as Pixels
from pypdf import PdfReader

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, JobClosed, PictureRefused


def _photo(width: int = 2400, height: int = 1200, *, turned: bool = False) -> bytes:
    """A picture with a red left half; `turned` says in its notes that it lies on its side."""
    made = Pixels.new("RGB", (width, height), "white")
    made.paste("red", (0, 0, width // 2, height))
    exif = Pixels.Exif()
    exif[0x010F] = "An invented camera"  # make
    if turned:
        exif[0x0112] = 6  # orientation: turn a quarter clockwise (TIFF 6.0, section 8)
    file = BytesIO()
    made.save(file, "JPEG", exif=exif)
    return file.getvalue()


@pytest.fixture
def told(sample_shop: Path, tmp_path: Path) -> Iterator[Desk]:
    """A copy of the sample shop to record in."""
    with Desk.open(Path(shutil.copy(sample_shop, tmp_path / "shop.chargebench"))) as opened:
        yield opened


@pytest.fixture
def job(told: Desk) -> str:
    return told.jobs(state="open")[0].id


def test_that_a_photo_is_kept_under_the_hash_its_entry_names(told: Desk, job: str) -> None:
    content = _photo()
    entry = told.attach(job, "nameplate", content, "Nameplate", name="IMG 1.jpg")
    (line,) = told.photos(job)
    kept = told.photo(line)
    assert hashlib.sha256(kept).hexdigest() == entry.payload["picture"] == line.picture
    assert entry.payload["file_sha256"] == hashlib.sha256(content).hexdigest()
    assert (line.caption, line.step, line.number) == ("Nameplate", "nameplate", entry.number)
    assert told.verify().ok


def test_that_what_is_kept_is_upright_of_print_size_and_says_nothing_of_the_camera(
    told: Desk, job: str
) -> None:
    told.attach(job, "nameplate", _photo(turned=True), "Nameplate")
    with Pixels.open(BytesIO(told.photo(told.photos(job)[0]))) as kept:
        assert kept.size == (800, 1600)
        assert not kept.getexif()
        red = kept.getpixel((400, 100))  # the left half is on top once it stands upright
        assert isinstance(red, tuple)
        assert red[0] > 200 > red[1]


def test_that_a_photo_taken_back_is_no_longer_shown_and_stays_on_record(
    told: Desk, job: str
) -> None:
    entry = told.attach(job, "nameplate", _photo(), "Wrong cabinet")
    told.reverse(entry.id, "Of another cabinet")
    assert told.photos(job) == []
    assert told.entry(entry.id).payload["caption"] == "Wrong cabinet"
    assert told.job(job).steps[0].state == "signed"  # no step is opened by it
    assert told.taken_back(job, "nameplate") == []


def test_that_the_report_shows_the_photo(told: Desk, job: str, tmp_path: Path) -> None:
    from chargebench.reports import pdf

    told.attach(job, "leak_search", _photo(), "Process valve, weeping")
    paper = PdfReader(pdf.write(told.job_report(job), tmp_path / "report.pdf"))
    assert any("Process valve, weeping" in page.extract_text() for page in paper.pages)
    assert sum(len(page.images) for page in paper.pages) == 1


@pytest.mark.parametrize(
    ("content", "caption", "says"),
    [
        (b"", "Nameplate", "Expected a photo"),
        (b"%PDF-1.7", "Nameplate", "Expected a photo"),
        (_photo()[:500], "Nameplate", "Expected a photo"),
        (_photo(), "  ", "what the photo shows"),
        (_photo(), "x" * 301, "what the photo shows"),
    ],
    ids=["nothing", "paper", "cut", "no caption", "long caption"],
)
def test_that_what_is_no_photo_is_refused_and_nothing_recorded(
    told: Desk, job: str, content: bytes, caption: str, says: str
) -> None:
    before = told.reading.head()
    with pytest.raises(PictureRefused, match=says):
        told.attach(job, "nameplate", content, caption)
    assert told.reading.head() == before


def test_that_a_file_that_can_not_be_read_is_said(told: Desk, job: str, tmp_path: Path) -> None:
    with pytest.raises(PictureRefused, match=r"no\.jpg can not be read"):
        told.attach_file(job, "nameplate", tmp_path / "no.jpg", "Nameplate")


def test_that_a_closed_job_takes_no_photo(told: Desk) -> None:
    closed = told.jobs(state="closed")[0].id
    with pytest.raises(JobClosed):
        told.attach(closed, "nameplate", _photo(), "Nameplate")


def test_that_a_changed_photo_is_found(told: Desk, job: str) -> None:
    told.attach(job, "nameplate", _photo(), "Nameplate")
    tool = sqlite3.connect(told.path, isolation_level=None)
    tool.execute("DROP TRIGGER picture_no_update")
    tool.execute("UPDATE picture SET content = ?", (_photo(100, 100),))
    tool.close()
    with Desk.open_reading(told.path) as read:
        found = read.verify()
    assert any("picture" in problem.what for problem in found.problems)


def test_that_a_photo_of_another_bench_is_named_as_kept_there(told: Desk, job: str) -> None:
    told.attach(job, "nameplate", _photo(), "Nameplate")
    tool = sqlite3.connect(told.path, isolation_level=None)
    tool.execute("DROP TRIGGER picture_no_delete")
    tool.execute("DELETE FROM picture")
    tool.close()
    with Desk.open_reading(told.path) as read:
        line = read.photos(job)[0]
        with pytest.raises(ChargebenchError, match="kept at the bench that attached it"):
            read.photo(line)
