"""Questions to the ledger: histories, usage, jobs, registers, typed text, and their pages."""

import sqlite3
import threading
from datetime import UTC, datetime, timedelta, timezone

import pytest

from chargebench.errors import PostingRefused
from chargebench.ledger import Filters, Ledger, NewEntry, Transfer
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, FREEZER, NOON


def _fill_and_draw(shop: Ledger, times: int) -> str:
    books.register(shop)
    books.receive(shop, 1_000_000)
    job = books.open_job(shop)
    for mass_mg in range(1, times + 1):
        books.weigh_in(shop, job, mass_mg, hose_mg=10 * mass_mg)
    return job


def test_that_a_history_runs_back_from_the_balance_to_nothing(shop: Ledger) -> None:
    job = _fill_and_draw(shop, 3)
    rows = shop.history(CYLINDER)
    assert [(row.mass_mg, row.running_mg) for row in rows] == [
        (-30, 999_934),
        (-3, 999_964),
        (-20, 999_967),
        (-2, 999_987),
        (-10, 999_989),
        (-1, 999_999),
        (1_000_000, 1_000_000),
    ]
    assert [row.other for row in rows[-2:]] == [FREEZER, "supplier"]
    assert (rows[0].job, rows[0].job_number, rows[0].as_typed) == (job, "B-0001", "0.3 g")


def test_that_pages_of_a_history_join_without_a_seam(shop: Ledger) -> None:
    _fill_and_draw(shop, 7)
    whole, page, joined = shop.history(CYLINDER), shop.history(CYLINDER, limit=4), []
    while page:
        joined += page
        page = shop.history(CYLINDER, before=page[-1].key, limit=4)
    assert joined == whole


def test_that_a_history_keeps_refrigerants_apart(shop: Ledger) -> None:
    books.register(shop)
    for mass_mg, refrigerant in ((5, "R404A"), (7, "R22"), (11, "R404A")):
        books.receive(shop, mass_mg, cylinder="cylinder:C-099", refrigerant=refrigerant)
    rows = shop.history("cylinder:C-099")
    assert [(row.refrigerant, row.running_mg) for row in rows] == [
        ("R404A", 16),
        ("R22", 7),
        ("R404A", 5),
    ]


def test_that_a_place_is_not_taken_for_one_whose_name_goes_on(shop: Ledger) -> None:
    books.receive(shop, 1_000, cylinder="cylinder:C-1")
    books.receive(shop, 5_000, cylinder="cylinder:C-11")
    assert [row.running_mg for row in shop.history("cylinder:C-1")] == [1_000]


def test_that_balances_list_every_cylinder_also_an_emptied_one(shop: Ledger) -> None:
    books.receive(shop, 1_000)
    books.receive(shop, 2_000, cylinder="cylinder:C-015")
    away = Transfer(CYLINDER, "reclaimer", "R290", 1_000, "1 g")
    shop.post(NewEntry("returned", BY, NOON, {}, (away,)))
    assert [(b.place, b.mass_mg) for b in shop.balances()] == [
        (CYLINDER, 0),
        ("cylinder:C-015", 2_000),
    ]
    assert shop.balance("cylinder:never", "R290") == 0


def test_that_entries_are_found_by_job_kind_and_period(shop: Ledger) -> None:
    job = books.whole_job(shop)
    kinds = [entry.kind for entry in shop.entries(job=job)]
    assert kinds == ["job-opened", "step-signed", "reversal", "step-signed", "job-closed"]
    assert [e.kind for e in shop.entries(kind="received")] == ["received"]
    assert {e.kind for e in shop.entries(kind=["received", "reversal"])} == {"received", "reversal"}
    assert [e.kind for e in shop.entries(since=books.later(40), until=books.later(60))] == [
        "reversal"
    ]


def test_that_entries_go_on_after_a_known_one(
    shop: Ledger, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("chargebench.ledger.reading.PAGE", 3)
    books.whole_job(shop)
    every = list(shop.entries())
    assert len(every) > 6
    assert list(shop.entries(after=every[4].id)) == every[5:]
    assert list(shop.entries(after=every[4].id, limit=4)) == every[5:9]
    newest = list(shop.entries(newest_first=True))
    assert newest == every[::-1]
    assert list(shop.entries(after=every[4].id, newest_first=True)) == every[3::-1]
    assert list(shop.entries(after=every[4].id, limit=2, newest_first=True)) == [every[3], every[2]]
    assert list(shop.entries(limit=0)) == []


def test_that_one_can_post_while_reading_entries(shop: Ledger) -> None:
    books.register(shop)
    for _ in shop.entries(limit=3):
        books.receive(shop)
    assert shop.balance(CYLINDER, "R290") == 3 * 4_650_000


def test_that_an_unknown_entry_is_refused_in_words(shop: Ledger) -> None:
    with pytest.raises(PostingRefused, match="no entry nothing"):
        shop.entry("nothing")


@pytest.mark.parametrize(
    ("find", "numbers"),
    [
        ("", ["B-0002", "B-0001"]),
        ("0002", ["B-0002"]),
        ("b-0001", ["B-0001"]),
        ("BAKERY", ["B-0001"]),
        ("quay strasse", ["B-0001"]),
        ("harbour walk-in", ["B-0002"]),
        ("harbour freezer", []),
        ("e-20", ["B-0002", "B-0001"]),
        ("%", []),
    ],
)
def test_that_a_job_is_found_by_number_equipment_and_site(
    shop: Ledger, find: str, numbers: list[str]
) -> None:
    books.register(shop)
    books.open_job(shop, "E-203")
    books.open_job(shop, "E-204")
    assert [job.number for job in shop.jobs(find=find)] == numbers


def test_that_jobs_are_narrowed_by_state_and_equipment_and_paged(shop: Ledger) -> None:
    closed = books.whole_job(shop)
    opened = [books.open_job(shop, "E-204") for _ in range(3)]
    assert [job.id for job in shop.jobs("closed")] == [closed]
    assert [job.id for job in shop.jobs("open", equipment="E-204")] == opened[::-1]
    first = shop.jobs(limit=2)
    assert [job.id for job in shop.jobs(before=first[-1].opened_by)] == [opened[0], closed]
    found = shop.job(closed)
    assert found is not None
    assert (found.opened_at, found.closed_at) == (NOON, books.later(60))
    assert shop.job("nowhere") is None


def test_that_usage_lists_mass_lines_newest_first_and_pages(shop: Ledger) -> None:
    books.whole_job(shop)
    rows = shop.usage()
    assert [row.happened_at for row in rows] == sorted((r.happened_at for r in rows), reverse=True)
    assert len(rows) == 7
    page = shop.usage(limit=3)
    assert [*page, *shop.usage(before=page[-1].key)] == rows
    assert [(row.mass_mg, row.reversed) for row in rows if row.target == FREEZER] == [
        (99_223, False),
        (85_000, True),
    ]


@pytest.mark.parametrize(
    ("filters", "count"),
    [
        (Filters(refrigerant="R290"), 7),
        (Filters(refrigerant="R22"), 0),
        (Filters(by="nobody"), 0),
        (Filters(equipment="E-203"), 6),
        (Filters(place="atmosphere"), 3),
        (Filters(kind="received"), 1),
        (Filters(job="nowhere"), 0),
    ],
)
def test_that_usage_is_narrowed(shop: Ledger, filters: Filters, count: int) -> None:
    books.whole_job(shop)
    assert len(shop.usage(filters=filters)) == count
    assert len(shop.usage(since=books.later(61), filters=filters)) == 0
    assert len(shop.usage(until=NOON, filters=filters)) == 0


def test_that_totals_leave_out_what_was_reversed(shop: Ledger) -> None:
    books.whole_job(shop)
    totals = [(t.month, t.source, t.target, t.mass_mg) for t in shop.usage_totals()]
    assert totals == [
        ("2026-03", "cylinder", "atmosphere", 300),
        ("2026-03", "cylinder", "equipment", 99_223),
        ("2026-03", "supplier", "cylinder", 4_650_000),
    ]


def test_that_a_month_is_the_one_on_the_bench_calendar(shop: Ledger) -> None:
    late = datetime(2026, 3, 1, 0, 30, tzinfo=timezone(timedelta(hours=2)))
    line = Transfer("supplier", CYLINDER, "R290", 5, "5 mg")
    shop.post(NewEntry("received", BY, late, {}, (line,)))
    assert late.astimezone(UTC).month == 2
    assert [total.month for total in shop.usage_totals()] == ["2026-03"]


def test_that_typed_text_of_open_steps_is_kept_and_forgotten(shop: Ledger) -> None:
    job = books.open_job(shop)
    shop.keep_typed(job, "weigh-in", {"start": "4 312.5", "end": ""})
    shop.keep_typed(job, "weigh-in", {"start": "4 312.5 g", "end": ""})
    shop.keep_typed(job, "safety", {"ticks": [True, False]})
    assert shop.typed(job, "weigh-in") == {"start": "4 312.5 g", "end": ""}
    assert set(shop.typed_steps(job)) == {"safety", "weigh-in"}
    shop.forget_typed(job, "weigh-in")
    assert shop.typed(job, "weigh-in") == {}
    assert shop.head()[0] == 1


def test_that_signing_a_step_drops_its_typed_text_in_the_same_commit(shop: Ledger) -> None:
    job = books.open_job(shop)
    shop.keep_typed(job, "safety", {"wind": "none"})
    refused = NewEntry("step-signed", BY, NOON, {"wind": 1.5}, job=job)
    with pytest.raises(TypeError):
        shop.post(refused, signs="safety")
    assert shop.typed(job, "safety") == {"wind": "none"}
    shop.post(NewEntry("step-signed", BY, NOON, {"wind": "none"}, job=job), signs="safety")
    assert shop.typed(job, "safety") == {}


def test_that_another_thread_reads_by_a_connection_of_its_own(shop: Ledger) -> None:
    books.whole_job(shop)
    found: list[object] = []

    def work() -> None:
        with shop.reader() as reader:
            found.extend([len(list(reader.entries())), reader.verify().ok, reader.shop_id])

    thread = threading.Thread(target=work)
    thread.start()
    thread.join()
    assert found == [shop.head()[0], True, shop.shop_id]


def test_that_a_reader_can_not_write(filed: Ledger) -> None:
    with filed.reader() as reader:
        raw = reader._connection.connection.driver_connection
        assert isinstance(raw, sqlite3.Connection)
        with pytest.raises(sqlite3.OperationalError, match="readonly"):
            raw.execute("INSERT INTO about VALUES ('a', 'b')")


@pytest.mark.parametrize("end", ["source", "target"])
def test_that_sums_over_a_place_are_served_by_the_index_alone(filed: Ledger, end: str) -> None:
    tool = sqlite3.connect(filed.path)
    plan = tool.execute(
        f"EXPLAIN QUERY PLAN SELECT refrigerant, SUM(mass_mg) FROM transfer WHERE {end} = ? "  # noqa: S608
        "GROUP BY refrigerant",
        ("x",),
    ).fetchall()
    tool.close()
    assert f"USING COVERING INDEX transfer_by_{end}" in plan[0][3]
