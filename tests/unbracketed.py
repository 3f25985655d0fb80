"""A language of brackets: every text that is looked up stands in them, so what is not shows."""

import re
from pathlib import Path
from xml.etree import ElementTree as ET

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QLineEdit, QTableView, QWidget

from chargebench.resource import resource
from resources import build_translations

_WORD = re.compile(r"[a-z]{3,}")


def language_of_brackets(folder: Path) -> Path:
    """A compiled language in which every text we collect stands in brackets."""
    tree = ET.parse(resource("translations", "chargebench_de.ts"))  # noqa: S314 - ours
    for message in tree.getroot().iter("message"):
        translation = message.find("translation")
        assert translation is not None
        translation.attrib.pop("type", None)
        translation.text = f"⟦{message.findtext('source', '')}⟧"
    source = folder / "brackets.ts"
    source.write_text(f"<!DOCTYPE TS>\n{ET.tostring(tree.getroot(), encoding='unicode')}", "utf-8")
    compiled = folder / "brackets.qm"
    build_translations.compile_ts(source, compiled)
    return compiled


def unbracketed(page: QWidget) -> list[str]:
    """Visible words of a page that stand in no brackets."""
    found: dict[str, None] = {}
    for widget in (page, *page.findChildren(QWidget)):
        if widget.isVisible():
            for text in _texts(widget):
                if _WORD.search(_outside(text)):
                    found.setdefault(text)
    return list(found)


def _texts(widget: QWidget) -> list[str]:
    texts = [widget.accessibleName(), widget.toolTip()]
    if isinstance(widget, QLabel | QAbstractButton):
        texts.append(widget.text())
    if isinstance(widget, QLineEdit):
        texts.append(widget.placeholderText())
    if isinstance(widget, QComboBox):
        texts += [widget.itemText(place) for place in range(widget.count())]
    if isinstance(widget, QTableView):
        head = Qt.Orientation.Horizontal
        columns = range(widget.model().columnCount())
        texts += [str(widget.model().headerData(place, head)) for place in columns]
    return texts


def _outside(text: str) -> str:
    """What is left when all that stands in brackets is taken out."""
    before, text = None, re.sub(r"⟦[^⟧]*…$", "", text)  # one line that was cut for want of room
    while before != text:
        before, text = text, re.sub(r"⟦[^⟦⟧]*⟧", "", text)
    return text
