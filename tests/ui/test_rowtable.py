"""Tables of rows: columns as wide as their words, as far as there is room."""

import pytest
from PySide6.QtCore import Qt
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


MANY: tuple[Column[str], ...] = tuple(
    Column(f"Head {place}", lambda row, p=place: f"{row} says {p}")  # type: ignore[misc]
    for place in range(9)
)


@pytest.fixture
def many(qtbot: QtBot, themed: QApplication) -> RowView:  # noqa: ARG001
    model: RowModel[str] = RowModel(MANY)
    made = RowView(model, "Rows")
    qtbot.addWidget(made)
    made.show()
    model.show_rows(["C-014", "C-015"])
    return made


def test_that_where_nothing_can_give_way_the_rest_stands_in_one_cell(many: RowView) -> None:
    many.selectRow(1)
    many.resize(22 * theme.em(), 400)
    model = many.model()
    columns = model.columnCount()
    assert columns < len(MANY)
    said = [str(model.index(0, place).data()) for place in range(columns)]
    assert all(f"C-014 says {place}" in " ".join(said) for place in range(len(MANY)))
    assert "Head 8" in said[-1]
    assert many.horizontalScrollBar().maximum() == 0
    assert many.currentIndex().row() == 1
    height = many.fontMetrics().boundingRect(
        0, 0, many.columnWidth(columns - 1) - theme.em(), 9_999, Qt.TextFlag.TextWordWrap, said[-1]
    )
    assert many.rowHeight(0) >= height.height()


def test_that_a_folded_table_unfolds_where_there_is_room_again(many: RowView) -> None:
    many.resize(22 * theme.em(), 400)
    many.resize(many.sizeHint().width() + 4 * theme.em(), 400)
    assert many.model().columnCount() == len(MANY)
    assert many.rowHeight(0) == theme.target()


def test_that_other_columns_are_measured_anew(many: RowView) -> None:
    model = many.model()
    assert isinstance(model, RowModel)
    model.columns = MANY[:2]
    many.resize(many.width() + 10, 400)  # before anything is read again
    assert many.sizeHint().width() < 40 * theme.em()
