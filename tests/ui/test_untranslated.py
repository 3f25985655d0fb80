"""Every visible word of the window is translated: what is not stands in no brackets."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from chargebench import sources
from chargebench.ui import language
from chargebench.ui.window import MainWindow
from tests.unbracketed import language_of_brackets, unbracketed

# Names, addresses and what people typed; titles of laws and standards stay in their language.
TYPED = ("Larkmoor Cold", "N. Okafor", "Bakery", "United States federal", "R290", "us-federal")
UNITS = ("micron", "psig", "min")


@pytest.fixture
def _brackets(qapp: QApplication, tmp_path: Path) -> Iterator[None]:  # noqa: ARG001
    language.speak("de", str(language_of_brackets(tmp_path)))
    yield
    language.speak("en")


@pytest.mark.usefixtures("_brackets")
def test_that_labels_buttons_and_heads_of_every_area_and_step_are_translated(
    window: MainWindow, job: str
) -> None:
    found = set(unbracketed(window))
    window.bench.open_job(job)
    steps = window.bench.job_page().steps
    for row in range(steps.count()):
        steps.setCurrentRow(row)
        found |= set(unbracketed(window))
    for place in (1, 2):
        window.show_area(place)
        found |= set(unbracketed(window))
    assert sorted(text for text in found if not _stays(text)) == []


def _stays(text: str) -> bool:
    """Whether it is typed by people, or cites a law, a standard or a maker."""
    cited = any(sources.name(key) in text for key in sources.SOURCES)
    return cited or any(each in text for each in TYPED) or text.split()[-1] in UNITS
