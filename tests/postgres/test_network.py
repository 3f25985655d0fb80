"""The server goes away in the middle: what was signed stands once or not at all, and it is said."""

import socket
import threading
from collections.abc import Iterator
from contextlib import suppress

import pytest
from psycopg.conninfo import conninfo_to_dict

from chargebench.errors import AlreadyRecorded, ServerGone
from chargebench.ledger import Ledger, NewEntry, Reader, Transfer
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON
from tests.postgres.server import Site

COMMIT = b"COMMIT\x00"  # whole, for READ COMMITTED is not meant


class Cable:
    """A line to the server that can be cut when certain words pass through it."""

    def __init__(self, site: Site) -> None:
        at = conninfo_to_dict(site.admin)
        self._server = (str(at["host"]), int(str(at.get("port") or 5432)))
        self._listener = socket.create_server(("127.0.0.1", 0))
        self._ends: list[socket.socket] = []
        self.cut_at = b""  # words from the bench after, or before, which the line is cut
        self.forwarded = False  # whether the server still gets these words
        self.stays_cut = False  # whether a new line can not be made either
        self.cuts = 0
        self._swallows = False
        threading.Thread(target=self._serve, daemon=True).start()

    @property
    def port(self) -> int:
        """Where benches connect."""
        return int(self._listener.getsockname()[1])

    def close(self) -> None:
        """Take the cable away."""
        self._listener.close()
        self.pull()

    def pull(self) -> None:
        """Cut every line."""
        for end in self._ends:
            with suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)

    def _serve(self) -> None:
        while True:
            try:
                bench, _ = self._listener.accept()
            except OSError:
                return
            if self.stays_cut and self.cuts:
                bench.close()
                continue
            server = self._to_server()
            self._ends += [bench, server]
            for one, other, watched in ((bench, server, True), (server, bench, False)):
                threading.Thread(
                    target=self._carry, args=(one, other, watched), daemon=True
                ).start()

    def _to_server(self) -> socket.socket:
        host, port = self._server
        if not host.startswith("/"):
            return socket.create_connection((host, port))
        server = socket.socket(socket.AF_UNIX)
        server.connect(f"{host}/.s.PGSQL.{port}")
        return server

    def _carry(self, one: socket.socket, other: socket.socket, watched: bool) -> None:
        with suppress(OSError):
            while words := one.recv(65_536):
                if not watched and self._swallows:
                    self._swallows = False
                    break
                if watched and self.cut_at and self.cut_at in words:
                    self.cut_at = b""
                    self.cuts += 1
                    if not self.forwarded:
                        break
                    self._swallows = True  # the server does it, and its answer is lost
                other.sendall(words)
        for end in (one, other):
            with suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)


@pytest.fixture
def cable(site: Site) -> Iterator[Cable]:
    made = Cable(site)
    yield made
    made.close()


@pytest.fixture
def ledger(site: Site, cable: Cable) -> Iterator[Ledger]:
    """The shop opened through the cable, with a delivery recorded."""
    with site.shop() as shop:
        books.receive(shop)
    with Ledger.open(site.address(host="127.0.0.1", port=cable.port)) as through:
        yield through


def _new() -> NewEntry:
    line = Transfer(CYLINDER, "equipment:E-203", "R290", 1_000, "1 g")
    return NewEntry("step-signed", BY, NOON, {"step": "weigh-in"}, (line,))


def _post_together(ledger: Ledger, several: list[NewEntry]) -> None:
    with ledger.together():
        for new in several:
            ledger.post(new)


def _standing(site: Site) -> list[str]:
    """Ids of what was signed, asked over another line; and all must agree."""
    with Reader.open_reading(site.address()) as reader:
        ids = [entry.id for entry in reader.entries(kind="step-signed")]
        assert reader.verify().problems == ()
        assert reader.balance(CYLINDER, "R290") == 4_650_000 - 1_000 * len(ids)
        return ids


@pytest.mark.parametrize("forwarded", [False, True], ids=["before", "after"])
@pytest.mark.parametrize("words", [b"BEGIN", b"INSERT INTO transfer", COMMIT])
def test_that_a_line_cut_once_records_an_entry_once(
    site: Site, cable: Cable, ledger: Ledger, words: bytes, forwarded: bool
) -> None:
    cable.cut_at, cable.forwarded = words, forwarded
    new = _new()
    assert ledger.post(new).id == new.id
    assert cable.cuts == 1
    assert not ledger.server_gone
    assert not ledger.unsettled
    assert _standing(site) == [new.id]


@pytest.mark.parametrize("words", [b"BEGIN", b"INSERT INTO transfer"])
def test_that_a_line_that_stays_cut_before_the_end_records_nothing(
    site: Site, cable: Cable, ledger: Ledger, words: bytes
) -> None:
    cable.cut_at, cable.stays_cut = words, True
    with pytest.raises(ServerGone, match=r"Nothing was recorded .* in a file of its own"):
        ledger.post(_new())
    assert ledger.server_gone
    assert not ledger.unsettled
    assert _standing(site) == []
    cable.stays_cut = False
    ledger.post(_new())
    assert not ledger.server_gone
    assert len(_standing(site)) == 1


@pytest.mark.parametrize("forwarded", [False, True], ids=["before", "after"])
def test_that_a_line_cut_at_the_end_says_that_it_is_not_known_and_asks_later(
    site: Site, cable: Cable, ledger: Ledger, forwarded: bool
) -> None:
    cable.cut_at, cable.stays_cut, cable.forwarded = COMMIT, True, forwarded
    first = _new()
    with pytest.raises(ServerGone, match="is not known yet"):
        ledger.post(first)
    assert ledger.unsettled
    with pytest.raises(ServerGone, match="is not known yet"):  # still cut
        ledger.post(_new())
    cable.stays_cut = False
    second = _new()  # signed again by the person, so under another id
    if forwarded:
        with pytest.raises(AlreadyRecorded, match=r"stands as entry 2 of bench B\. Nothing was"):
            ledger.post(second)
        assert _standing(site) == [first.id]
    else:
        ledger.post(second)
        assert _standing(site) == [second.id]
    assert not ledger.unsettled


@pytest.mark.parametrize("forwarded", [False, True], ids=["before", "after"])
def test_that_one_can_ask_which_it_was(
    site: Site, cable: Cable, ledger: Ledger, forwarded: bool
) -> None:
    cable.cut_at, cable.stays_cut, cable.forwarded = COMMIT, True, forwarded
    new = _new()
    with pytest.raises(ServerGone):
        ledger.post(new)
    with pytest.raises(ServerGone):
        ledger.settle()
    cable.stays_cut = False
    entry = ledger.settle()
    assert _standing(site) == ([new.id] if forwarded else [])
    assert (entry.id if entry else None) == (new.id if forwarded else None)
    assert ledger.post(new).id == new.id
    assert _standing(site) == [new.id]


def test_that_what_was_recorded_together_stands_or_falls_together(
    site: Site, cable: Cable, ledger: Ledger
) -> None:
    cable.cut_at = COMMIT
    several = [_new() for _ in range(3)]
    with pytest.raises(ServerGone, match="is not known yet"):
        _post_together(ledger, several)
    ledger.post(_new())
    assert len(_standing(site)) == 1
    cable.cut_at, cable.forwarded = COMMIT, True
    with pytest.raises(ServerGone, match="is not known yet"):
        _post_together(ledger, several)
    with pytest.raises(AlreadyRecorded, match="stands as entry"):
        ledger.post(_new())
    assert len(_standing(site)) == 4


def test_that_a_line_cut_while_a_bench_is_idle_is_not_noticed(
    site: Site, cable: Cable, ledger: Ledger
) -> None:
    cable.pull()
    assert ledger.head()[0] == 1
    cable.pull()
    ledger.post(_new())
    assert len(_standing(site)) == 1


def test_that_a_connection_the_server_ends_in_the_middle_records_once(site: Site) -> None:
    with site.shop() as shop, site.open_admin() as admin:
        books.receive(shop)
        # Whoever writes to this table for the first time has its connection ended by the server.
        admin.execute("CREATE SEQUENCE once")
        admin.execute("GRANT USAGE ON once TO PUBLIC")
        admin.execute(
            "CREATE FUNCTION end_it() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS "
            "'BEGIN IF nextval(''chargebench.once'') = 1 THEN "
            "PERFORM pg_terminate_backend(pg_backend_pid()); END IF; RETURN NULL; END'"
        )
        admin.execute("CREATE TRIGGER end_it AFTER INSERT ON transfer EXECUTE FUNCTION end_it()")
        new = _new()
        assert shop.post(new).id == new.id
        assert admin.execute("SELECT last_value FROM once").fetchone() == (2,)
        assert _standing(site) == [new.id]


def test_that_a_server_that_is_gone_at_opening_is_said_so(site: Site, cable: Cable) -> None:
    site.shop().close()
    cable.stays_cut, cable.cuts = True, 1
    with pytest.raises(ServerGone, match=r"does not answer.*go on in a file of its own"):
        Ledger.open(site.address(host="127.0.0.1", port=cable.port))
