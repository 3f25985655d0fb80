"""The three areas, made when first shown, each with what it asks of the window."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chargebench.desk import Desk
    from chargebench.ui.bench import BenchArea
    from chargebench.ui.records import RecordsArea
    from chargebench.ui.stock import StockArea
    from chargebench.ui.window import MainWindow


def make_bench(desk: "Desk", window: "MainWindow") -> "BenchArea":
    """The Bench: jobs."""
    from chargebench.ui.bench import BenchArea

    bench = BenchArea(desk, window.notifier)
    bench.said.connect(window.say)
    return bench


def make_stock(desk: "Desk", window: "MainWindow") -> "StockArea":
    """Stock: cylinders and instruments."""
    from chargebench.ui.stock import StockArea

    stock = StockArea(desk, window.notifier)
    stock.said.connect(window.say)
    stock.job_wanted.connect(window.open_job)
    stock.reference_wanted.connect(window.show_reference)
    return stock


def make_records(desk: "Desk", window: "MainWindow") -> "RecordsArea":
    """Records: usage, flags, leak rates, due dates, entries."""
    from chargebench.ui.records import RecordsArea

    records = RecordsArea(desk, window.notifier)
    records.said.connect(window.say)
    records.backups_wanted.connect(window.backups_wanted)
    records.job_wanted.connect(window.open_job)
    records.cylinder_wanted.connect(window.open_cylinder)
    return records
