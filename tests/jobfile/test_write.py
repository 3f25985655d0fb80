"""Writing: the same bytes for the same content, and reading gives back what was written."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from chargebench import jobfile
from chargebench.jobfile import Job, JobFile, StepTyped, StockAct
from chargebench.jobfile.text import odd_character
from chargebench.steps import Typed
from tests.jobfile.broken import GOOD, file

MOMENT = datetime(2026, 3, 4, 13, 0, tzinfo=UTC)
TWO_HOURS = timedelta(hours=2)
TEXT = st.text(max_size=60).filter(lambda text: not odd_character(text))
REGISTER = {
    "site": {"S-01": {"name": "Bakery"}},
    "equipment": GOOD["register"]["equipment"],
    "person": {"P-01": {"name": "N. Okafor", "role": "technician"}},
    "cylinder": GOOD["register"]["cylinder"],
}


@given(
    about=TEXT,
    remarks=TEXT,
    reason=TEXT,
    minutes=st.lists(st.integers(0, 59), min_size=1, max_size=4),
    closed=st.booleans(),
)
@example(about="two\nlines\tand a tab", remarks="a\nb", reason="", minutes=[0], closed=False)
def test_that_what_is_written_is_read_back(
    about: str, remarks: str, reason: str, minutes: list[int], closed: bool
) -> None:
    steps = tuple(
        StepTyped(
            "findings",
            "P-01",
            MOMENT + timedelta(minutes=minute, seconds=minute),
            {"found": "leak", "done": remarks} if remarks else {"found": "leak"},
            again="done again" if at else "",
        )
        for at, minute in enumerate(sorted(minutes))
    )
    wanted = JobFile(
        about=about,
        register=REGISTER,
        stock=(StockAct("receive", {"cylinder": "C-014", "mass": "4 kg"}, "P-01", MOMENT),),
        job=Job("E-001", MOMENT, "P-01", reason, steps, MOMENT + TWO_HOURS if closed else None),
    )
    read = jobfile.read(jobfile.write(wanted))
    assert (read.about, read.stock, read.job) == (wanted.about, wanted.stock, wanted.job)


def test_that_spaces_and_line_ends_do_not_change_the_digest() -> None:
    tight = json.dumps(GOOD, separators=(",", ":")).encode()
    wide = json.dumps(GOOD, indent=8).replace("\n", "\r\n").encode()
    marked = b"\xef\xbb\xbf" + tight  # as some editors save UTF-8
    digests = {jobfile.digest(jobfile.read(each)) for each in (tight, wide, marked)}
    assert len(digests) == 1


def test_that_another_reading_changes_the_digest() -> None:
    other = file(lambda tree: tree["job"]["steps"][1]["typed"]["lines"][0].update(end="4227.5 g"))
    assert jobfile.digest(jobfile.read(other)) != jobfile.digest(jobfile.read(file()))


def test_that_empty_fields_and_lines_are_left_out() -> None:
    typed: Typed = {"kind": "part of a charge", "remarks": "", "lines": [{"cylinder": ""}]}
    step = StepTyped("weigh_in", "P-01", MOMENT, typed)
    written = json.loads(jobfile.write(JobFile(job=Job("E-001", MOMENT, "P-01", steps=(step,)))))
    assert written["job"]["steps"][0]["typed"] == {"kind": "part of a charge"}


def test_that_fields_stand_in_the_order_of_their_form() -> None:
    typed = {"charge": "85 g", "refrigerant": "R290"}
    step = StepTyped("nameplate", "P-01", MOMENT, typed)
    written = jobfile.write(JobFile(job=Job("E-001", MOMENT, "P-01", steps=(step,))))
    places = [written.index(key) for key in (b'"refrigerant"', b'"charge"')]
    assert places == sorted(places)


@pytest.mark.parametrize("key", ["shop", "about"])
def test_that_what_is_empty_is_not_written(key: str) -> None:
    assert key not in json.loads(jobfile.write(JobFile()))
