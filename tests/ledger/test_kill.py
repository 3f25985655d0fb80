"""A process killed at any moment loses nothing it acknowledged and leaves a shop that opens.

`CHARGEBENCH_KILLS` sets how many kills; the long series has 200.
"""

import os
import random
import subprocess
import sys
from pathlib import Path

import pytest

from chargebench.ledger import Ledger, NewEntry, Transfer
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON

KILLS = int(os.environ.get("CHARGEBENCH_KILLS", "20"))
ROOT = Path(__file__).resolve().parents[2]


def _child(file: Path, name: str, count: int) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-m", "tests.ledger.child", str(file), name, str(count)],
        stdout=subprocess.PIPE,
        cwd=ROOT,
        text=True,
    )


def _killed_at_random(file: Path, name: str, moment: random.Random) -> list[list[str]]:
    """What a child said before it was killed some time after its first words."""
    with _child(file, name, 100_000) as child:
        assert child.stdout is not None
        said = [child.stdout.readline()]
        said += [child.stdout.readline() for _ in range(moment.randrange(60))]
        with pytest.raises(subprocess.TimeoutExpired):
            child.wait(timeout=moment.random() * 0.02)
        child.kill()
        said += child.stdout.readlines()
    return [line.split() for line in said if line.endswith("\n")]


@pytest.mark.slow
def test_that_kills_lose_nothing_acknowledged_and_leave_a_shop_that_opens(tmp_path: Path) -> None:
    file, moment, posted = tmp_path / "shop.chargebench", random.Random(), []  # noqa: S311
    with Ledger.create(file) as ledger:
        books.receive(ledger, 10**11)
    for kill in range(KILLS):
        said = _killed_at_random(file, f"K{kill}", moment)
        posted += [words[1] for words in said if words[0] == "posted"]
        tried = [words[1] for words in said if words[0] == "try"]
        typed = [int(words[1]) for words in said if words[0] == "typed"]
        with Ledger.open(file, backups=0) as ledger:
            kept = {entry.id for entry in ledger.entries(kind="step-signed")}
            assert set(posted) <= kept
            if typed:
                found = ledger.typed("job", "weigh-in")
                assert found["name"] == f"K{kill}"
                assert int(found["turn"]) >= typed[-1]
            if tried:  # whoever does not know whether it was recorded posts again
                turn = int(tried[-1].split("-")[1])
                line = Transfer(CYLINDER, f"equipment:K{kill}", "R290", 1, "1 mg")
                new = NewEntry("step-signed", BY, NOON, {"turn": turn}, (line,), id=tried[-1])
                ledger.post(new)
                assert ledger.balance(f"equipment:K{kill}", "R290") == turn
            assert ledger.verify().problems == ()
    assert len(posted) > KILLS


@pytest.mark.slow
def test_that_a_kill_while_a_shop_is_made_leaves_a_whole_one_or_none(tmp_path: Path) -> None:
    moment, whole = random.Random(), 0  # noqa: S311
    code = (
        "import sys; from chargebench.ledger import Ledger; print(flush=True); "
        "[Ledger.create(f'{sys.argv[1]}/{n}.chargebench').close() for n in range(1000)]"
    )
    for kill in range(max(3, KILLS // 5)):
        folder = tmp_path / str(kill)
        folder.mkdir()
        with subprocess.Popen(
            [sys.executable, "-c", code, str(folder)], stdout=subprocess.PIPE, cwd=ROOT
        ) as child:
            assert child.stdout is not None
            child.stdout.readline()
            with pytest.raises(subprocess.TimeoutExpired):
                child.wait(timeout=moment.random() * 0.2)
            child.kill()
        for file in folder.glob("*.chargebench"):
            with Ledger.open(file, backups=0) as ledger:
                assert ledger.verify().ok
                whole += 1
    assert whole > 0


def test_that_two_processes_lose_no_update(tmp_path: Path) -> None:
    file, count = tmp_path / "shop.chargebench", 60
    with Ledger.create(file) as ledger:
        books.receive(ledger, 10**9)
    with _child(file, "one", count) as one, _child(file, "two", count) as two:
        assert one.communicate()[0].endswith("done\n")
        assert two.communicate()[0].endswith("done\n")
    with Ledger.open(file) as ledger:
        assert ledger.balance(CYLINDER, "R290") == 10**9 - 2 * count
        assert ledger.balance("equipment:one", "R290") == count
        assert ledger.head()[0] == 1 + 2 * count
        assert ledger.verify().problems == ()
