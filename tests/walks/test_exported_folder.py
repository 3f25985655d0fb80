"""An export on a schedule: broken off and gone on with, signed, and checked on another machine."""

import json
from pathlib import Path

import pytest

from chargebench.desk import Desk, where
from chargebench.errors import ExportRefused
from chargebench.reports import open_tables, signature
from tests.walks.prompt import Prompt, refused

pytestmark = pytest.mark.slow


@pytest.fixture
def key(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    path = tmp_path / "bench" / "key.pem"
    path.parent.mkdir()
    monkeypatch.setattr(where, "bench_key", lambda: path)
    return path


def test_that_a_broken_off_export_goes_on_with_the_part_it_stopped_in(
    run: Prompt, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "out"

    def full(*_: object) -> list[Path]:
        raise ExportRefused("The tables could not be written: the disk is full.")

    with monkeypatch.context() as broken:
        broken.setattr(open_tables, "write_tables", full)
        refused(run.on_shop("export", "--out", out), "the disk is full")
    workbook = out / "audit.xlsx"
    before = workbook.stat()
    assert not (out / "manifest.json").exists()
    assert run.on_shop("export", "--out", out).code == 0
    assert workbook.stat().st_mtime_ns == before.st_mtime_ns  # not written a second time
    assert not (out / ".unfinished.json").exists()
    assert run("verify", out).code == 0
    # Other records, or a part that was changed since: written anew.
    with monkeypatch.context() as broken:
        broken.setattr(open_tables, "write_tables", full)
        refused(run.on_shop("export", "--out", out), "the disk is full")
    workbook.write_bytes(b"changed")
    assert run.on_shop("export", "--out", out).code == 0
    assert workbook.stat().st_size > 1_000
    assert run("verify", out).code == 0


def test_that_the_same_period_exported_twice_gives_the_same_tables(
    run: Prompt, tmp_path: Path
) -> None:
    for name in ("one", "two"):
        assert run.on_shop("export", "--out", tmp_path / name).code == 0
    first, second = (
        {each["name"]: each["sha256"] for each in json.loads(text)["files"]}
        for text in (
            (tmp_path / name / "manifest.json").read_text("utf-8") for name in ("one", "two")
        )
    )
    assert first.keys() == second.keys()
    differ = {name for name in first if first[name] != second[name]}
    # Papers and calendar say when they were made; no table does.
    assert not {name for name in differ if name.endswith((".csv", ".xlsx", ".sqlite"))}
    assert not [name for name in differ if name.startswith("tables/")]


def test_that_a_signed_export_is_checked_with_the_public_key_alone(
    run: Prompt, tmp_path: Path, key: Path
) -> None:
    out = tmp_path / "out"
    assert run.on_shop("export", "--sign", "--out", out).code == 0
    trusted = tmp_path / "shop.pem"
    trusted.write_bytes((out / signature.PUBLIC_KEY).read_bytes())
    key.unlink()  # another machine has neither key nor ledger
    said = run("verify", out, "--key", trusted)
    assert said.code == 0
    assert "Every file" in said.out
    assert str(trusted) in said.out
    table = out / "tables" / "transfers.csv"
    table.write_bytes(table.read_bytes().replace(b"R290", b"R600", 1))
    refused(run("verify", out, "--key", trusted), "tables/transfers.csv")


def test_that_an_unsigned_export_says_what_that_leaves_open(run: Prompt, tmp_path: Path) -> None:
    with Desk.open(run.shop) as desk:
        desk.export(tmp_path / "out")
    said = run("verify", tmp_path / "out")
    assert said.code == 0
    assert "not signed" in said.out
    (tmp_path / "key.pem").write_text("no key", encoding="utf-8")
    refused(run("verify", tmp_path / "out", "--key", tmp_path / "key.pem"), "manifest.sig")
    refused(run("verify", tmp_path), "Expected a manifest of an export")
