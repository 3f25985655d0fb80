"""What each login may do, tried over a real connection; and what is seen when guards are gone."""

import psycopg
import pytest
from psycopg import sql

from chargebench.errors import ChargebenchError, ShopFileRefused
from chargebench.ledger import Ledger, NewEntry, Reader
from chargebench.ledger.walls import APPEND_ONLY
from tests.ledger import books
from tests.ledger.books import BY, NOON
from tests.postgres.server import Site

CHANGES = (
    "UPDATE {table} SET {column} = {column}",
    "UPDATE {table} SET {column} = {column} WHERE false",
    "DELETE FROM {table}",
    "TRUNCATE {table} CASCADE",
)
COLUMNS = {"entry": "payload", "transfer": "mass_mg", "checkpoint": "why", "picture": "media"}
BREAKING = (
    "ALTER TABLE entry DISABLE TRIGGER ALL",
    "ALTER TABLE entry DISABLE TRIGGER entry_no_update",
    "DROP TRIGGER entry_no_update ON entry",
    "CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE sql AS 'SELECT NULL'",
    "DROP FUNCTION refuse_change() CASCADE",
    "ALTER TABLE entry ADD COLUMN colour text",
    "ALTER TABLE entry RENAME TO old_entry",
    "DROP TABLE entry CASCADE",
    "CREATE TABLE chargebench.mine (a int)",
    "CREATE TRIGGER mine BEFORE INSERT ON entry EXECUTE FUNCTION refuse_change()",
    "CREATE RULE mine AS ON INSERT TO entry DO INSTEAD NOTHING",
    "SET session_replication_role = replica",
    "UPDATE about SET value = 'X'",
    "INSERT INTO about VALUES ('bench:me', 'B')",
    "DELETE FROM head",
    "UPDATE head SET bench = 'X'",
    "DELETE FROM balance",
    "UPDATE job SET number = 'B-9'",
    "DELETE FROM job",
    "DELETE FROM register_row",
    "DELETE FROM reversed_entry",
    "UPDATE reversed_entry SET reversal = id",
    "SELECT setval('entry_position_seq', 1)",
)


def test_that_nobody_changes_what_is_recorded(worked: Site) -> None:
    worked.bench("VAN2")
    statements = [
        sql.SQL(change).format(table=sql.Identifier(table), column=sql.Identifier(COLUMNS[table]))
        for table in APPEND_ONLY
        for change in CHANGES
    ]
    with worked.open("van2") as bench, worked.open() as owner, worked.open_admin() as admin:
        for statement in statements:
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                bench.execute(statement)
            for connection in (owner, admin):
                with pytest.raises(psycopg.Error, match="is append-only"):
                    connection.execute(statement)
    assert len(statements) == 16


def test_that_a_superuser_who_only_replays_is_stopped_too(worked: Site) -> None:
    with worked.open_admin() as admin:
        admin.execute("SET session_replication_role = replica")
        with pytest.raises(psycopg.Error, match="entry is append-only"):
            admin.execute("UPDATE entry SET payload = '{}'")


def test_that_a_bench_has_no_right_to_take_guards_away(worked: Site) -> None:
    address = worked.bench("VAN2")
    with worked.open("van2") as bench:
        for statement in BREAKING:
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                bench.execute(statement)
        bench.execute("GRANT UPDATE ON entry TO PUBLIC")  # is only warned of, and gives nothing
    with Ledger.open(address) as ledger:
        assert ledger.verify().ok


def test_that_a_bench_reads_and_appends(worked: Site) -> None:
    with Ledger.open(worked.bench("VAN2")) as van:
        job = books.open_job(van)
        books.weigh_in(van, job)
        van.put_row("site", "S-9", {"name": "Pier"}, BY, NOON)
        van.keep_typed(job, "close", {"a": "b"})
        van.forget_typed(job, "close")
        van.keep_checkpoint("export")
        van.set_passphrase("P-01", "four words or so", by=BY, happened_at=NOON)
        van.post(NewEntry("job-closed", BY, NOON, {}, job=job))
        assert van.verify().problems == ()
        assert van.job(job).number == "VAN2-0001"  # type: ignore[union-attr]


def test_that_an_officer_only_reads(worked: Site) -> None:
    address = worked.officer()
    with Reader.open_reading(address) as reader:
        assert not reader.records
        assert set(reader.heads()) == {"B"}
        assert reader.verify().ok
    with Ledger.open(address) as ledger, pytest.raises(ShopFileRefused, match="only be read by"):
        books.receive(ledger)
    with worked.open("officer") as officer:
        for table in ("entry", "transfer", "typed", "balance", "head"):
            with pytest.raises(psycopg.errors.InsufficientPrivilege):
                officer.execute(
                    sql.SQL("INSERT INTO {} DEFAULT VALUES").format(sql.Identifier(table))
                )
        with pytest.raises(psycopg.errors.InsufficientPrivilege):
            officer.execute("SELECT hash FROM passphrase")


def test_that_a_reader_of_a_bench_can_not_write(worked: Site) -> None:
    with (
        Reader.open_reading(worked.bench("VAN2")) as reader,
        pytest.raises(ShopFileRefused, match="only lets read"),
        reader._reading() as connection,
    ):
        connection.exec_driver_sql("DELETE FROM typed")


def test_that_a_login_nobody_let_in_is_refused_in_words(worked: Site) -> None:
    with worked.open_admin() as admin:
        admin.execute(
            sql.SQL("CREATE ROLE {} LOGIN").format(sql.Identifier(worked.login("stranger")))
        )
    with pytest.raises(ShopFileRefused, match=r"is not let into the shop .* join-shop --login"):
        Ledger.open(worked.address("stranger"))


@pytest.mark.parametrize(
    ("statement", "guard"),
    [
        ("DROP TRIGGER entry_no_update ON entry", "entry_no_update"),
        ("ALTER TABLE transfer DISABLE TRIGGER transfer_no_delete", "transfer_no_delete"),
        ("ALTER TABLE picture ENABLE TRIGGER picture_no_truncate", "picture_no_truncate"),
        (
            (
                "CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger "
                "LANGUAGE plpgsql AS 'BEGIN RETURN NEW; END'"
            ),
            "refuse_change",
        ),
        ("GRANT UPDATE ON entry TO {bench}", "rights on entry"),
        ("GRANT UPDATE (mass_mg) ON transfer TO PUBLIC", "rights on transfer"),
        ("GRANT TRUNCATE ON checkpoint TO {bench}", "rights on checkpoint"),
    ],
)
def test_that_a_guard_that_is_gone_is_seen_and_put_back(
    worked: Site, statement: str, guard: str
) -> None:
    address = worked.bench("VAN2")
    with worked.open() as owner:
        owner.execute(sql.SQL(statement).format(bench=sql.Identifier(worked.login("van2"))))
    with pytest.raises(ShopFileRefused, match=guard):
        Ledger.open(address)
    with Reader.open_reading(address, guarded=False) as reader:
        assert [problem.what for problem in reader.verify().problems] == [
            f"The guard {guard}, which keeps records from being changed, is not there."
        ]
    with pytest.raises(ChargebenchError, match="no right"):
        Ledger.mend_guards(address, BY, NOON)
    mended = Ledger.mend_guards(worked.address(), BY, NOON)
    assert mended.payload == {"missing": [guard]}
    with Ledger.open(address) as ledger:
        assert ledger.verify().ok
    with pytest.raises(ShopFileRefused, match="nothing to mend"):
        Ledger.mend_guards(worked.address(), BY, NOON)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ("UPDATE balance SET mass_mg = mass_mg + 1 WHERE place = 'cylinder:C-014'", "balance of"),
        ("UPDATE head SET number = number + 1", "are cut off"),
        ("UPDATE job SET state = 'open'", "not what its entries say"),
        ("UPDATE register_row SET content = '{}' WHERE id = 'E-203'", "row E-203 is not what"),
        ("INSERT INTO reversed_entry VALUES ('a', 'b')", "Whether entry a is reversed"),
    ],
)
def test_that_what_a_bench_could_falsify_is_found_by_verify(
    worked: Site, change: str, says: str
) -> None:
    address = worked.bench("VAN2")
    with worked.open("van2") as bench:
        bench.execute(change)
    with Reader.open_reading(address, guarded=False) as reader:
        assert any(says in problem.what for problem in reader.verify().problems)


def test_that_what_the_owner_changes_behind_the_guards_is_found_by_verify(worked: Site) -> None:
    with worked.open() as owner:
        owner.execute("ALTER TABLE transfer DISABLE TRIGGER transfer_no_update")
        owner.execute("UPDATE transfer SET mass_mg = mass_mg + 5 WHERE line = 1")
        owner.execute("ALTER TABLE transfer ENABLE ALWAYS TRIGGER transfer_no_update")
    with Ledger.open(worked.address()) as ledger:
        problems = [problem.what for problem in ledger.verify().problems]
    assert any("was changed" in what for what in problems)
