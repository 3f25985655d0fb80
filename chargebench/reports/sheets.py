"""Every sheet of the audit workbook: the order they stand in, and the order they are written in."""

from collections.abc import Iterator

from chargebench.reports import (
    clauses,
    sheets_balances,
    sheets_changes,
    sheets_due,
    sheets_equipment,
    sheets_field,
    sheets_front,
    sheets_jobs,
    sheets_known,
    sheets_ledger,
    sheets_moved,
    sheets_registers,
    sheets_stock,
    sheets_tests,
    sheets_totals,
    sheets_unaccounted,
    sheets_work,
)
from chargebench.reports.content import AuditContent
from chargebench.reports.table import Table

ORDER = (
    "Summary",
    "Flags",
    "Leak rates",
    "Due dates",
    "Jobs",
    "Work done",
    "Refrigerants",
    "Usage by month",
    "Totals by month",
    "Recovered by month",
    "Disposals",
    "Purchases",
    "Handed over",
    "Unaccounted",
    "Stock by refrigerant",
    "Balances",
    "Cylinders",
    "Equipment",
    "Readings",
    "Leak searches",
    "After repairs",
    "Pressure tests",
    "Recovery",
    "Decay tests",
    "Decay readings",
    "Weigh-ins",
    "Weighings",
    "Checklists",
    "Worked figures",
    "As typed",
    "Transfers",
    "Entries",
    "Changes",
    "People",
    "Instruments",
    "Refrigerant data",
    "Retention",
    "Rule figures",
    "Clauses",
    "Sources",
    "Verification",
)


def tables(content: AuditContent) -> Iterator[Table]:
    """Every sheet, those first whose rows the others total."""
    totals = sheets_ledger.Totals()
    yield sheets_ledger.entries(content, totals)
    yield sheets_ledger.transfers(content, totals)
    yield sheets_totals.totals_by_month(totals)
    yield sheets_totals.usage_by_month(totals)
    yield sheets_totals.totals_by_refrigerant(content, totals)
    yield sheets_totals.recovered_by_month(totals, sheets_work.disposed_mg(content, totals))
    yield sheets_unaccounted.unaccounted(content)
    yield sheets_balances.balances(content, totals)
    yield sheets_balances.stock_balances(content, totals)
    yield sheets_front.summary(content, totals)
    yield sheets_jobs.jobs(content, totals)
    yield sheets_work.work_done(content, totals)
    yield sheets_work.disposals(content, totals)
    yield sheets_stock.purchases(content)
    yield sheets_stock.handed_over(content)
    yield sheets_stock.weighings(content)
    yield sheets_changes.changes(content)
    yield sheets_jobs.as_typed(content)
    yield sheets_jobs.figures(content)
    yield sheets_jobs.flags(content)
    yield sheets_jobs.checklists(content)
    yield sheets_field.readings(content)
    yield sheets_field.leak_searches(content)
    yield sheets_tests.pressure_tests(content)
    yield sheets_moved.recovery(content, totals)
    yield sheets_tests.decay_tests(content)
    yield sheets_tests.decay_readings(content)
    yield sheets_moved.weigh_ins(content, totals)
    yield sheets_due.leak_rates(content)
    yield sheets_due.due_dates(content)
    yield sheets_due.after_repairs(content)
    yield sheets_due.retention(content)
    yield sheets_registers.cylinders(content)
    yield sheets_equipment.equipment(content)
    yield sheets_known.refrigerant_data(content)
    yield sheets_registers.people(content)
    yield sheets_registers.instruments(content)
    yield sheets_front.rule_figures(content)
    yield clauses.clause_table()
    yield sheets_front.sources()
    yield sheets_front.verification(content)
