"""Chain files: verbatim, checkable by anybody, refused whole where anything is not as signed."""

import hashlib
import io
import json
import os
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from chargebench.errors import ChainFileRefused, ExportRefused
from chargebench.ledger import Ledger, NewEntry, chainfile
from chargebench.resource import resource
from tests.ledger import books, chains
from tests.ledger.books import BY, NOON
from tests.messages.kept import kept


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[Ledger]:
    with chains.shop(tmp_path) as ledger:
        yield ledger


@pytest.fixture
def bench(shop: Ledger) -> Iterator[Ledger]:
    """Bench D with a job of its own: entries 1 to 3."""
    with chains.further(shop, "D") as ledger:
        books.weigh_in(ledger, books.open_job(ledger), 85_000)
        yield ledger


def test_that_every_hash_can_be_checked_with_a_sha_256_tool(bench: Ledger) -> None:
    """FIPS 180-4 SHA-256 from the standard library, on the bytes of the file and nothing else."""
    lines = chains.handed(bench).read_bytes().splitlines()
    last: dict[str, bytes] = {}
    for line in lines[1:-1]:
        content = line[line.index(b'"entry":') + 8 : -1]
        entry = json.loads(line)
        of = entry["entry"][2]
        digest = hashlib.sha256(last.get(of, bytes(32)) + content).hexdigest()
        assert digest == entry["hash"]
        last[of] = bytes.fromhex(digest)
    assert {of: digest.hex() for of, digest in last.items()} == {
        of: digest for of, (_, digest) in bench.heads().items()
    }


def test_that_every_line_is_as_the_published_schema_has_it(bench: Ledger) -> None:
    schema = json.loads(resource("chain-file.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    head, *entries, end = chains.handed(bench).read_text(encoding="utf-8").splitlines()
    for line, part in ((head, "head"), (end, "end"), *((each, "entry") for each in entries)):
        jsonschema.validate(json.loads(line), schema | {"$ref": f"#/$defs/{part}"})
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(json.loads(end), schema | {"$ref": "#/$defs/head"})


def test_that_entries_are_taken_verbatim(shop: Ledger, bench: Ledger) -> None:
    chains.take(shop, chains.handed(bench))
    there = {entry.id: entry for entry in shop.entries()}
    assert all(there[entry.id] == entry for entry in bench.entries())
    assert shop.verify().ok


def test_that_a_part_of_one_chain_can_be_handed_over(shop: Ledger, bench: Ledger) -> None:
    chains.take(shop, chains.handed(bench, only="D"))
    last = bench.post(NewEntry("note", BY, NOON, {}))
    part = chains.handed(bench, only="D", first=last.number)
    assert len(part.read_bytes().splitlines()) == 3
    taken = chains.take(shop, part)
    assert (taken.taken, taken.known) == (1, 0)


@pytest.mark.parametrize(("only", "first"), [("Q", 1), ("D", 0), ("D", 99), ("D", -1)])
def test_that_what_is_not_there_is_not_handed_over(bench: Ledger, only: str, first: int) -> None:
    with pytest.raises(ChainFileRefused, match=r"entries"):
        chains.handed(bench, only=only, first=first)


def test_that_an_empty_shop_has_nothing_to_hand_over(tmp_path: Path) -> None:
    empty = Ledger.create(tmp_path / "empty.chargebench")
    with empty, pytest.raises(ChainFileRefused, match="nothing to hand over"):
        chains.handed(empty)
    assert list(tmp_path.glob("*.chain*")) == []


def test_that_no_file_is_written_over(shop: Ledger, tmp_path: Path) -> None:
    chain = chains.handed(shop)
    before = chain.read_bytes()
    with pytest.raises(ExportRefused, match="is there already"):
        shop.hand_over(chain)
    with pytest.raises(ExportRefused, match="can not be written"):
        shop.hand_over(tmp_path / "none" / "x.chain")
    assert chain.read_bytes() == before


def test_that_a_stopped_hand_over_leaves_no_file(shop: Ledger, tmp_path: Path) -> None:
    def stop(_done: int, _of: int) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        shop.hand_over(tmp_path / "x.chain", progress=stop)
    assert list(tmp_path.glob("x.chain*")) == []


def _line(at: int, change: Callable[[bytes], bytes]) -> chains.Change:
    def edit(lines: list[bytes]) -> None:
        lines[at] = change(lines[at])

    return edit


def _replace(at: int, old: bytes, new: bytes) -> chains.Change:
    def change(line: bytes) -> bytes:
        assert old in line
        return line.replace(old, new, 1)

    return _line(at, change)


def _forge(at: int, place: int, value: Any) -> chains.Change:
    def edit(lines: list[bytes]) -> None:
        def put(entry: list[Any]) -> None:
            entry[place] = value

        chains.rehashed(lines, at, put)

    return edit


def _swap(lines: list[bytes]) -> None:
    lines[3], lines[4] = lines[4], lines[3]


def _cut(lines: list[bytes]) -> None:
    del lines[8:]


def _cut_in_a_line(lines: list[bytes]) -> None:
    del lines[9:]
    lines[8] = lines[8][:60]


def _remove(lines: list[bytes]) -> None:
    del lines[5]


def _remove_and_count(lines: list[bytes]) -> None:
    """Cut off the last entry of bench D, and make head and end say so."""
    del lines[-2]
    head = json.loads(lines[0])
    head["chains"][1]["last"] -= 1
    lines[0] = json.dumps(head, separators=(",", ":")).encode() + b"\n"
    lines[-1] = b'{"end":14}\n'


def _twice(lines: list[bytes]) -> None:
    lines.insert(6, lines[5])


def _other_id(lines: list[bytes]) -> None:
    known = json.loads(lines[2])["entry"][1]
    chains.rehashed(lines, 15, lambda entry: entry.__setitem__(1, known))


# Lines 1 to 12 are those of bench B, then come 13 to 15 of bench D: handed-over, job, weigh-in.
TAMPERED: dict[str, chains.Change] = {
    "a mass changed": _replace(15, b"85000,", b"85001,"),
    "a word changed": _replace(2, b"Harbour", b"Harbor "),
    "a hash changed": _line(4, lambda line: line[:10] + b"0" * 10 + line[20:]),
    "two entries swapped": _swap,
    "an entry removed": _remove,
    "an entry twice": _twice,
    "cut after a line": _cut,
    "cut in a line": _cut_in_a_line,
    "the end cut off and counted down": _remove_and_count,
    "the end gone": _line(-1, lambda _: b""),
    "another end": _line(-1, lambda _: b'{"end":99}\n'),
    "something behind the end": _line(-1, lambda line: line + b"\n"),
    "a line end as Windows writes it": _line(3, lambda line: line[:-1] + b"\r\n"),
    "a mark of UTF-8 before it": _line(0, lambda line: b"\xef\xbb\xbf" + line),
    "a space in a line": _replace(3, b'"entry":', b'"entry": '),
    "an unknown key": _line(3, lambda line: line[:-2] + b',"note":1}\n'),
    "a key twice": _line(-1, lambda _: b'{"end":99,"end":15}\n'),
    "a byte that is not UTF-8": _replace(2, b"Harbour", b"Harb\xff\xfer"),
    "not a number": _replace(15, b"85000,", b"NaN,"),
    "a number with a point": _replace(15, b"85000,", b"85000.0,"),
    "a number in another spelling": _replace(15, b"85000,", b"8.5e4,"),
    "a hundred thousand brackets": _line(3, lambda _: b'{"entry":' + b"[" * 100_000 + b"\n"),
    "a line that is too long": _line(3, lambda _: b" " * (chainfile.LINE_MOST + 1) + b"\n"),
    "nothing in a line": _line(3, lambda _: b"\n"),
    "another shop": _line(0, lambda line: line.replace(b'"shop":"', b'"shop":"9', 1)),
    "a newer version": _replace(0, b'chain":1', b'chain":2'),
    "a newer entry": _replace(3, b'"entry":[1', b'"entry":[2'),
    "no chain named": _replace(0, b'"chains":[{', b'"chains":[],"x":[{'),
    "a number of entries nobody has": _replace(0, b'"last":12', b'"last":12000000000000'),
    "numbers from a place that is not there": _replace(0, b'"first":1,', b'"first":0,'),
    # From here on every hash fits: a forger has a SHA-256 tool too.
    "forged: an entry of the shop changed": _forge(2, 8, "somebody else"),
    "forged: a mass below nothing": _forge(15, 10, [["supplier", "outside", "R290", -1, "x"]]),
    "forged: a mass with both ends one": _forge(15, 10, [["outside", "outside", "R290", 1, "x"]]),
    "forged: a place that is none": _forge(15, 10, [["moon", "outside", "R290", 1, "x"]]),
    "forged: the id of another entry": _other_id,
    "forged: an entry of a bench not named": _forge(15, 2, "Q"),
    "forged: no moment": _forge(15, 6, "yesterday"),
    "forged: a moment without a zone": _forge(15, 6, "2026-03-02T12:00:00"),
    "forged: a job that is not there": _forge(15, 5, "0198"),
    "forged: a job number of another bench": _forge(
        14, 9, {"equipment": "E-203", "number": "B-0009"}
    ),
    "forged: a payload in another order": _forge(14, 9, {"number": "D-0001", "equipment": "E-203"}),
    "forged: a job closed without one": _forge(13, 4, "job-closed"),
    "forged: a row of no register": _forge(13, 4, "register"),
    "forged: a reversal of nothing": _forge(13, 4, "reversal"),
    "forged: a chain it took in that differs": _forge(
        13,
        9,
        {"chains": [{"bench": "B", "first": 1, "hash": "00" * 32, "last": 12}]},
    ),
    "forged: a chain nobody here has seen": _forge(
        13,
        9,
        {"chains": [{"bench": "F", "first": 1, "hash": "00" * 32, "last": 40}]},
    ),
    "forged: what it took in not said": _forge(13, 9, {}),
    "forged: a kind that can not be printed": _forge(13, 4, "a\x00b"),
    "forged: a deep payload": _forge(13, 9, json.loads('{"a":' * 60 + "1" + "}" * 60)),
    "forged: a float in the payload": _forge(13, 9, {"a": 0.5}),
    "forged: a great whole number": _forge(13, 9, {"a": 2**70}),
}  # fmt: skip


@pytest.mark.parametrize("name", TAMPERED)
def test_that_a_chain_that_was_tampered_with_is_refused_whole_in_the_words_kept(
    shop: Ledger, bench: Ledger, name: str
) -> None:
    copy = chains.changed(chains.handed(bench), TAMPERED[name])
    before = chains.state(shop)
    with pytest.raises(ChainFileRefused) as refusal:
        chains.take(shop, copy)
    assert str(refusal.value) == kept("chain_file")[name]
    assert chains.state(shop) == before
    assert shop.verify().ok


def test_that_no_words_are_kept_for_what_nobody_tries() -> None:
    assert list(kept("chain_file")) == list(TAMPERED)


def test_that_what_is_no_chain_file_is_refused(shop: Ledger, tmp_path: Path) -> None:
    (tmp_path / "empty").write_bytes(b"")
    (tmp_path / "other").write_bytes(b"eggs and flour\n")
    os.mkfifo(tmp_path / "pipe")
    said = {
        "empty": "this file is empty",
        "other": "its first line begins",
        "none": "no such file",
        "pipe": "is none",
        ".": "is none",
    }
    for name, says in said.items():
        with pytest.raises(ChainFileRefused, match=says):
            chains.take(shop, tmp_path / name)
        assert not chainfile.is_chain_file(tmp_path / name)
    assert chainfile.is_chain_file(chains.handed(shop))


def test_that_bytes_can_be_taken_as_well(shop: Ledger, bench: Ledger) -> None:
    content = chains.handed(bench).read_bytes()
    assert shop.take_over(io.BytesIO(content), BY, NOON).taken == 3


def test_that_a_disk_that_fails_on_the_way_is_told_with_the_line(
    shop: Ledger, bench: Ledger
) -> None:
    class Failing(io.BytesIO):
        def readline(self, size: int | None = -1, /) -> bytes:
            if self.tell() > 3_000:
                raise OSError(5, "Input/output error")
            return super().readline(size)

    before = chains.state(shop)
    with pytest.raises(ChainFileRefused, match=r"line \d+: .*Input/output error"):
        shop.take_over(Failing(chains.handed(bench).read_bytes()), BY, NOON)
    assert chains.state(shop) == before


def test_that_an_entry_no_line_can_hold_is_not_written(shop: Ledger) -> None:
    shop.post(NewEntry("note", BY, NOON, {"text": "x" * chainfile.LINE_MOST}))
    with pytest.raises(ChainFileRefused, match="at most"):
        chains.handed(shop)
