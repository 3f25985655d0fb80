"""A shop on a server: made whole, upgraded and opened to logins by its owner, else refused."""

import pytest
from psycopg import sql
from sqlalchemy import Connection

from chargebench.errors import ServerGone, ShopFileRefused
from chargebench.ledger import (
    Address,
    Ledger,
    Reader,
    migrations,
    place_of,
    restore,
    server,
    shopfile,
)
from tests.ledger import books
from tests.postgres.server import Site

PASSWORD = "four words to keep"  # noqa: S105


def test_that_an_address_shows_no_password() -> None:
    address = place_of(
        f"postgresql://van2:{PASSWORD.replace(' ', '%20')}@shop.example:5433/larkmoor"
    )
    assert isinstance(address, Address)
    assert str(address) == "postgresql://van2@shop.example:5433/larkmoor"
    assert "words" not in repr(address) + f"{address}"
    assert "words" not in str(place_of("postgresql://a@b/c?password=words"))
    assert address.of_login("B 1") == "postgresql://B%201@shop.example:5433/larkmoor"


@pytest.mark.parametrize("text", ["postgresql://a@b", "postgresql://a@b/c/d", "postgres://[b/c"])
def test_that_an_address_without_a_database_is_refused(text: str) -> None:
    with pytest.raises(ShopFileRefused, match=r"postgresql://login@server/database was expected"):
        place_of(text)


def test_that_a_shop_is_made_once(site: Site) -> None:
    site.shop().close()
    with pytest.raises(ShopFileRefused, match=r"a shop in .* already"):
        server.make(site.address(), "B")
    with pytest.raises(ShopFileRefused, match="can not name a bench"):
        server.make(site.address(), "b")


def test_that_what_is_missing_is_said_with_what_to_run(site: Site) -> None:
    with pytest.raises(ShopFileRefused, match=r"There is no shop in the database .* make-shop"):
        Ledger.open(site.address())
    with site.open_admin() as admin:
        admin.execute(
            sql.SQL("ALTER ROLE {} NOCREATEROLE").format(sql.Identifier(site.login("owner")))
        )
    with pytest.raises(ShopFileRefused, match=r"administrator run: CREATE ROLE .*_benches NOLOGIN"):
        server.make(site.address(), "B")
    with site.open_admin() as admin:
        assert admin.execute("SELECT to_regnamespace('chargebench')").fetchone() == (None,)


def test_that_a_login_joins_once_and_a_bench_has_one_chain(site: Site) -> None:
    site.shop().close()
    site.bench("VAN2")
    for login, bench, says in (
        ("van2", "VAN3", "already records as bench VAN2"),
        ("other", "VAN2", "a chain of bench VAN2 in this shop already"),
        ("other", "b", "can not name a bench"),
    ):
        with pytest.raises(ShopFileRefused, match=says):
            server.join(site.address(), site.login(login), bench, lambda: PASSWORD)
    with pytest.raises(ShopFileRefused, match="Only its owner"):
        server.join(site.address("van2"), site.login("other"), "X", lambda: PASSWORD)
    with pytest.raises(ShopFileRefused, match=r"A password .* expected"):
        server.join(site.address(), site.login("other"), "X", lambda: "")
    with site.open_admin() as admin:
        assert admin.execute(
            "SELECT count(*) FROM pg_roles WHERE rolname = %s", (site.login("other"),)
        ).fetchone() == (0,)
        made = admin.execute(
            "SELECT rolpassword FROM pg_authid WHERE rolname = %s", (site.login("van2"),)
        ).fetchone()
        assert made is not None
        assert made[0].startswith("SCRAM-SHA-256$")


def _further_step(connection: Connection) -> None:
    connection.exec_driver_sql("ALTER TABLE job ADD COLUMN colour TEXT")


def _bad_step(connection: Connection) -> None:
    _further_step(connection)
    connection.exec_driver_sql("no statement at all")


def test_that_only_the_owner_upgrades_and_for_all(
    worked: Site, monkeypatch: pytest.MonkeyPatch
) -> None:
    address = worked.bench("VAN2")
    assert not server.upgrade(worked.address())
    for module in (shopfile, server):
        monkeypatch.setattr(module, "STEPS", (*migrations.STEPS, _bad_step))
    with pytest.raises(Exception, match="syntax error"):
        server.upgrade(worked.address())
    for module in (shopfile, server):
        monkeypatch.setattr(module, "STEPS", (*migrations.STEPS, _further_step))
    with pytest.raises(ShopFileRefused, match=r"older chargebench.* upgrade-shop"):
        Ledger.open(address)
    with pytest.raises(ShopFileRefused, match="Only its owner"):
        server.upgrade(address)
    assert server.upgrade(worked.address())
    with Ledger.open(address) as ledger:
        assert ledger.head() == (0, bytes(32).hex())
    monkeypatch.undo()
    with pytest.raises(ShopFileRefused, match="newer chargebench"):
        Ledger.open(address)
    with pytest.raises(ShopFileRefused, match="newer chargebench"):
        server.upgrade(worked.address())


def test_that_backups_are_left_to_the_server_in_words(worked: Site) -> None:
    with Ledger.open(worked.address()) as ledger:
        assert ledger.backup_refused is None
        for ask in (ledger.backup, lambda: ledger.backup_to("copy.chargebench")):
            with pytest.raises(ShopFileRefused, match="kept on a server, and so are its backups"):
                ask()
    with pytest.raises(ShopFileRefused, match="restores its own backup"):
        restore(worked.address(), "copy.chargebench")


def test_that_a_server_that_can_not_be_found_or_refuses_is_told_apart(site: Site) -> None:
    with pytest.raises(ServerGone, match="does not answer"):
        Ledger.open(site.address(host="127.0.0.1", port=1))
    with pytest.raises(ShopFileRefused, match=r"server refuses: role .* does not exist") as said:
        Ledger.open(site.address("nobody"))
    assert not isinstance(said.value, ServerGone)


def test_that_a_server_that_forgets_what_it_confirmed_is_refused(site: Site) -> None:
    site.shop().close()
    with site.open_admin() as admin:
        admin.execute("ALTER SYSTEM SET fsync = off")
        admin.execute("SELECT pg_reload_conf()")
        try:
            with pytest.raises(ShopFileRefused, match="fsync is off"):
                _open_until_refused(site)
        finally:
            admin.execute("ALTER SYSTEM RESET fsync")
            admin.execute("SELECT pg_reload_conf()")


def _open_until_refused(site: Site) -> None:
    for _ in range(1_000):  # the server takes the setting up when it comes to it
        Ledger.open(site.address()).close()


def test_that_a_login_that_need_not_wait_for_the_disk_waits_all_the_same(site: Site) -> None:
    with site.open_admin() as admin:
        admin.execute(
            sql.SQL("ALTER ROLE {} SET synchronous_commit = off").format(
                sql.Identifier(site.login("owner"))
            )
        )
    with site.shop() as ledger, ledger._reading() as connection:
        assert connection.exec_driver_sql("SHOW synchronous_commit").scalar() == "on"


def test_that_text_sorts_by_code_points_whatever_the_server_speaks(site: Site) -> None:
    with site.shop() as ledger:
        for cylinder in ("C-2", "c-1", "C 3", "Ä-4", "C-10"):
            books.receive(ledger, 1, cylinder=f"cylinder:{cylinder}")
        places = [held.place for held in ledger.balances()]
    assert places == sorted(places)
    assert len(places) == 5


def test_that_a_character_no_server_stores_is_refused_in_words(site: Site) -> None:
    with site.shop() as ledger:
        with pytest.raises(Exception, match=r"Nothing was recorded .* \(NUL\)"):
            ledger.put_row("site", "S-1", {"name": "a\0b"}, books.BY, books.NOON)
        assert ledger.head()[0] == 0


def test_that_a_damaged_shop_is_refused_and_verify_still_speaks(worked: Site) -> None:
    with worked.open() as owner:
        owner.execute("DELETE FROM about WHERE key = 'shop'")
        owner.execute("DROP TABLE typed")
    with pytest.raises(ShopFileRefused, match="damaged: it has no typed"):
        Ledger.open(worked.address())
    with Reader.open_reading(worked.address(), guarded=False) as reader:
        assert reader.verify().ok
        with pytest.raises(ShopFileRefused, match="does not say its shop"):
            assert reader.shop_id
