"""Native charts of a workbook."""

from collections.abc import Sequence

from openpyxl.chart import Reference, ScatterChart, Series
from openpyxl.chart.axis import ChartLines
from openpyxl.chart.data_source import NumData, NumVal
from openpyxl.chart.marker import Marker
from openpyxl.chart.shapes import GraphicalProperties
from openpyxl.drawing.line import LineProperties
from openpyxl.utils import get_column_letter

from chargebench.reports.sheet_xml import StreamedSheet
from chargebench.reports.table import Column, Curve

ACROSS = 2  # charts side by side
ROWS_EACH = 18
CHARACTERS_WIDE = 90  # of columns, as wide as a chart and a gap


def scatter(sheet: StreamedSheet, curve: Curve) -> ScatterChart:
    """A scatter chart of a curve's rows on a sheet."""
    chart = ScatterChart()
    chart.style = 2
    chart.scatterStyle = "lineMarker"
    chart.title = curve.title
    chart.x_axis.title = curve.x_title
    chart.y_axis.title = curve.y_title
    chart.x_axis.delete = False  # the library hides axes unless told otherwise
    chart.y_axis.delete = False
    chart.x_axis.number_format = "0"
    chart.y_axis.number_format = "0"
    chart.legend = None
    for axis in (chart.x_axis, chart.y_axis):
        axis.majorGridlines = ChartLines(
            spPr=GraphicalProperties(ln=LineProperties(solidFill="D8D8D8"))
        )
    chart.width, chart.height = 16, 8.5
    x = Reference(sheet, min_col=curve.x, min_row=curve.first, max_row=curve.last)
    y = Reference(sheet, min_col=curve.y, min_row=curve.first, max_row=curve.last)
    series = Series(y, x, title=curve.y_title)
    series.marker = Marker("circle", size=6)
    series.graphicalProperties.line.solidFill = "30506E"
    series.marker.graphicalProperties.solidFill = "30506E"
    series.xVal.numRef.numCache = _beside(curve.x_values)
    series.yVal.numRef.numCache = _beside(curve.y_values)
    chart.series.append(series)
    return chart


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
