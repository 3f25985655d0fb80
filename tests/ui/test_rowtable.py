"""Tables of rows: columns as wide as their words, as far as there is room."""

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.ui import theme
from chargebench.ui.rowtable import Column, RowModel, RowView

SAID = "a sentence of some length that can be cut where there is no room for all of it"
COLUMNS: tuple[Column[str], ...] = (
    Column("Id", lambda row: row),
    Column("A head longer than its words", lambda _: "1 g", right=True),
    Column("Says", lambda _: SAID, least=6),
    Column("By", lambda _: "N. Okafor", gives_way=1),
)


@pytest.fixture
def view(qtbot: QtBot, themed: QApplication) -> RowView:  # noqa: ARG001
    model: RowModel[str] = RowModel(COLUMNS)
    made = RowView(model, "Rows")
    qtbot.addWidget(made)
    made.show()
    model.show_rows(["C-014 with a longer name"])
    return made


def needs(view: RowView, words: str) -> int:
    return view.fontMetrics().horizontalAdvance(words)


def test_that_words_and_heads_have_their_room_and_nothing_is_out_of_sight(view: RowView) -> None:
    view.resize(view.sizeHint().width(), 400)
    assert view.columnWidth(0) > needs(view, "C-014 with a longer name")
    assert view.columnWidth(1) > needs(view, COLUMNS[1].head)
    assert view.columnWidth(2) > needs(view, SAID)
    assert not view.isColumnHidden(3)
    assert view.horizontalHeader().length() == view.viewport().width()


def test_that_where_there_is_no_room_a_sentence_is_cut_before_a_column_goes(view: RowView) -> None:
    view.resize(view.sizeHint().width() - 8 * theme.em(), 400)
    assert needs(view, SAID) > view.columnWidth(2) >= 6 * theme.em()
    assert not view.isColumnHidden(3)
    view.resize(view.sizeHint().width() - needs(view, SAID) + 3 * theme.em(), 400)
    assert view.isColumnHidden(3)
    assert view.columnWidth(0) > needs(view, "C-014 with a longer name")
    assert view.horizontalHeader().length() <= view.viewport().width()
