"""Native charts of a workbook."""

from collections.abc import Sequence

from openpyxl.chart import BarChart, Reference, ScatterChart, Series
from openpyxl.chart.axis import ChartLines
from openpyxl.chart.data_source import AxDataSource, NumData, NumVal, StrData, StrRef, StrVal
from openpyxl.chart.marker import Marker
from openpyxl.chart.shapes import GraphicalProperties
from openpyxl.drawing.line import LineProperties
from openpyxl.utils import get_column_letter

from chargebench.reports.sheet_xml import StreamedSheet
from chargebench.reports.table import HEAD_ROW, Bars, Column, Curve

ACROSS = 2  # charts side by side
ROWS_EACH = 18
CHARTS_A_PAGE = 4
CHARACTERS_WIDE = 90  # of columns, as wide as a chart and a gap
# Told apart by lightness too, for paper without colour.
FILLS = ("30506E", "8FB0CC", "B5651D", "C9C9C9", "6E6E6E", "E3C49A")


def scatter(sheet: StreamedSheet, curve: Curve) -> ScatterChart:
    """A scatter chart of a curve's rows on a sheet."""
    chart = ScatterChart()
    chart.scatterStyle = "lineMarker"
    _dress(chart, curve.title, curve.x_title, curve.y_title)
    chart.x_axis.number_format = "0"
    chart.y_axis.number_format = "0"
    chart.legend = None
    x = Reference(sheet, min_col=curve.x, min_row=curve.first, max_row=curve.last)
    y = Reference(sheet, min_col=curve.y, min_row=curve.first, max_row=curve.last)
    series = Series(y, x, title=curve.y_title)
    series.marker = Marker("circle", size=6)
    series.graphicalProperties.line.solidFill = FILLS[0]
    series.marker.graphicalProperties.solidFill = FILLS[0]
    series.xVal.numRef.numCache = _beside(curve.x_values)
    series.yVal.numRef.numCache = _beside(curve.y_values)
    chart.series.append(series)
    return chart


def bars(sheet: StreamedSheet, columns: Sequence[Column], drawn: Bars) -> BarChart:
    """A bar chart of a sheet's own rows."""
    chart = BarChart()
    chart.type, chart.grouping, chart.gapWidth = "col", "clustered", 60
    _dress(chart, drawn.title, "", drawn.y_title)
    chart.legend.position = "b"
    chart.y_axis.number_format = "General"
    first, last = HEAD_ROW + 1, HEAD_ROW + drawn.rows
    names = Reference(sheet, min_col=drawn.names, min_row=first, max_row=last)
    for number, (column, values) in enumerate(zip(drawn.columns, drawn.values, strict=True)):
        of = Reference(sheet, min_col=column, min_row=first, max_row=last)
        series = Series(of, title=columns[column - 1].head.partition(" [")[0])
        series.graphicalProperties.solidFill = FILLS[number % len(FILLS)]
        series.val.numRef.numCache = _beside(values)
        points = [StrVal(idx=at, v=name) for at, name in enumerate(drawn.named)]
        cached = StrData(ptCount=len(points), pt=points)
        series.cat = AxDataSource(strRef=StrRef(f=str(names), strCache=cached))
        chart.series.append(series)
    return chart


def _dress(chart: ScatterChart | BarChart, title: str, x_title: str, y_title: str) -> None:
    chart.style = 2
    chart.title = title
    chart.x_axis.title = x_title or None
    chart.y_axis.title = y_title
    chart.x_axis.delete = False  # the library hides axes unless told otherwise
    chart.y_axis.delete = False
    lined = (chart.x_axis, chart.y_axis) if isinstance(chart, ScatterChart) else (chart.y_axis,)
    for axis in lined:
        axis.majorGridlines = ChartLines(
            spPr=GraphicalProperties(ln=LineProperties(solidFill="D8D8D8"))
        )
    chart.width, chart.height = 16, 8.5


def anchor(columns: Sequence[Column], first_row: int, number: int) -> str:
    """Cell a chart hangs from: two side by side below the rows, whatever the columns' widths."""
    row = first_row + number // ACROSS * ROWS_EACH
    passed, at = 0.0, 1
    while number % ACROSS and passed < CHARACTERS_WIDE and at <= len(columns):
        passed += columns[at - 1].width
        at += 1
    return f"{get_column_letter(at)}{row}"


def _beside(values: tuple[float, ...]) -> NumData:
    """Values written beside a reference, for viewers that do not look them up."""
    points = [NumVal(idx=at, v=repr(value)) for at, value in enumerate(values)]
    return NumData(formatCode="General", ptCount=len(points), pt=points)
