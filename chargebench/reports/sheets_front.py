"""The first and last sheets: summary, rule figures, sources, verification."""

from collections.abc import Iterator

from chargebench import rules
from chargebench.reports.content import AuditContent
from chargebench.reports.sheets_balances import BALANCES, difference_mg
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.sheets_totals import BY_MONTH
from chargebench.reports.table import HEAD_ROW, Column, Form, Formula, Row, Table, letter_of
from chargebench.rules.figure import Cited, Day, Figure, Words
from chargebench.sources import SOURCES, checked, cite

DEFERENCE = (
    "These records compute, list and flag. They do not replace local codes, the equipment maker's "
    "instructions or a licensed person's judgement."
)
PROTECTED = (
    "Every sheet is protected against slips, without a password: anybody can lift it. What shows a "
    "change is the manifest's SHA-256 of this file, the chain of hashes and the control totals."
)
WHEN = (
    "When this file was written stands in the manifest beside it. Nothing here depends on the "
    "hour: the same records exported again on the same day give the same file, byte for byte."
)
MARKS = (
    "Checked: SEEN, read in the source named; SEEN-2, read in a secondary source; CALC, worked "
    "out from seen figures; unverified, recalled and not checked."
)


def summary(content: AuditContent, totals: Totals) -> Table:
    """What this workbook is and what stands out in it."""

    def rows() -> Iterator[Row]:
        yield from _who(content)
        yield from _how_much(content, totals)
        yield from _control(content, totals)

    return Table(
        "Summary",
        f"Refrigerant records of {content.shop.get('name', 'this shop')}, {content.period}.",
        (Column("What", 42), Column("Value", 82, Form.LONG)),
        rows(),
        foot=(DEFERENCE, PROTECTED, WHEN),
    )


def _who(content: AuditContent) -> Iterator[Row]:
    number, hash_ = content.chain_head
    yield ("Shop", content.shop.get("name", ""))
    yield ("Address", content.shop.get("address", ""))
    yield ("Company certificate", content.shop.get("certificate", ""))
    yield ("Period", content.period)
    yield ("Records shown", _shown(content))
    yield ("States and days due are those of", content.today.isoformat())
    yield ("Made by", content.program)
    yield ("Rule set", f"{content.rule_set.name}, {content.rule_set.edition}")
    yield ("Rule sets that steps were judged by", "; ".join(content.judged_by) or "none")
    yield ("Last entry of the chain", number)
    yield ("Hash of the last entry", hash_)


def _shown(content: AuditContent) -> str:
    """Which records, and what that means for the sheets."""
    if not content.selection:
        return "all records"
    return (
        f"{content.selection.words}. Other entries are left out: the numbers of entries have gaps, "
        "and balances show what those moved in a column of its own."
    )


def _how_much(content: AuditContent, totals: Totals) -> Iterator[Row]:
    yield ("Entries in the period", totals.entries)
    yield ("Transfers in the period", totals.transfers)
    yield ("Jobs", len(content.jobs))
    yield ("Jobs still open", sum(job.case.state == "open" for job in content.jobs))
    yield ("Refrigerants moved", ", ".join(totals.refrigerants()) or "none")
    for level, what in (("stop", "Stop flags"), ("check", "Check flags"), ("note", "Notes")):
        yield (what, sum(flag.level == level for flag in content.flags))
    over = [each.equipment_id for each in content.leak_rates if each.over]
    yield ("Over a leak-rate threshold", ", ".join(over) or "none")


def _control(content: AuditContent, totals: Totals) -> Iterator[Row]:
    off_balance = sum(difference_mg(totals, each) != 0 for each in content.balances)
    for what, sheet, columns, count, off in (
        ("Month totals that differ from their control", "Totals by month", BY_MONTH,
         len(totals.by_month), 0),
        ("Balances that differ from their control", "Balances", BALANCES,
         len(content.balances), off_balance),
    ):  # fmt: skip
        column, last = letter_of(columns, "Difference [kg]"), HEAD_ROW + max(count, 1)
        cells = f"'{sheet}'!{column}{HEAD_ROW + 1}:{column}{last}"
        yield (what, Formula(f'=COUNTIFS({cells},"<>0",{cells},"<>")', off))


def rule_figures(content: AuditContent) -> Table:
    """Every figure of the rule set that the flags and limits rest on."""
    return Table(
        "Rule figures",
        f"Figures of the rule set {content.rule_set.name}, {content.rule_set.edition}.",
        (
            Column("Figure", 44),
            Column("Value", 40, Form.LONG),
            Column("In force from", 13, Form.DATE),
            Column("Source and place", 70, Form.LONG),
            Column("Checked", 12),
        ),
        (
            (
                each.key,
                _value(each),
                each.effective,
                f"{cite(each.source)}{f', {each.place}' if each.place else ''}",
                checked(each.mark),
            )
            for each in rules.figures(content.rule_set)
        ),
        foot=(MARKS,),
    )


def _value(figure: Cited) -> str:
    assert isinstance(figure, Figure | Words | Day), figure
    return figure.text


def sources() -> Table:
    """The bibliography."""
    return Table(
        "Sources",
        "Works that figures, formulas and checklist lines cite by key.",
        (Column("Key", 18), Column("Work", 90, Form.LONG), Column("Edition or date", 40)),
        ((key, source.citation, source.edition) for key, source in sorted(SOURCES.items())),
    )


def verification(content: AuditContent) -> Table:
    """What was checked before this workbook was made, and what a chain can not prove."""
    head = f"Entry {content.chain_head[0]}, {content.chain_head[1]}"
    return Table(
        "Verification",
        "What was checked, and what a chain of hashes can and can not prove.",
        (Column("Statement", 120, Form.LONG),),
        ((sentence,) for sentence in (*content.verification, f"Chain head: {head}.")),
        foot=(f"Made by {content.program}.", PROTECTED, WHEN),
    )
