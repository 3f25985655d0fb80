"""Sheet of what was said differently afterwards: registers changed, entries taken back."""

from chargebench.reports.content import AuditContent
from chargebench.reports.table import Column, Form, Table, clock

CHANGES = (
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("At", 16, Form.WHEN),
    Column("By", 16),
    Column("What", 12),
    Column("About", 22),
    Column("Field", 26, Form.LONG),
    Column("Before", 36, Form.LONG),
    Column("After", 36, Form.LONG),
    Column("Reason", 44, Form.LONG),
)


def changes(content: AuditContent) -> Table:
    """A row for each field of a register that was changed, and each entry taken back."""
    return Table(
        "Changes",
        "Rows put into registers and every field changed since, full charges among them; entries "
        "taken back, with the reason. Nothing is overwritten: each change is an entry.",
        CHANGES,
        (
            (
                each.bench,
                each.number,
                clock(each.at),
                each.by,
                each.what,
                each.about,
                each.field,
                each.before,
                each.after,
                each.reason,
            )
            for each in content.changes
        ),
        empty="No register was changed and no entry taken back in this period.",
    )
