"""Reference: saturation table, chart, and what is known of any refrigerant; it can be printed."""

from operator import itemgetter

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QButtonGroup,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from chargebench import sources
from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.fluids import names
from chargebench.steps import answer
from chargebench.steps.forms.reference import BY_PRESSURE, BY_TEMPERATURE, FORMS, usual
from chargebench.steps.known import Known, known
from chargebench.steps.reference import Tabled, tabled
from chargebench.ui import theme
from chargebench.ui.area_button import area_button
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.flagbar import source_words
from chargebench.ui.formview import FormView
from chargebench.ui.language import tr
from chargebench.ui.reference_chart import ReferenceChart
from chargebench.ui.rowtable import Column, RowModel, RowView
from chargebench.ui.turning import row_of
from chargebench.words import joined, say

TABLE, CHART, KNOWN, RANGE = range(4)
_VIEWS = ("&Table", "&Chart", "&What is known", "Ran&ge")
_BYS = {BY_TEMPERATURE: "By te&mperature", BY_PRESSURE: "By p&ressure"}
_LETTERS = "tcwgmrp"
_PAUSE_MS = 80
BESIDE_EMS, BOTH_EMS, FORM_EMS = 46, 80, 22
_CARRIED = ("refrigerant", "temperature", "pressure", "density", "site", "air_pressure")


class Reference(QDialog):
    """A window of its own, so that it can stand beside the work."""

    def __init__(self, desk: Desk, refrigerant: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self.table: Tabled | None = None
        self.facts: tuple[Known, ...] = ()
        self.setWindowTitle(tr("Reference"))
        self.rows: RowModel[tuple[str, ...]] = RowModel(_columns(("",) * 5))
        self.view = RowView(self.rows, "Saturation table", to_press=False)
        self.chart = ReferenceChart()
        self.says = wrapped()
        self.refusal = wrapped(weight="refusal")
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_PAUSE_MS)
        self._pause.timeout.connect(self.work_out)
        self._forms = QStackedWidget()
        self.forms: dict[str, FormView] = {}
        for by in FORMS:
            form = FormView(FORMS[by], desk, taken=_LETTERS)
            form.put(usual(desk.units, refrigerant or names()[0], by))
            form.edited.connect(lambda _: self._pause.start())
            self.forms[by] = form
            self._forms.addWidget(form)
        self._build()
        self._connect()
        room = parent.window().size()
        self.resize(round(room.width() * 0.94), round(room.height() * 0.92))
        self.work_out()

    def _build(self) -> None:
        self._by, self._views = QButtonGroup(self), QButtonGroup(self)
        by = [_area(words, self._by, place) for place, words in enumerate(_BYS.values())]
        self._view_buttons = [_area(words, self._views, n) for n, words in enumerate(_VIEWS)]
        self.print_button = QPushButton(tr("&Print…"))
        self.print_button.setToolTip(tr("Ctrl+P: with preview, or as PDF"))
        self.print_button.setAutoDefault(False)
        self._asked = QWidget()
        asked = QVBoxLayout(self._asked)
        asked.setContentsMargins(0, 0, 0, 0)
        asked.addWidget(row_of(*by))
        asked.addWidget(self._forms, 1)
        self._facts = QScrollArea()
        self._facts.setWidgetResizable(True)
        self._facts.setFrameShape(QFrame.Shape.NoFrame)
        self._facts.setAccessibleName(tr("What is known"))
        self._shown = QHBoxLayout()
        for each in (self._asked, self.view, self.chart, self._facts):
            self._shown.addWidget(each, 0 if each is self._asked else 1)
        column = QVBoxLayout(self)
        column.addWidget(row_of(*self._view_buttons, self.print_button, fill=None))
        column.addWidget(self.refusal)
        column.addWidget(self.says)
        column.addLayout(self._shown, 1)
        self._by.button(0).setChecked(True)
        self._views.button(TABLE).setChecked(True)

    def _connect(self) -> None:
        self._by.idClicked.connect(lambda _: self._turn())
        self._views.idClicked.connect(lambda _: self._arrange())
        self.print_button.clicked.connect(lambda _: self.show_print())
        QShortcut(QKeySequence("Ctrl+P"), self).activated.connect(self.show_print)
        QShortcut(QKeySequence("F7"), self).activated.connect(self.reject)

    @property
    def by(self) -> str:
        """What the rows go by."""
        return list(_BYS)[self._by.checkedId()]

    def show_view(self, view: int) -> None:
        """Show the table, the chart, what is known, or the range."""
        self._views.button(view).click()

    def show_refrigerant(self, name: str) -> None:
        """Look another refrigerant up."""
        self.forms[self.by].type_over({"refrigerant": name})

    def _turn(self) -> None:
        """Rows by the other quantity; refrigerant and units stay."""
        shown = self.forms[self.by]
        before = self._forms.currentWidget()
        assert isinstance(before, FormView)
        if shown is not before:
            kept = {key: text for key, text in before.typed().items() if key in _CARRIED}
            shown.put({**shown.typed(), **kept})
            self._forms.setCurrentWidget(shown)
        self.work_out()

    def work_out(self) -> None:
        """Work the table out as asked, and show it; what is asked badly leaves the old one."""
        form = self.forms[self.by]
        answers = answer(form.form, form.typed())
        form.tell(answers)
        if answers.refusals or answers.missing:
            self._refuse("Not worked out anew: look at the marked fields.")
            return
        try:
            table = tabled(answers, self.by, self._desk.answers("site", answers.text("site")))
        except ChargebenchError as refusal:
            self._refuse(str(refusal))
            return
        self._refuse("")
        if self.table is None or self.table.refrigerant != table.refrigerant:
            self.facts = known(table.refrigerant, self._desk.units)
            self._show_facts()
        self.table = table
        self.rows.columns = _columns(table.heads)
        self.rows.show_rows(table.rows)
        self.chart.show_table(table)
        estimated = [fact.value for fact in self.facts if fact.what == "Estimated pair data"]
        said = (
            *table.says,
            *(say("Estimated pair data: {each}.", each=each) for each in estimated),
        )
        self.says.setText(tr(joined(" ", said)))
        self.says.setVisible(bool(said))
        self.setWindowTitle(tr(say("Reference: {refrigerant}", refrigerant=table.refrigerant)))
        self._arrange()

    def _refuse(self, why: str) -> None:
        self.refusal.setText(tr(why))
        self.refusal.setVisible(bool(why))

    def _show_facts(self) -> None:
        page = QWidget()
        page.setObjectName("page")
        grid = QGridLayout(page)
        grid.setHorizontalSpacing(theme.em() // 2)
        for row, fact in enumerate(self.facts):
            value = wrapped(fact.value)
            source = wrapped(sources.said(fact.source, fact.mark), "faint")
            if fact.source:
                source.setToolTip(tr(source_words(fact.source, fact.mark)))
            value.setAccessibleName(tr(f"{fact.what}: {fact.value}"))
            for column, each in enumerate((wrapped(fact.what, "faint"), value, source)):
                grid.addWidget(each, row, column)
        for column, stretch in enumerate((3, 5, 4)):
            grid.setColumnStretch(column, stretch)
        grid.setRowStretch(len(self.facts), 1)
        self._facts.setWidget(page)

    def show_print(self) -> None:
        """Show what would be printed."""
        if self.table is None:
            return
        from chargebench.ui.printing import PrintDialog
        from chargebench.ui.reference_print import reference_paper

        papers = [reference_paper(self._desk, self.table, self.facts)]
        PrintDialog(papers, self._desk.paper, self).open()

    def _arrange(self) -> None:
        width = self.width() / theme.em()
        beside, both = width >= BESIDE_EMS, width >= BOTH_EMS
        self._view_buttons[RANGE].setVisible(not beside)
        if beside and self._views.checkedId() == RANGE:
            self._views.button(TABLE).setChecked(True)
        view = self._views.checkedId()
        self._asked.setVisible(beside or view == RANGE)
        self._asked.setFixedWidth(
            theme.em() * FORM_EMS if beside else self.width() - theme.em() * 2
        )
        self.view.setVisible(view == TABLE)
        self.chart.setVisible(view == CHART or (both and view == TABLE))
        self._facts.setVisible(view == KNOWN)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Form, table and chart beside each other as far as there is room."""
        super().resizeEvent(event)
        self._arrange()


def open_reference(desk: Desk, job: str, refrigerant: str, parent: QWidget) -> Reference:
    """Open the reference at a refrigerant, else at that of a job, else at the first."""
    found = desk.job(job).case.refrigerant if job and not refrigerant else None
    made = Reference(desk, refrigerant or (found.name if found else ""), parent)
    made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    made.finished.connect(parent.window().activateWindow)  # nor gives them back when it goes
    made.show()
    made.activateWindow()  # not every desktop gives a new window the keys
    made.forms[made.by].focus_first()
    return made


def _columns(heads: tuple[str, ...]) -> tuple[Column[tuple[str, ...]], ...]:
    return tuple(
        Column(head.replace(" [", "\n["), itemgetter(place), right=True, least=6)
        for place, head in enumerate(heads)
    )


def _area(words: str, group: QButtonGroup, place: int) -> QPushButton:
    button = area_button(words)
    group.addButton(button, place)
    return button
