"""Two benches from the command line: begin one, work apart, hand over, in any order of files."""

from collections.abc import Callable
from pathlib import Path

import pytest

from chargebench import __main__ as program
from chargebench.desk import Desk
from tests.desk import benches, shops

Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Run:
    def give(*words: object) -> tuple[int, str, str]:
        capsys.readouterr()
        code = program.main([str(word) for word in words])
        said = capsys.readouterr()
        return code, said.out, said.err

    return give


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """The shop with 400 g in C-001, closed."""
    with shops.build(tmp_path / "shop.chargebench") as desk:
        shops.receive(desk)
    return desk.path


def draw(path: Path, mass: str) -> None:
    with Desk.open(path) as desk:
        desk.act("return", {"cylinder": "C-001", "mass": mass, "to": "reclaimer"})


def held(path: Path) -> int:
    with Desk.open_reading(path) as desk:
        assert desk.verify().ok
        return shops.held(desk, "cylinder:C-001")


@pytest.mark.parametrize("shop_first", [True, False])
def test_that_two_benches_draw_from_one_cylinder_and_end_with_the_same_books(
    run: Run, shop: Path, tmp_path: Path, *, shop_first: bool
) -> None:
    begin, bench = tmp_path / "begin.chain", tmp_path / "van.chargebench"
    code, out, err = run("hand-over", "--for-bench", "D", "--out", begin, "--shop", shop)
    assert (code, err) == (0, "")
    assert "chargebench begin-bench begin.chain" in out
    code, out, err = run("begin-bench", begin, "--shop", bench)
    assert (code, out, err) == (0, f"{bench} is bench D of Larkmoor Cold.\n", "")
    draw(shop, "100 g")
    draw(bench, "150 g")
    pairs = [(shop, bench), (bench, shop)] if shop_first else [(bench, shop), (shop, bench)]
    for number, (source, target) in enumerate(pairs):
        chain = tmp_path / f"{number}.chain"
        assert run("hand-over", "--out", chain, "--shop", source)[0] == 0
        assert run("take-in", chain, "--shop", target)[0] == 0
    assert held(shop) == held(bench) == 150_000
    code, out, _ = run("take-in", tmp_path / "0.chain", "--shop", pairs[0][1])
    assert (code, out.partition(":")[2][:13]) == (0, " Nothing new:")


def test_that_chain_files_may_be_given_in_any_order(run: Run, shop: Path, tmp_path: Path) -> None:
    with Desk.open(shop) as desk, benches.further(desk, tmp_path, "D") as bench:
        for number in range(1, 4):
            shops.receive(bench, f"{number} g")
    names = []
    for first in (4, 3, 2, 1):
        names.append(tmp_path / f"from-{first}.chain")
        words = ("--bench", "D", "--first", first, "--out", names[-1], "--shop", bench.path)
        assert run("hand-over", *words)[0] == 0
    code, out, err = run("take-in", *names, "--shop", shop)
    assert (code, err) == (0, "")
    assert out.startswith("from-1.chain: Taken in of bench D: entries 1 to 4.")
    assert out.count("Nothing new") == 3
    assert held(shop) == 406_000


def test_that_a_chain_file_that_waits_for_another_is_refused_with_what_is_missing(
    run: Run, shop: Path, tmp_path: Path
) -> None:
    with Desk.open(shop) as desk, benches.further(desk, tmp_path, "D") as bench:
        shops.receive(bench, "1 g")
        bench.hand_over(tmp_path / "late.chain", only="D", first=2)
    code, out, err = run("take-in", tmp_path / "late.chain", "--shop", shop)
    assert (code, out) == (1, "")
    assert "late.chain: Entry 1 of bench D is missing" in err
    assert held(shop) == 400_000


def test_that_a_file_damaged_on_the_way_is_refused_and_nothing_changes(
    run: Run, shop: Path, tmp_path: Path
) -> None:
    with Desk.open(shop) as desk, benches.further(desk, tmp_path, "D") as bench:
        shops.receive(bench, "1 g")
        bench.hand_over(tmp_path / "half.chain")
    content = (tmp_path / "half.chain").read_bytes()
    (tmp_path / "half.chain").write_bytes(content[: len(content) // 2])
    before = shop.read_bytes()
    code, out, err = run("take-in", tmp_path / "half.chain", "--shop", shop)
    assert (code, out) == (1, "")
    assert "half.chain: The file ends in the middle" in err
    assert held(shop) == 400_000
    assert shop.read_bytes() == before


def test_that_a_bench_is_begun_only_by_a_file_made_for_it(
    run: Run, shop: Path, tmp_path: Path
) -> None:
    chain, bench = tmp_path / "plain.chain", tmp_path / "van.chargebench"
    assert run("hand-over", "--out", chain, "--shop", shop)[0] == 0
    code, out, err = run("begin-bench", chain, "--shop", bench)
    assert (code, out) == (1, "")
    assert "was not made to begin a bench" in err
    assert not bench.exists()
    code, _, err = run("hand-over", "--out", chain, "--shop", shop)
    assert (code, "is there already" in err) == (1, True)
