"""Every command: what it does, its exit code, and what it says on which stream."""

import json
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

import chargebench
from chargebench import __main__ as program
from chargebench.desk import Desk
from chargebench.resource import sample_jobs
from tests.reports.books import sheet_rows
from tests.walks.prompt import Prompt, Said, refused

pytestmark = pytest.mark.slow


def test_that_sample_without_a_window_leaves_everything_in_the_folder_named(
    run: Prompt, tmp_path: Path
) -> None:
    out = tmp_path / "left"
    said = run("sample", "--headless", "--out", out)
    assert (said.code, said.err) == (0, "")
    assert {"audit.xlsx", "checklist.pdf", "manifest.json"} <= {each.name for each in out.iterdir()}
    assert str(out) in said.out
    assert "all agrees" in said.out
    assert "STOP" in said.out.upper()
    assert "over nameplate" in said.out.lower()


def test_that_sample_again_into_the_same_folder_does_it_again(run: Prompt, tmp_path: Path) -> None:
    for _ in range(2):
        assert run("sample", "--headless", "--out", tmp_path / "left").code == 0


def test_that_sample_without_a_display_says_so_and_does_the_same(
    run: Prompt, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(program, "has_display", lambda: False)
    said = run("sample", "--out", tmp_path / "left")
    assert said.code == 0
    assert said.out.startswith("There is no display here, so no window")
    assert (tmp_path / "left" / "audit.xlsx").exists()


def test_that_an_export_keeps_to_its_days(run: Prompt, tmp_path: Path) -> None:
    days = ("--from", "2026-10-01", "--to", "2026-10-31")
    said = run.on_shop("export", *days, "--out", tmp_path / "october")
    assert (said.code, said.out, said.err) == (0, "", "")  # a schedule mails whatever is said
    rows = sheet_rows(tmp_path / "october" / "audit.xlsx", "Transfers")
    assert {row["Month"] for row in rows} == {"2026-10"}
    listed = json.loads((tmp_path / "october" / "manifest.json").read_text(encoding="utf-8"))
    assert "audit.xlsx" in json.dumps(listed)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("export",), "--out"),
        (("export", "--out", "x", "--from", "25.11.2026"), "year-month-day"),
        (("export", "--out", "x", "--to", "2026-02-30"), "year-month-day"),
        (("take-in",), "FILE"),
        (("rescue",), "--out"),
        (("weigh",), "weigh"),
        (("verify", "--loudly"), "--loudly"),
    ],
    ids=lambda each: " ".join(each) if isinstance(each, tuple) else "",
)
def test_that_wrong_words_are_refused_with_what_was_expected(
    run: Prompt, words: tuple[str, ...], says: str
) -> None:
    said = run(*words)
    refused(said, "usage: chargebench", says, code=2)
    assert said.out == ""


def test_that_the_version_and_the_commands_are_told(run: Prompt) -> None:
    assert run("--version") == Said(0, f"{chargebench.__version__}\n", "")
    said = run("--help")
    assert said.code == 0
    for command in ("sample", "take-in", "export", "verify", "backup", "restore"):
        assert command in said.out


def test_that_a_job_file_taken_in_before_is_refused(run: Prompt) -> None:
    known = max(sample_jobs().glob("*.json"))
    with Desk.open(run.shop) as desk:
        before = desk.ledger.head()
    said = run.on_shop("take-in", known)
    refused(said, f"{known.name} was taken in before")
    with Desk.open(run.shop) as desk:
        assert desk.ledger.head() == before


def test_that_a_new_job_file_is_taken_in_and_then_known(run: Prompt, tmp_path: Path) -> None:
    with_visit = json.loads(
        (sample_jobs() / "01-bottle-cooler-r600a.json").read_text(encoding="utf-8")
    )
    with_visit["about"] = "The same cooler looked at once more."
    again = tmp_path / "again.json"
    again.write_text(json.dumps(with_visit), encoding="utf-8")
    said = run.on_shop("take-in", again)
    assert said.code == 0, said.err
    assert said.out.startswith("again.json: ")
    refused(run.on_shop("take-in", again), "again.json was taken in before")
    assert run.on_shop("verify").code == 0


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"", "empty"),
        (b'{"chargebench_job": 1, "job": {', "cut short"),
        (b'{"chargebench_job": 1, "colour": "red"}', "colour"),
        (b"\xff\xfe\x00", "UTF-8"),
    ],
    ids=["empty", "truncated", "unknown field", "not text"],
)
def test_that_a_bad_job_file_is_refused_whole(
    run: Prompt, tmp_path: Path, content: bytes, says: str
) -> None:
    bad = tmp_path / "again.json"
    bad.write_bytes(content)
    with Desk.open(run.shop) as desk:
        before = desk.ledger.head()
    refused(run.on_shop("take-in", bad), "again.json: ", says)
    with Desk.open(run.shop) as desk:
        assert desk.ledger.head() == before


def test_that_a_job_file_that_is_not_there_is_refused(run: Prompt, tmp_path: Path) -> None:
    said = run.on_shop("take-in", tmp_path / "none.json")
    refused(said, "none.json")
    assert said.out == ""


def test_that_verify_says_what_it_checked(run: Prompt) -> None:
    said = run.on_shop("verify")
    assert (said.code, said.err) == (0, "")
    assert "entries were read" in said.out


def test_that_the_shop_may_be_named_before_the_command(run: Prompt) -> None:
    assert run("--shop", run.shop, "verify").code == 0


def test_that_a_backup_is_restored_with_what_came_after_kept_aside(run: Prompt) -> None:
    said = run.on_shop("backup")
    assert said.code == 0
    copy = Path(said.out.partition(" is in the backup ")[2].strip().removesuffix("."))
    assert copy.exists()
    assert run.on_shop("backup") == said  # nothing changed since
    with Desk.open(run.shop) as desk:
        before = desk.ledger.head()
        desk.save_row("site", None, {"name": "Harbour Kitchen annex"})
        after = desk.ledger.head()
    said = run.on_shop("restore", copy)
    assert said.code == 0, said.err
    with Desk.open(run.shop) as desk:
        assert desk.ledger.head() == before
    aside = Path(said.out.partition("is kept as ")[2].strip().removesuffix("."))
    with Desk.open(aside) as desk:
        assert desk.ledger.head() == after


@pytest.mark.parametrize(
    "words",
    [("verify",), ("backup",), ("export", "--out", "x"), ("take-in", "x.json")],
    ids=lambda words: words[0],
)
def test_that_a_shop_that_is_not_there_is_refused_and_not_made(
    run: Prompt, tmp_path: Path, words: tuple[str, ...]
) -> None:
    none = tmp_path / "none.chargebench"
    refused(run(*words, "--shop", none), "there is none", str(none))
    assert not none.exists()


@pytest.mark.parametrize("kind", ["text", "empty", "other database", "folder"])
@pytest.mark.parametrize(
    "words",
    [("verify",), ("backup",), ("export", "--out", "x"), ("take-in", "x.json"), ("restore",)],
    ids=lambda words: words[0],
)
def test_that_a_file_that_is_no_shop_is_refused_and_left(
    run: Prompt, tmp_path: Path, words: tuple[str, ...], kind: str
) -> None:
    other = tmp_path / "other.chargebench"
    if kind == "folder":
        other.mkdir()
    elif kind == "other database":
        with sqlite3.connect(other) as made:
            made.execute("CREATE TABLE birds (name TEXT)")
        made.close()
    else:
        other.write_bytes(b"" if kind == "empty" else b"eggs and flour " * 300)
    before = None if kind == "folder" else other.read_bytes()
    command = (*words, other) if words == ("restore",) else (*words, "--shop", other)
    said = run.on_shop(*command) if words == ("restore",) else run(*command)
    refused(said, "chargebench: ", str(other))
    assert before is None or other.read_bytes() == before


def test_that_a_folder_that_can_not_be_made_is_refused(run: Prompt, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way", encoding="utf-8")
    said = run.on_shop("export", "--out", tmp_path / "file" / "out")
    refused(said, "Expected a folder")
    assert said.out == ""


def test_that_the_program_runs_as_a_module(run: Prompt) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "chargebench", "verify", "--shop", str(run.shop)],
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
        timeout=120,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "entries were read" in done.stdout
