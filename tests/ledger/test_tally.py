"""Totals of days and mentions of places: as the mass lines say, and read without reading them."""

from collections import defaultdict
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from chargebench.ledger import Filters, Ledger, NewEntry, Transfer, UsageTotal, schema
from tests.ledger import books, chains
from tests.ledger.books import BY, CYLINDER, FREEZER, NOON, later

PLACES = ("supplier", CYLINDER, "cylinder:C-015", FREEZER, "atmosphere")
MOMENTS = st.builds(
    lambda minutes, offset: (datetime(2026, 2, 26, tzinfo=UTC) + timedelta(minutes=minutes))
    .astimezone(timezone(timedelta(hours=offset))),
    st.integers(0, 60 * 24 * 12),
    st.sampled_from([-12, -5, 0, 1, 14]),
)  # fmt: skip
LINES = st.tuples(
    st.permutations(PLACES).map(lambda ends: tuple(ends[:2])),
    st.integers(0, 9_000),
    MOMENTS,
    st.sampled_from([BY, "P. Ruiz"]),
    st.booleans(),
)


def by_hand(
    ledger: Ledger, since: datetime | None, until: datetime | None, filters: Filters
) -> list[UsageTotal]:
    """The same totals counted from the usage log, line by line."""
    sums: dict[tuple[str, str, str, str], list[int]] = defaultdict(lambda: [0, 0])
    for row in ledger.usage(since, until, filters):
        if not row.reversed:
            kinds = (row.source.partition(":")[0], row.target.partition(":")[0])
            total = sums[row.happened_at.isoformat()[:7], row.refrigerant, *kinds]
            total[0] += row.mass_mg
            total[1] += 1
    return [UsageTotal(*key, *total) for key, total in sorted(sums.items())]


@settings(deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(LINES, max_size=12), MOMENTS, st.integers(0, 12 * 24))
def test_that_totals_of_any_period_are_those_of_its_lines(
    tmp_path_factory: pytest.TempPathFactory,
    lines: list[tuple[tuple[str, str], int, datetime, str, bool]],
    since: datetime,
    hours: int,
) -> None:
    path = tmp_path_factory.mktemp("shop") / "larkmoor.chargebench"
    with Ledger.create(path) as ledger:
        for (source, target), mass_mg, when, by, undone in lines:
            line = Transfer(source, target, "R290", mass_mg, f"{mass_mg} mg")
            far = dict.fromkeys(PLACES, 10**9)
            entry = ledger.post(NewEntry("moved", by, when, {}, (line,)), may_overdraw_mg=far)
            if undone:
                ledger.reverse(entry.id, "P. Ruiz", NOON, "mistyped", may_overdraw_mg=far)
        until = since + timedelta(hours=hours)
        for filters in (Filters(), Filters(by=BY), Filters(refrigerant="R22")):
            for start, end in ((None, None), (since, None), (None, until), (since, until)):
                told = ledger.usage_totals(start, end, filters)
                assert told == by_hand(ledger, start, end, filters)
        assert ledger.verify().problems == ()


def test_that_a_reversal_takes_back_on_the_day_of_what_it_reverses(shop: Ledger) -> None:
    books.register(shop)
    entry = books.receive(shop)
    shop.reverse(entry.id, "P. Ruiz", later(60 * 24 * 40), "another shop's delivery")
    assert shop.usage_totals() == []
    assert shop.usage_totals(filters=Filters(by=BY)) == []
    assert shop.verify().ok


def test_that_stock_work_is_found_by_the_place_it_names(shop: Ledger) -> None:
    books.register(shop)
    job = books.open_job(shop)
    weighed = [
        shop.post(NewEntry("weighed", BY, NOON, {"places": places}))
        for places in ([CYLINDER], ["cylinder:C-015", CYLINDER], ["cylinder:C-015"])
    ]
    shop.post(NewEntry("step-signed", BY, NOON, {"step": "x", "places": [CYLINDER]}, job=job))
    assert shop.last_naming("weighed", "cylinder:").keys() == {CYLINDER, "cylinder:C-015"}
    assert shop.last_naming("weighed", CYLINDER)[CYLINDER] == weighed[1]
    shop.reverse(weighed[1].id, BY, NOON, "the other scale")
    assert shop.last_naming("weighed", CYLINDER)[CYLINDER] == weighed[0]
    assert shop.last_naming("received", CYLINDER) == {}
    assert shop.verify().ok


def test_that_what_is_taken_in_counts_on_its_own_day(tmp_path: Path) -> None:
    with chains.shop(tmp_path) as shop, chains.further(shop, "D") as away:
        entry = books.receive(away, 7_000)
        handed = chains.handed(away)
        for bench in (away, shop):  # both take it back, and neither knows of the other
            if bench is shop:
                chains.take(shop, handed)
            bench.reverse(entry.id, BY, NOON, "not ours")
        before = shop.usage_totals()
        chains.take(shop, chains.handed(away))
        assert shop.usage_totals() == before == by_hand(shop, None, None, Filters())
        assert shop.verify().problems == ()


def test_that_closed_jobs_with_flags_are_found_as_last_closed(shop: Ledger) -> None:
    books.register(shop)
    raised: dict[str, Any] = {"flags": [{"level": "check"}]}
    jobs = [books.open_job(shop) for _ in range(4)]
    for job, payload in zip(jobs, ({"flags": []}, raised, raised, raised), strict=True):
        shop.post(NewEntry("job-closed", BY, NOON, payload, job=job))
    closings: list[tuple[str, dict[str, Any] | None]] = [(jobs[2], {"flags": []}), (jobs[3], None)]
    for job, again in closings:
        shop.post(NewEntry("job-reopened", BY, NOON, {"reason": "wrong end"}, job=job))
        if again:
            shop.post(NewEntry("job-closed", BY, NOON, again, job=job))
    assert [entry.job for entry in shop.closed_with_flags()] == [jobs[1]]


def test_that_the_last_entry_of_a_job_stands_for_it_unless_it_says_what_is_asked(
    shop: Ledger,
) -> None:
    books.register(shop)
    jobs = [books.open_job(shop) for _ in range(3)]

    def visit(job: str, **typed: str) -> str:
        return shop.post(NewEntry("follow-up", BY, NOON, {"typed": typed}, job=job)).id

    promised = visit(jobs[0], due="2026-04-01")
    visit(jobs[1], due="2026-04-01")
    done = visit(jobs[1], due="2026-04-01", done_on="2026-04-02", what='said "done_on": never')
    assert [entry.id for entry in shop.last_without("follow-up", "done_on")] == [promised]
    shop.reverse(done, BY, NOON, "another job's")
    assert {entry.job for entry in shop.last_without("follow-up", "done_on")} == {*jobs[:2]}


@pytest.mark.parametrize("before", [None, (40, 0)])
def test_that_a_page_of_a_history_reads_no_further_than_it_shows(
    filed: Ledger, before: tuple[int, int] | None
) -> None:
    books.register(filed)
    masses = range(1, 40)
    for mass_mg in masses:
        books.receive(filed, mass_mg)
    rows = filed.history(CYLINDER, before=before, limit=5)
    assert len(rows) == 5
    assert [row.running_mg - row.mass_mg for row in rows][:-1] == [r.running_mg for r in rows][1:]
    every = filed.history(CYLINDER)
    assert every[0].running_mg == sum(masses)
    assert rows == [row for row in every if before is None or row.key < before][:5]


def test_that_the_tables_of_totals_hold_no_text_of_their_own(filed: Ledger) -> None:
    books.whole_job(filed)
    with filed._connection.begin():
        days = filed._connection.execute(schema.day_total.select()).all()
    assert {(row.day, row.bench, row.person) for row in days} == {("2026-03-02", "B", BY)}
