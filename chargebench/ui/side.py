"""Beside the form: the step's picture, its figures with doubt, limit and source, its sentences."""

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from chargebench import sources
from chargebench.desk.views import Look
from chargebench.steps import Case, Figure, Table, Worked, safety_list
from chargebench.steps.held import series
from chargebench.ui import theme
from chargebench.ui.cautions import Cautions
from chargebench.ui.decay_plot import DecayPlot
from chargebench.ui.decay_view import decay_view
from chargebench.ui.evidence_table import EvidenceTable
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.flagbar import source_words
from chargebench.ui.hold_plot import HoldPlot
from chargebench.ui.hold_view import hold_view
from chargebench.ui.language import tr
from chargebench.ui.letting_go import let_go
from chargebench.ui.mass_picture import MassPicture
from chargebench.ui.mass_view import mass_view
from chargebench.ui.side_table import SideTable
from chargebench.ui.wording import figure_of, value_of
from chargebench.units import System
from chargebench.words import joined, say

LONG = 40  # characters; a value longer than this is a sentence and is not set bold


class FigureLine(QWidget):
    """One figure on two or three lines."""

    def __init__(self) -> None:
        super().__init__()
        self._figure: Figure | None = None
        self.label = wrapped(weight="faint")
        self.value = wrapped(weight="figure")
        self.against = wrapped(weight="faint")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, theme.em() // 3)
        column.setSpacing(0)
        for each in (self.label, self.value, self.against):
            each.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            column.addWidget(each)

    def show_figure(self, figure: Figure, system: System) -> None:
        """Write a figure, its limit and its source."""
        if self._figure == figure:
            return
        self._figure = figure
        self.label.setText(tr(figure.label))
        self.value.setText(tr(figure_of(figure, system)))
        said_at_length = len(self.value.text()) > LONG
        self.value.setProperty("weight", "" if said_at_length else "figure")
        self.value.style().polish(self.value)
        said = []
        if figure.limit is not None:
            said.append(
                say(
                    "against {value_of}", value_of=value_of(figure.limit, system, like=figure.value)
                )
            )
        if figure.source:
            said.append(sources.said(figure.source, figure.mark))
        self.against.setText(tr(joined(" · ", said)))
        self.against.setVisible(bool(said))
        self.setToolTip(tr(source_words(figure.source, figure.mark) if figure.source else ""))
        self.setAccessibleName(
            tr(
                say(
                    "{label}: {value}, {against}",
                    label=figure.label,
                    value=self.value.text(),
                    against=self.against.text(),
                )
            )
        )


class SidePanel(QScrollArea):
    """What the current step is worked out to."""

    def __init__(self, system: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._system = system
        self._picture: MassPicture | DecayPlot | None = None
        self._picture_of = ""
        self._from_top = True
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(tr("Worked out"))
        page = QWidget()
        page.setObjectName("page")
        self._column = QVBoxLayout(page)
        self._column.setContentsMargins(theme.em() // 2, 0, theme.em() // 2, theme.em() // 2)
        self._column.setSpacing(theme.em() // 6)
        self._empty = wrapped("What is typed is worked out here.", "faint")
        self._sentences: list[QLabel] = []
        self._figures: list[FigureLine] = []
        self._tables: dict[str, SideTable | EvidenceTable] = {}
        self._judged = wrapped(weight="faint")
        self.cautions = Cautions()
        self._column.addWidget(self.cautions)
        self._column.addWidget(self._empty)
        self._below = QVBoxLayout()
        self._column.addLayout(self._below)
        self._column.addWidget(self._judged)
        self._column.addStretch()
        self.setWidget(page)

    def show_step(self, step: str) -> None:
        """Take the picture of a step, where it has one."""
        if step == self._picture_of:
            return
        self._picture_of = step
        self._from_top = True
        if self._picture is not None:
            self._column.removeWidget(self._picture)
            let_go(self._picture)
            self._picture = None
        if step == "weigh_in":
            self._picture = MassPicture()
        elif step == "evacuation":
            self._picture = DecayPlot()
        elif step == "pressure_test":
            self._picture = HoldPlot()
        if self._picture is not None:
            self._column.insertWidget(1, self._picture)
            self._picture.show()  # at once, not when the event loop comes round

    def show_look(self, look: Look, case: Case) -> None:
        """Show picture, figures and sentences."""
        worked = look.worked
        typed = replace(case, answers={**case.answers, self._picture_of: look.answers})
        ticked = look.answers.ticked("ticks")
        minded = safety_list.cautions(typed, self._picture_of)
        self.cautions.show_lines([line for line in minded if line.key not in ticked])
        self._empty.setVisible(not worked.figures and not worked.sentences)
        if isinstance(self._picture, MassPicture):
            self._picture.show_mass(mass_view(worked, self._system, case, look.answers))
        elif isinstance(self._picture, HoldPlot):
            held = series(typed)
            self._picture.show_decay(hold_view(worked, held, self._system))
        elif isinstance(self._picture, DecayPlot):
            coldest = look.answers.quantity("coldest")
            self._picture.show_decay(decay_view(worked, self._system, coldest))
        # The plot of a test says the first two itself.
        drawn = 2 if isinstance(self._picture, DecayPlot) and self._picture.view is not None else 0
        self._show_sentences(worked.sentences[drawn:])
        self._show_figures(worked)
        self._show_tables(worked.tables)
        self._judged.setText(tr(say("Judged by {called}.", called=case.rule_set.called)))
        self._judged.setToolTip(tr(case.rule_set.title))
        self._judged.setVisible(bool(worked.figures))
        if self._from_top:  # last: a table that goes hands its focus on, and the area follows it
            self.verticalScrollBar().setValue(0)
            self._from_top = False

    def _show_sentences(self, sentences: tuple[str, ...]) -> None:
        while len(self._sentences) < len(sentences):
            label = wrapped()
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            place = (2 if self._picture is not None else 1) + len(self._sentences)
            self._column.insertWidget(place, label)
            self._sentences.append(label)
        for place, label in enumerate(self._sentences):
            says = sentences[place] if place < len(sentences) else ""
            if label.text() != says:
                label.setText(tr(says))
            label.setVisible(bool(says))

    def _show_figures(self, worked: Worked) -> None:
        tables = tuple(f"{table.key}-" for table in worked.tables)
        figures = [each for each in worked.figures if not each.key.startswith(tables)]
        while len(self._figures) < len(figures):
            line = FigureLine()
            self._column.insertWidget(self._column.indexOf(self._below), line)
            self._figures.append(line)
        for place, line in enumerate(self._figures):
            shown = place < len(figures)
            if shown:
                line.show_figure(figures[place], self._system)
            line.setVisible(shown)

    def _show_tables(self, tables: tuple[Table, ...]) -> None:
        for table in tables:
            shown = self._tables.get(table.key)
            if shown is None:
                shown = EvidenceTable() if table.key == "evidence" else SideTable()
                self._tables[table.key] = shown
                self._below.addWidget(shown)
            if isinstance(shown, EvidenceTable):
                shown.show_table(table)
            else:
                shown.show_table(table, self._system)
        keys = {table.key for table in tables}
        for key, shown in self._tables.items():
            shown.setVisible(key in keys)

    def table(self, key: str) -> SideTable | EvidenceTable:
        """A table that is shown."""
        return self._tables[key]
