"""Whatever comes as a chain file is refused whole, or taken in so that everything still agrees."""

import json
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.desk import Desk
from tests.desk import benches, shops
from tests.ledger import chains


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop file, and in `d.chain` what a bench did: a job, stock work, rows, a decision."""
    made = tmp_path_factory.mktemp("chains")
    shop, bench = benches.shop_and_bench(made)
    with shop, bench:
        job = bench.open_job("E-001", "warm")
        bench.sign(job, "nameplate", shops.NAMEPLATE)
        bench.not_needed(job, "recovery", "nothing opened")
        bench.reverse(bench.sign(job, "weigh_in", shops.weigh_in(90)).id, "mistyped")
        row = shops.SAFE | {"refrigerant": "R290", "contents": "new", "serial": "1"}
        twin = [bench.save_row("cylinder", None, row) for _ in range(2)]
        bench.act("weigh", {"cylinder": "C-001", "scale": "I-001", "gross": "4000 g"})
        bench.decide("cylinder", *twin, same=True)
        bench.hand_over(made / "d.chain")
        bench.hand_over(made / "new.chain", only="D")
    return made


@contextmanager
def fresh(folder: Path) -> Iterator[Desk]:
    """The shop as it was before anything was taken in."""
    copy = shutil.copy(folder / "shop.chargebench", folder / "copy.chargebench")
    from chargebench.ledger import Ledger

    with Desk(Ledger.open(copy, backups=0)) as desk:
        yield desk


def expect_sound(desk: Desk, content: bytes) -> None:
    if not benches.try_bytes(desk, content):
        assert desk.verify().ok
        desk.all_flags()
        desk.cylinders()
        assert benches.try_bytes(desk, content) == ""


def test_that_the_untouched_file_is_taken_in(folder: Path) -> None:
    with fresh(folder) as desk:
        assert benches.try_bytes(desk, (folder / "d.chain").read_bytes()) == ""
        assert desk.verify().ok


@given(at=st.floats(0, 1), length=st.integers(0, 40), new=st.binary(max_size=40))
def test_that_any_bytes_in_place_of_others_change_nothing_or_agree(
    folder: Path, at: float, length: int, new: bytes
) -> None:
    content = (folder / "d.chain").read_bytes()
    place = round(at * len(content))
    with fresh(folder) as desk:
        expect_sound(desk, content[:place] + new + content[place + length :])


@given(content=st.binary(max_size=400) | st.text(max_size=400).map(str.encode))
def test_that_anything_at_all_is_refused(folder: Path, content: bytes) -> None:
    with fresh(folder) as desk:
        assert benches.try_bytes(desk, content)
        assert benches.try_bytes(desk, b'{"chargebench_chain":' + content)


PLAIN = (
    st.none()
    | st.booleans()
    | st.integers(-(2**70), 2**70)
    | st.text(max_size=8)
    | st.sampled_from(["yes", "no", "cylinder:C-001", "weigh_in", "B-0001", "D-0002", "register"])
)
JSON = st.recursive(
    PLAIN,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=6), inner),
    max_leaves=8,
)


@given(at=st.integers(0, 10**6), field=st.integers(0, 10), value=JSON, data=st.data())
def test_that_a_forger_with_a_sha_256_tool_breaks_nothing(
    folder: Path, at: int, field: int, value: Any, data: st.DataObject
) -> None:
    """Any field of any entry, or any part of its payload, replaced; every hash made to fit."""
    lines = (folder / "new.chain").read_bytes().splitlines(keepends=True)
    place = 1 + at % (len(lines) - 2)

    def edit(entry: list[Any]) -> None:
        if field != 9:
            entry[field] = value
            return
        inside = entry[9]
        while isinstance(inside, dict) and inside:
            key = data.draw(st.sampled_from(sorted(inside)))
            if not (isinstance(inside[key], dict) and inside[key]):
                inside[key] = value
                return
            inside = inside[key]

    bench = json.loads(lines[place])["entry"][2]
    chains.rehashed(lines, place, edit)
    assert bench == "D"
    with fresh(folder) as desk:
        expect_sound(desk, b"".join(lines))
