"""Under the shop's form: what the rule set chosen is, and a button to look for a rule file."""

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QPushButton, QVBoxLayout, QWidget

from chargebench.desk.ruling import file_to_type, rules_said
from chargebench.steps import Typed
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.turning import row_of


class RulesSaid(QWidget):
    """Title, jurisdiction, edition and effective date of the rules as typed."""

    file_chosen = Signal(str)

    def __init__(self, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._said_of: tuple[str, str] | None = None
        self.says = wrapped()
        self.choose = QPushButton(tr("Look for a rule &file…"))
        self.choose.setAutoDefault(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.em() // 3, 0, 0)
        column.addWidget(row_of(self.choose))
        column.addWidget(self.says)
        self.choose.clicked.connect(lambda _: self._look_for())

    def show_typed(self, typed: Typed) -> str:
        """Say what is chosen; what a rule file that is there is refused for."""
        chosen = (str(typed.get("rule_set", "")), str(typed.get("rule_file", "")))
        if chosen != self._said_of:
            self._said_of = chosen
            self._refusal, said = rules_said(typed, self._folder)
            self.says.setText(tr(said))
        return self._refusal

    def _look_for(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self,
            tr("Rule file of the shop"),
            str(self._folder),
            tr("Rule files (*.toml);;All files (*)"),
        )
        if name:
            self.file_chosen.emit(file_to_type(Path(name), self._folder))
