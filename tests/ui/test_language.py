"""The window speaks the bench's language; what is recorded stays English."""

import subprocess
import sys
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from pytestqt.qtbot import QtBot

from chargebench.resource import resource
from chargebench.ui import language
from chargebench.ui.fields import Choice, YesNo
from chargebench.ui.language import tr
from chargebench.words import Measured, say

LANGUAGES = ("de", "es")


@pytest.fixture(autouse=True)
def _english_afterwards(qtbot: QtBot) -> Iterator[None]:  # noqa: ARG001 - the application is there
    yield
    language.speak("en")


def _messages(code: str) -> dict[str, str]:
    root = ET.parse(resource("translations", f"chargebench_{code}.ts")).getroot()  # noqa: S314
    return {
        message.findtext("source", ""): message.findtext("translation", "")
        for message in root.iter("message")
    }


def _places(text: str) -> list[str]:
    """Names between braces, found by Python's own reader of templates."""
    from string import Formatter

    return sorted(f"{name}:{spec}" for _, name, spec, _ in Formatter().parse(text) if name)


@pytest.mark.parametrize("code", LANGUAGES)
def test_that_a_translation_has_the_values_its_text_has(code: str) -> None:
    other = [
        text
        for text, translation in _messages(code).items()
        if translation and _places(translation) != _places(text)
    ]
    assert other == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_that_what_is_shipped_is_compiled_from_what_was_translated(
    code: str, tmp_path: Path
) -> None:
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    source = resource("translations", f"chargebench_{code}.ts")
    compiled = tmp_path / "now.qm"
    subprocess.run([tool, "-silent", source, "-qm", compiled], check=True)
    assert compiled.read_bytes() == source.with_suffix(".qm").read_bytes()


@pytest.mark.parametrize(("code", "word"), [("de", "Überhitzung"), ("es", "sobrecalentamiento")])
def test_that_trade_words_are_those_of_the_glossary(code: str, word: str) -> None:
    language.speak(code)
    assert tr("superheat") == word


def test_that_values_in_a_sentence_have_the_decimal_mark_of_the_language() -> None:
    said = say("{mass} to use", mass=Measured("3.4 kg"))
    language.speak("de")
    assert tr(said) == "3,4 kg nutzbar"
    language.speak("en")
    assert tr(said) == "3.4 kg to use"


def test_that_dates_name_their_month_in_the_language() -> None:
    language.speak("es")
    assert language.day(date(2026, 1, 5)).casefold().startswith("5 ene")
    language.speak("en")
    assert language.day(date(2026, 1, 5)) == "5 Jan 2026"


def test_that_a_choice_shows_a_translation_and_keeps_the_english_word(qtbot: QtBot) -> None:
    language.speak("de")
    choice = Choice(("liquid", "vapour"))
    qtbot.addWidget(choice)
    choice.put("liquid")
    assert choice.currentText() == "Flüssigkeit"
    assert choice.text() == "liquid"
    said = YesNo()
    qtbot.addWidget(said)
    qtbot.keyClick(said.parts()[0], "j")
    assert said.text() == "yes"
