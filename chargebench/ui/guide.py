"""The user guide, opened at the page that fits what is on the screen."""

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QImage, QResizeEvent, QTextDocument
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from chargebench.resource import resource
from chargebench.ui import keys, theme
from chargebench.ui.language import tr

PAGES = {
    "start": "Start",
    "job": "A job",
    "safety": "Before the circuit is opened",
    "leak-search": "Leak search and pressure test",
    "recovery": "Recovery",
    "vacuum": "Vacuum and decay test",
    "weigh-in": "Weigh-in",
    "stock": "Stock",
    "records": "Records",
    "benches": "Benches, people, backups",
    "keys": "Keys",
}
OF_STEP = {
    "safety": "safety",
    "leak_search": "leak-search",
    "pressure_test": "leak-search",
    "recovery": "recovery",
    "evacuation": "vacuum",
    "weigh_in": "weigh-in",
}
_PAGE = Qt.ItemDataRole.UserRole


def page_for(area: str, step: str = "") -> str:
    """The page that fits an area, and on the Bench the step of the job that stands open."""
    if area != "bench":
        return area if area in PAGES else "start"
    return OF_STEP.get(step, "job") if step else "start"


class _Text(QTextBrowser):
    """A page of the guide; its pictures are never wider than there is room."""

    def loadResource(self, kind: int, name: QUrl | str) -> object:  # noqa: N802 - Qt's name
        """Make a picture that is too wide as wide as the page."""
        found = super().loadResource(kind, name)
        if kind == QTextDocument.ResourceType.ImageResource.value:
            image = QImage(self.searchPaths()[0] + "/" + QUrl(name).path())
            room = max(self.viewport().width() - 2 * theme.em(), theme.em() * 8)
            if image.width() > room:
                return image.scaledToWidth(room, Qt.TransformationMode.SmoothTransformation)
        return found

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Fit the pictures again."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.reload()


class GuideDialog(QDialog):
    """Pages on the left, the page on the right; the window stays usable behind it."""

    def __init__(self, page: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Guide"))
        self.resize(theme.em() * 52, theme.em() * 38)
        self.pages = QListWidget()
        self.pages.setAccessibleName(tr("Pages of the guide"))
        for key, title in PAGES.items():
            item = QListWidgetItem(tr(title), self.pages)
            item.setData(_PAGE, key)
        self.pages.setFixedWidth(self.pages.sizeHintForColumn(0) + theme.em() * 2)
        self.text = _Text()
        self.text.setAccessibleName(tr("Text of the guide"))
        self.text.setSearchPaths([str(resource("guide"))])
        self.text.setOpenExternalLinks(False)
        self.back = QPushButton(tr("Close"))
        self.back.setToolTip(tr("Esc"))
        self.back.clicked.connect(lambda _: self.reject())
        row = QHBoxLayout()
        row.addWidget(self.pages)
        row.addWidget(self.text, 1)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self.back)
        column = QVBoxLayout(self)
        column.addLayout(row, 1)
        column.addLayout(foot)
        self.pages.currentRowChanged.connect(lambda _: self._show())
        self.choose(page)

    def choose(self, page: str) -> None:
        """Turn to a page."""
        self.pages.setCurrentRow(list(PAGES).index(page))
        self.text.setFocus()  # arrow keys read on; Tab goes to the pages

    def _show(self) -> None:
        key = self.pages.currentItem().data(_PAGE)
        if key == "keys":
            lines = "\n".join(f"- {part}" for part in tr(keys.ALL).split(" · "))
            self.text.setMarkdown(f"# {tr(PAGES[key])}\n\n{lines}")
            return
        self.text.setSource(QUrl(f"{key}.md"), self.text.document().ResourceType.MarkdownResource)
