"""Commands under a person: who is named, who may, and the passphrase asked on a terminal."""

import getpass
import os
import select
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from chargebench import __main__ as program
from chargebench.desk import Desk
from chargebench.resource import sample_jobs
from tests.desk import shops

pytestmark = pytest.mark.slow
PIN, WAIT_SECONDS = "73915", 60
FILE = min(sample_jobs().glob("*.json"))


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """A shop whose owner has a PIN, with a technician who has none and an officer."""
    path = tmp_path / "shop.chargebench"
    owner = {"name": "A. Lindqvist", "role": "shop"}
    with Desk.create(path, shops.SHOP, owner, person_id="P-91") as desk:
        desk.save_row("person", "P-92", {"name": "L. Brandvold", "role": "technician"})
        desk.save_row("person", "P-93", {"name": "D. Maas", "role": "officer"})
        desk.set_passphrase("P-91", PIN)
    return path


def _entries(shop: Path) -> list[tuple[str, str]]:
    with Desk.open_reading(shop) as desk:
        return [(entry.kind, entry.by) for entry in desk.entries()]


def _run(shop: Path, *words: object) -> int:
    return program.main([*(str(word) for word in words), "--shop", str(shop)])


@pytest.mark.parametrize(
    ("by", "says"),
    [
        ("L. Brandvold", "L. Brandvold is a technician"),
        ("p. nobody", "Expected one of P-91 (A. Lindqvist)"),
        ("P-93", "D. Maas is an officer"),
        ("P-91", "the signature of A. Lindqvist takes a passphrase"),
    ],
)
def test_that_only_who_may_takes_in(
    shop: Path, capsys: pytest.CaptureFixture[str], by: str, says: str
) -> None:
    before = _entries(shop)
    assert _run(shop, "take-in", "--by", by, FILE) == 1
    assert says in capsys.readouterr().err
    assert _entries(shop) == before


@pytest.mark.skipif(not hasattr(os, "openpty"), reason="Windows has no such terminal")
def test_that_a_terminal_is_asked_and_shows_nothing(shop: Path) -> None:
    command = [sys.executable, "-m", "chargebench", "take-in", "--by", "a. lindqvist", str(FILE)]
    ours, theirs = os.openpty()
    with subprocess.Popen(
        [*command, "--shop", str(shop)],
        stdin=theirs, stdout=theirs, stderr=theirs, start_new_session=True,
        env={**os.environ, "PYTHONUNBUFFERED": "1"},
    ) as running:  # fmt: skip
        os.close(theirs)
        shown = _until(ours, b"A. Lindqvist: ")
        os.write(ours, b"0000\n")
        shown += _until(ours, b"not the passphrase.") + _until(ours, b"A. Lindqvist: ")
        os.write(ours, f"{PIN}\n".encode())
        shown += _until(ours, b"entries recorded.")
    os.close(ours)
    assert running.returncode == 0, shown
    assert PIN.encode() not in shown
    assert b"0000" not in shown
    assert ("taken-in", "P-91") in _entries(shop)


def _until(terminal: int, words: bytes) -> bytes:
    shown = b""
    while words not in shown:
        assert select.select([terminal], [], [], WAIT_SECONDS)[0], shown
        shown += os.read(terminal, 1024)
    return shown


def test_that_the_scheduled_export_and_verifying_ask_nothing(
    shop: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(getpass, "getpass", lambda *_: pytest.fail("asked"))
    copy = tmp_path / "copy.chargebench"
    shutil.copy(shop, copy)
    before = _entries(copy)
    assert _run(copy, "export", "--out", tmp_path / "out") == 0
    assert _run(copy, "verify") == 0
    assert _run(copy, "backup") == 0
    assert _entries(copy) == before
