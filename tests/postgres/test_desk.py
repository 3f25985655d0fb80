"""A shop on a server from the desk and the command line, as from a file."""

import json
from pathlib import Path

import pytest

from chargebench.__main__ import main
from chargebench.commands import server as commands
from chargebench.desk import Desk
from chargebench.errors import NotAllowed, ShopFileRefused
from chargebench.resource import sample_jobs
from tests.postgres.server import Site

MAKE = ("--name", "Larkmoor Refrigeration", "--person", "N. Okafor")


def _main(site: Site, *arguments: str, login: str = "owner") -> int:
    name, *rest = arguments
    return main([name, "--shop", site.address(login).full, *rest])


@pytest.fixture
def made(site: Site, monkeypatch: pytest.MonkeyPatch) -> Site:
    """A shop made by the commands, with a bench and an officer."""
    monkeypatch.setenv(commands.PASSWORD, "only for tests")
    assert _main(site, "make-shop", *MAKE) == 0
    assert _main(site, "join-shop", "--login", site.login("van2"), "--bench", "VAN2") == 0
    assert _main(site, "join-shop", "--login", site.login("review"), "--officer") == 0
    return site


def test_that_a_shop_made_by_command_takes_in_a_job_and_is_exported_by_an_officer(
    made: Site, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = json.loads(min(sample_jobs().glob("*.json")).read_text("utf-8"))
    del content["shop"]  # this shop has its own, and its own first person
    content["register"]["person"]["P-01"] = {"name": "N. Okafor", "role": "shop"}
    file = tmp_path / "first.json"
    file.write_text(json.dumps(content), "utf-8")
    assert _main(made, "take-in", str(file), login="van2") == 0
    assert _main(made, "verify", login="review") == 0
    assert _main(made, "export", "--out", str(tmp_path), login="review") == 0
    manifest = json.loads((tmp_path / "manifest.json").read_text("utf-8"))
    assert set(manifest["chain_heads"]) == {"B", "VAN2"}
    last = manifest["chain_heads"]["VAN2"]
    head = f"VAN2:{last['entry']}:{last['sha256']}"
    assert manifest["chain_head"] == last
    assert _main(made, "verify", "--head", head, login="review") == 0
    assert _main(made, "verify", "--head", head.replace(":", ":1", 1), login="review") == 1
    said = capsys.readouterr()
    assert "only for tests" not in said.out + said.err


def test_that_an_officer_looks_at_everything_and_records_nothing(made: Site) -> None:
    with Desk.open(made.address("review")) as desk:
        assert desk.shop["name"] == "Larkmoor Refrigeration"
        assert desk.verify().ok
        assert desk.shared
        with pytest.raises(NotAllowed, match="only to be read"):
            desk.save_row("site", None, {"name": "Pier"})


def test_that_a_bench_sees_what_another_recorded(made: Site) -> None:
    site = {"name": "Pier", "address": "Quay 1"}
    with Desk.open(made.address("van2")) as van, Desk.open(made.address()) as owner:
        owner.refresh()
        assert owner.answers("site", "L-VAN2-001").text("name") == ""
        van.person = owner.person
        row = van.save_row("site", None, site)
        assert row == "L-VAN2-001"  # no other bench makes that id
        assert owner.next_id("site") == "L-001"
        assert owner.refresh()
        assert not owner.refresh()
        assert owner.answers("site", "L-VAN2-001").text("name") == "Pier"
        assert not owner.server_gone


def test_that_a_file_is_asked_for_where_only_a_file_will_do(
    made: Site, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert _main(made, "backup") == 1
    assert _main(made, "restore", "copy.chargebench") == 1
    assert _main(made, "rescue", "--out", str(tmp_path / "new.chargebench")) == 1
    assert _main(made, "begin-bench", "some.chain") == 1
    assert _main(made, "sample") == 1
    assert capsys.readouterr().err.count("server") >= 5


def test_that_commands_of_the_owner_say_what_they_expect(
    made: Site, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    assert _main(made, "make-shop", *MAKE) == 1
    assert _main(made, "upgrade-shop") == 0
    monkeypatch.delenv(commands.PASSWORD)
    assert _main(made, "join-shop", "--login", made.login("new"), "--bench", "NEW") == 1
    assert main(["upgrade-shop", "--shop", str(tmp_path / "shop.chargebench")]) == 1
    with pytest.raises(SystemExit):
        main(["verify", "--shop", "postgresql://a:secret@b"])
    said = capsys.readouterr()
    both = said.out + said.err
    for words in ("a shop in", "was up to date", commands.PASSWORD, "address of the shop's owner"):
        assert words in both
    assert "secret" not in both


def test_that_a_shop_on_a_server_has_no_file(made: Site) -> None:
    with Desk.open(made.address("van2")) as desk:
        assert desk.folder.is_dir()
        with pytest.raises(ShopFileRefused, match="kept on a server"):
            assert desk.path
