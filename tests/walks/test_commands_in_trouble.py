"""Commands about backups and damaged files: rescue, restore, a disk that is only read."""

import shutil
from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.ledger import backup, backups
from tests.disks import small_disk
from tests.walks.prompt import Prompt, refused

pytestmark = pytest.mark.slow


def test_that_a_damaged_shop_is_rescued_into_a_new_file(run: Prompt, tmp_path: Path) -> None:
    content = run.shop.read_bytes()
    run.shop.write_bytes(content[: len(content) * 4 // 5])
    refused(run.on_shop("verify"), "damaged", "chargebench rescue")
    out = tmp_path / "rescued.chargebench"
    said = run.on_shop("rescue", "--out", out)
    assert "entries were read" in said.out
    assert (said.code == 0) == (said.err == "")
    assert ("can not be read" in said.err) == (said.code == 1)
    found = run("verify", "--shop", out)
    assert (found.code == 0) == (said.code == 0)
    refused(run.on_shop("rescue", "--out", out), "is there already")


def test_that_backups_are_listed_and_going_back_says_what_it_leaves_out(run: Prompt) -> None:
    assert run.on_shop("backup").code == 0
    (copy,) = backups(run.shop)
    entries = backup.made(copy)[1]
    with Desk.open(run.shop) as desk:
        desk.save_row("site", "L-900", {"name": "New kitchen"})
    said = run.on_shop("restore")
    assert said.code == 0
    assert f"{copy}: " in said.out
    assert f", {entries} entries, {copy.stat().st_size} bytes" in said.out
    said = run.on_shop("restore", copy)
    assert (said.code, said.err) == (0, "")
    assert f"The copy holds {entries} entries. Going back leaves out 1 entries" in said.out
    assert run.on_shop("verify").code == 0


def test_that_records_on_a_read_only_disk_are_verified_and_exported(
    run: Prompt, tmp_path: Path
) -> None:
    with small_disk(tmp_path / "disk", "8m") as disk:
        shop = shutil.copy(run.shop, disk.folder / "shop.chargebench")
        disk.read_only()
        assert run("verify", "--shop", shop).code == 0
        refused(run("backup", "--shop", shop), "can not be written to. Move it")
        out = tmp_path / "rescued.chargebench"
        assert run("rescue", "--shop", shop, "--out", out).code == 0
        disk.take_away()
        refused(run("verify", "--shop", shop), "there is none at")
