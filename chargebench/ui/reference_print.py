"""The reference on paper, in the words of the window, with its chart."""

from collections.abc import Sequence

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, Qt
from PySide6.QtGui import QFont, QImage, QImageWriter, QPainter

from chargebench import sources
from chargebench.desk import Desk
from chargebench.reports.reference_paper import ReferenceTable, draw_reference
from chargebench.steps.known import Known
from chargebench.steps.reference import Tabled
from chargebench.ui.language import tr
from chargebench.ui.printing import Paper
from chargebench.ui.reference_chart import draw_chart, paper_ink
from chargebench.words import say

_CHART_PX = (520, 300)
_FINER = 4  # times a screen's pixels, so that print is sharp


def reference_paper(desk: Desk, table: Tabled, facts: Sequence[Known]) -> Paper:
    """What was looked up, ready to be printed."""
    wide, high = _CHART_PX
    shown = ReferenceTable(
        title=tr(say("{refrigerant}: saturation", refrigerant=table.refrigerant)),
        heads=tuple(tr(head) for head in table.heads),
        rows=table.rows,
        says=[tr(each) for each in table.says],
        known_title=tr("What is known"),
        known=[(tr(each.what), tr(each.value), _cited(each)) for each in facts],
        chart=_chart(table),
        chart_shape=high / wide,
    )
    name = f"{table.refrigerant} saturation"
    return Paper(name, name, lambda paper: draw_reference(desk.letterhead(paper), shown))


def _chart(table: Tabled) -> bytes:
    wide, high = (side * _FINER for side in _CHART_PX)
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    font = QFont("sans-serif")
    font.setPixelSize(11 * _FINER)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_chart(painter, QRectF(0, 0, wide, high), table, paper_ink(font))
    painter.end()
    kept = QBuffer()
    kept.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(kept, QByteArray(b"jpeg"))
    writer.setQuality(92)
    assert writer.write(image), writer.errorString()
    return bytes(kept.data().data())


def _cited(fact: Known) -> str:
    """Where a fact is from, in full, and whether it was checked there."""
    if not fact.source:
        return ""
    key, comma, place = fact.source.partition(",")
    cite = f"{sources.cite(key)}{comma}{place}"
    return f"{cite} ({sources.MARKS_SAID[fact.mark]})" if fact.mark == "MEMORY" else cite
