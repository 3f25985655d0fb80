"""A form on a page of its own."""

from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.desk.views import TickLine
from chargebench.steps import Asks, Form, answer
from chargebench.ui.fieldrow import FieldRow
from chargebench.ui.fields import LineEdit
from chargebench.ui.formview import FormView

TICKS = [TickLine("fan", "Fan running at floor level", "COMMON"), TickLine("fire", "Extinguisher")]


class Page:
    """A form that tells itself what its text is understood as, as its owners do."""

    def __init__(self, qtbot: QtBot, form: Form, desk: Desk) -> None:
        ticks = {each.key: TICKS for each in form.fields if each.asks is Asks.TICKS}
        self.bot = qtbot
        self.view = FormView(form, desk, ticks=ticks)
        self.view.edited.connect(lambda _: self.tell())
        self.tell()
        qtbot.addWidget(self.view)
        self.view.resize(900, 700)
        self.view.show()
        self.view.activateWindow()
        qtbot.waitUntil(self.view.isActiveWindow)

    def tell(self) -> None:
        self.view.tell(answer(self.view.form, self.view.typed()))

    def type(self, key: str, text: str) -> FieldRow:
        row = self.view.row(key)
        row.editor.setFocus()
        self.bot.keyClicks(row.editors()[0], text)
        return row

    def tail(self, key: str) -> str:
        editor = self.view.row(key).editor
        assert isinstance(editor, LineEdit)
        return editor.tail()
