"""Jobs, newest first: all, of one state or equipment, or found by words."""

from typing import Any

from sqlalchemy import ColumnElement, Connection, func, or_, select, union_all

from chargebench.ledger import schema
from chargebench.ledger.projection import Job, as_job

_job = schema.job


def _found(connection: Connection, find: str) -> Any:
    """Condition on jobs: number, equipment, or words of the equipment's or its site's row.

    A number is looked for in the index of numbers, an equipment among the equipment there is: no
    job's row is read that is not found.
    """
    table, words = schema.register_row, find.casefold()
    sites = select(table.c.id).where(
        table.c.register == "site", table.c.words.contains(words, autoescape=True)
    )
    at_site = [
        table.c.words.contains(f"\n{site.casefold()}\n", autoescape=True)
        for site in connection.execute(sites.limit(50)).scalars()
    ]
    equipment = select(table.c.id).where(
        table.c.register == "equipment",
        or_(
            table.c.words.contains(words, autoescape=True),
            func.lower(table.c.id).contains(words, autoescape=True),
            *at_site,
        ),
    )
    # Numbers are capitals and figures, so that their case needs no folding row by row.
    numbered = select(_job.c.id).where(_job.c.number.contains(find.upper(), autoescape=True))
    places = union_all(
        select(_job.c.opened_by).where(_job.c.id.in_(numbered)),
        select(_job.c.opened_by).where(_job.c.equipment.in_(equipment)),
    )
    return _job.c.opened_by.in_(places)


def jobs(
    connection: Connection,
    *,
    state: str | None,
    find: str,
    equipment: str | None,
    before: int | None,
    limit: int | None,
) -> list[Job]:
    """Jobs, newest first, opened before the job whose `opened_by` is given."""
    conditions: list[ColumnElement[bool]] = []
    if state is not None:
        conditions.append(_job.c.state == state)
    if equipment is not None:
        conditions.append(_job.c.equipment == equipment)
    if before is not None:
        conditions.append(_job.c.opened_by < before)
    conditions += [_found(connection, word) for word in find.split()]
    query = select(_job).where(*conditions).order_by(_job.c.opened_by.desc())
    return [as_job(row) for row in connection.execute(query.limit(limit))]
