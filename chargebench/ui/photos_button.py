"""The way to a job's photos: a button with its key, on which a photo can be dropped."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QPushButton, QWidget

from chargebench.desk import Desk
from chargebench.ui.language import tr

if TYPE_CHECKING:
    from chargebench.ui.photos import PhotosDialog

KEY = "Ctrl+Shift+P"


class PhotosButton(QPushButton):
    """Opens the photos of the job that stands open; a new one goes with its step."""

    changed = Signal()

    def __init__(self, desk: Desk, where: Callable[[], tuple[str, str]], page: QWidget) -> None:
        super().__init__(tr("Photos…"), page)
        self._desk, self._where, self._page = desk, where, page
        self.setToolTip(tr("Ctrl+Shift+P; or drag a photo here"))
        self.setAcceptDrops(True)
        self.clicked.connect(lambda _: self.show_photos())
        shortcut = QShortcut(QKeySequence(KEY), page)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.show_photos)

    def show_photos(self) -> "PhotosDialog":
        """Show the photos."""
        from chargebench.ui.photos import PhotosDialog  # not needed until it is wanted

        job, step = self._where()
        dialog = PhotosDialog(self._desk, job, step, self._page)
        dialog.changed.connect(self.changed)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()
        return dialog

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """Take pictures and files."""
        if event.mimeData().hasUrls() or event.mimeData().hasImage():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """What is dropped waits in the dialog for what it shows."""
        self.show_photos().take_from(event.mimeData())
