"""Photos of a job: attached by file, drag or paste, each with what it shows; small and large."""

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMimeData, QSize, Qt, Signal
from PySide6.QtGui import (
    QDragEnterEvent,
    QDropEvent,
    QIcon,
    QImage,
    QKeySequence,
    QPixmap,
    QResizeEvent,
    QShortcut,
)
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListView,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk, PhotoLine
from chargebench.errors import ChargebenchError
from chargebench.steps import STEPS
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.wording import at
from chargebench.words import say

SMALL_EMS = 10
_LINE = Qt.ItemDataRole.UserRole
_FILES = "*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif"


class PhotosDialog(QDialog):
    """The photos of a job; new ones go with the step that stood open."""

    changed = Signal()

    def __init__(self, desk: Desk, job: str, step: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk, self._job, self._step = desk, job, step
        self._waiting: Path | bytes | None = None  # a photo that wants its caption
        self.setWindowTitle(tr("Photos"))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setAcceptDrops(True)
        self.resize(theme.em() * 44, theme.em() * 30)
        self.list = QListWidget()
        self.list.setViewMode(QListView.ViewMode.IconMode)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setMovement(QListView.Movement.Static)
        self.list.setWordWrap(True)
        self.list.setSpacing(theme.em() // 2)
        self.list.setAccessibleName(tr("Photos of this job"))
        self.caption = QLineEdit()
        self.caption.setPlaceholderText(tr("e.g. Nameplate"))
        self.caption.setAccessibleName(tr("What the photo shows"))
        self.add = QPushButton(tr("&Add a file…"))
        self.paste = QPushButton(tr("&Paste"))
        self.paste.setToolTip(tr("Ctrl+V; a picture or a copied file"))
        self.large = QPushButton(tr("Show &large"))
        self.large.setToolTip(tr("Return"))
        self.back = QPushButton(tr("Ta&ke back…"))
        self.reason = QLineEdit()
        self.reason.setPlaceholderText(tr("Why, then Return"))
        self.reason.setAccessibleName(tr("Why the photo is taken back"))
        self.says = wrapped()
        self._build()
        self._connect()
        self._fill()

    def _build(self) -> None:
        asked = QLabel(tr("&What it shows"))
        asked.setBuddy(self.caption)
        self.add.setProperty("weight", "main")
        new = QHBoxLayout()
        for part, stretch in ((asked, 0), (self.caption, 1), (self.paste, 0), (self.add, 0)):
            new.addWidget(part, stretch)
        old = QHBoxLayout()
        for part, stretch in ((self.large, 0), (self.back, 0), (self.reason, 1)):
            old.addWidget(part, stretch)
        old.addStretch(0)
        self.reason.hide()
        column = QVBoxLayout(self)
        column.addWidget(self.says)
        column.addWidget(self.list, 1)
        column.addLayout(old)
        column.addLayout(new)
        for button in (self.add, self.paste, self.large, self.back):
            button.setAutoDefault(False)  # Return belongs to the field and the list

    def _connect(self) -> None:
        self.add.clicked.connect(lambda _: self._choose())
        self.paste.clicked.connect(lambda _: self._paste())
        self.large.clicked.connect(lambda _: self.show_large())
        self.back.clicked.connect(lambda _: self._ask_reason())
        self.reason.returnPressed.connect(self._take_back)
        self.caption.returnPressed.connect(self._go_on)
        self.list.itemActivated.connect(lambda _: self.show_large())
        self.list.currentItemChanged.connect(lambda *_: self._follow())
        QShortcut(QKeySequence.StandardKey.Paste, self.list).activated.connect(self._paste)

    # -- showing --------------------------------------------------------------------------------

    def _fill(self) -> None:
        side = theme.em() * SMALL_EMS
        self.list.clear()
        self.list.setIconSize(QSize(side, side))
        self.list.setGridSize(QSize(side + theme.em(), side + theme.em() * 4))
        for line in self._desk.photos(self._job):
            item = QListWidgetItem(line.caption, self.list)
            item.setData(_LINE, line)
            item.setToolTip(self._about(line))
            pixmap = self._pixmap(line)
            if pixmap is not None:
                item.setIcon(QIcon(pixmap.scaled(side, side, Qt.AspectRatioMode.KeepAspectRatio)))
        self.list.setCurrentRow(self.list.count() - 1)
        if not self.list.count():
            self.says.setText(
                tr(
                    "No photo yet. Say what it shows, then add a file, paste a picture, or drag "
                    "one here: nameplate, leak, label."
                )
            )
        self._follow()

    def _about(self, line: PhotoLine) -> str:
        step = STEPS[line.step].title if line.step in STEPS else line.step
        return tr(
            say(
                "Entry {number}, {step}, {when}, {who}",
                number=line.number,
                step=step,
                when=at(line.at),
                who=self._desk.label("person", line.by),
            )
        )

    def _pixmap(self, line: PhotoLine) -> QPixmap | None:
        try:
            content = self._desk.photo(line)
        except ChargebenchError:
            return None
        pixmap = QPixmap()
        return pixmap if pixmap.loadFromData(content) else None

    def _current(self) -> PhotoLine | None:
        item = self.list.currentItem()
        if item is None:
            return None
        line: PhotoLine = item.data(_LINE)
        return line

    def _follow(self) -> None:
        """Acts on a photo are there where one is chosen; the words say which."""
        line = self._current()
        for button in (self.large, self.back):
            button.setEnabled(line is not None)
        self.reason.hide()
        if line is not None:
            self.says.setText(f"{line.caption}. {self._about(line)}")

    def show_large(self) -> None:
        """Show the chosen photo as large as the window."""
        line = self._current()
        if line is None:
            return
        pixmap = self._pixmap(line)
        if pixmap is None:
            self.says.setText(tr("This photo is kept at the bench that attached it."))
            return
        _Large(pixmap, line.caption, self).open()

    # -- attaching ------------------------------------------------------------------------------

    def _choose(self) -> None:
        chosen, _ = QFileDialog.getOpenFileName(
            self, tr("Choose a photo"), "", tr(say("Photos ({files})", files=_FILES))
        )
        if chosen:
            self.take(Path(chosen))

    def _paste(self) -> None:
        if not self.take_from(QApplication.clipboard().mimeData()):
            self.says.setText(tr("There is no picture to paste; copy one first."))

    def take_from(self, given: QMimeData | None) -> bool:
        """Attach what was dropped or pasted; whether it was a photo or a file."""
        if given is None:  # an empty clipboard
            return False
        if given.hasUrls() and (file := given.urls()[0].toLocalFile()):
            self.take(Path(file))
            return True
        image = given.imageData() if given.hasImage() else None
        if not isinstance(image, QImage) or image.isNull():
            return False
        content = QByteArray()
        buffer = QBuffer(content)
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        image.save(buffer, "PNG")  # type: ignore[call-overload]  # its stubs want bytes for str
        self.take(bytes(content.data()))
        return True

    def take(self, photo: Path | bytes) -> None:
        """Attach a photo with the caption typed; without one it waits for it."""
        self._waiting = photo
        self._go_on()

    def _go_on(self) -> None:
        photo, caption = self._waiting, self.caption.text()
        if photo is None:
            self.says.setText(tr("Now add a file, paste a picture, or drag one here."))
            self.add.setFocus()
            return
        try:
            if isinstance(photo, Path):
                entry = self._desk.attach_file(self._job, self._step, photo, caption)
            else:
                entry = self._desk.attach(self._job, self._step, photo, caption)
        except ChargebenchError as refusal:
            self.says.setText(tr(str(refusal)))
            self.caption.setFocus()
            if caption.strip():  # what was wrong is the photo
                self._waiting = None
            return
        self._waiting = None
        self.caption.clear()
        self._fill()
        self.says.setText(tr(say("Attached, entry {number}.", number=entry.number)))
        self.list.setFocus()
        self.changed.emit()

    # -- taking back ----------------------------------------------------------------------------

    def _ask_reason(self) -> None:
        self.reason.clear()
        self.reason.show()
        self.reason.setFocus()

    def _take_back(self) -> None:
        line = self._current()
        if line is None:
            return
        try:
            self._desk.reverse(line.entry, self.reason.text())
        except ChargebenchError as refusal:
            self.says.setText(tr(str(refusal)))
            return
        self._fill()
        self.says.setText(tr("Taken back; the entry stays on record."))
        self.list.setFocus()
        self.changed.emit()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """Take pictures and files."""
        if event.mimeData().hasUrls() or event.mimeData().hasImage():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """Attach what was dropped."""
        self.take_from(event.mimeData())


class _Large(QDialog):
    """One photo, as large as it goes."""

    def __init__(self, pixmap: QPixmap, caption: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._pixmap = pixmap
        self.setWindowTitle(caption)
        self.picture = QLabel()
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.picture.setAccessibleName(caption)
        self.picture.setMinimumSize(1, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.picture)
        room = parent.screen().availableSize() * 0.9
        self.resize(pixmap.size().scaled(room, Qt.AspectRatioMode.KeepAspectRatio))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Fit the photo to the window."""
        super().resizeEvent(event)
        self.picture.setPixmap(
            self._pixmap.scaled(
                self.picture.size(),
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
        )
