"""The shop's registers in a dialog: sites, equipment, people, instruments, cylinders, the shop."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk
from chargebench.steps import REGISTERS
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fields import LineEdit
from chargebench.ui.language import tr
from chargebench.ui.notifier import Notifier
from chargebench.ui.registerdialog import make_row
from chargebench.words import joined, say

_ORDER = ("equipment", "site", "person", "instrument", "cylinder", "shop")
_EMPTY = "Nothing in this register yet. {purpose} Press New to make the first."


class RegistersDialog(QDialog):
    """Choose a register, find a row, change it or make one."""

    def __init__(self, desk: Desk, notifier: Notifier, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self._notifier = notifier
        self.setWindowTitle(tr("Registers"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.register = QComboBox()
        self.register.addItems([tr(REGISTERS[key].title) for key in _ORDER])
        self.register.setAccessibleName(tr("Register"))
        self.search = LineEdit()
        self.search.setAccessibleName(tr("Find a row"))
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Rows"))
        self.empty = wrapped(weight="faint")
        self.new = QPushButton(tr("&New"))
        self.change = QPushButton(tr("C&hange"))
        self.close_button = QPushButton(tr("&Close"))
        for button in (self.new, self.change, self.close_button):
            button.setAutoDefault(False)
        top = QHBoxLayout()
        for text, each in (("&Register", self.register), ("&Find", self.search)):
            label = QLabel(tr(text))
            label.setBuddy(each)
            top.addWidget(label)
            top.addWidget(each, 1)
        foot = QHBoxLayout()
        foot.addWidget(self.new)
        foot.addWidget(self.change)
        foot.addStretch()
        foot.addWidget(self.close_button)
        column = QVBoxLayout(self)
        column.addLayout(top)
        column.addWidget(self.empty)
        column.addWidget(self.list, 1)
        column.addLayout(foot)
        self.register.currentIndexChanged.connect(lambda _: self.read())
        self.search.edited.connect(self.read)
        self.search.returnPressed.connect(self.list.setFocus)
        self.list.itemActivated.connect(lambda item: self._edit(self._id(item)))
        self.new.clicked.connect(lambda _: self._edit(None))
        self.change.clicked.connect(lambda _: self._edit_current())
        self.close_button.clicked.connect(lambda _: self.accept())
        room = parent.window().size()
        self.resize(min(theme.em() * 40, room.width()), min(theme.em() * 32, room.height() - 40))
        self.read()

    def read(self) -> None:
        """List the rows of the register chosen."""
        register = _ORDER[self.register.currentIndex()]
        wanted = self.search.text().casefold().split()
        self.list.clear()
        for row_id, row in self._desk.rows(register).items():
            label = self._desk.label(register, row_id)
            text = (
                label
                if label.startswith(row_id)
                else say("{row_id}  {label}", row_id=row_id, label=label)
            )
            details = joined(" ", row.values()).casefold()
            if all(
                word in say("{text} {details}", text=text, details=details).casefold()
                for word in wanted
            ):
                item = QListWidgetItem(text)
                item.setData(Qt.ItemDataRole.UserRole, row_id)
                item.setSizeHint(item.sizeHint().expandedTo(_row_size()))
                self.list.addItem(item)
        self.empty.setText(tr(say(_EMPTY, purpose=REGISTERS[register].purpose)))
        self.empty.setVisible(not self.list.count())
        self.new.setEnabled(register != "shop")
        if self.list.count():
            self.list.setCurrentRow(0)

    def _id(self, item: QListWidgetItem) -> str:
        return str(item.data(Qt.ItemDataRole.UserRole))

    def _edit_current(self) -> None:
        item = self.list.currentItem()
        if item is not None:
            self._edit(self._id(item))

    def _edit(self, row_id: str | None) -> None:
        register = _ORDER[self.register.currentIndex()]
        make_row(self._desk, register, self, self._saved, row_id=row_id)

    def _saved(self, _: str) -> None:
        self.read()
        self._notifier.changed.emit()


def _row_size() -> QSize:
    return QSize(theme.em() * 10, theme.target())
