"""The manifest: what is in an export, and what was changed since."""

import hashlib
import json
from pathlib import Path

import pytest

from chargebench.errors import ExportRefused
from chargebench.reports.manifest import check_manifest, write_manifest
from tests.reports.books import content_of

NAMES = ("audit.xlsx", "checklist.pdf")


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """An export of two files with its manifest."""
    (tmp_path / "audit.xlsx").write_bytes(b"abc")
    (tmp_path / "checklist.pdf").write_bytes(b"")
    write_manifest(content_of(), tmp_path, NAMES)
    return tmp_path


def test_that_each_file_stands_with_size_and_sha256(folder: Path) -> None:
    said = json.loads((folder / "manifest.json").read_text("utf-8"))
    # FIPS 180-2, appendix B.1: the SHA-256 of "abc".
    assert said["files"][0] == {
        "name": "audit.xlsx",
        "bytes": 3,
        "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    }
    assert said["files"][1]["sha256"] == hashlib.sha256().hexdigest()


def test_that_chain_head_program_and_rule_set_are_named(folder: Path) -> None:
    said = json.loads((folder / "manifest.json").read_text("utf-8"))
    assert said["chain_head"] == {"entry": 0, "sha256": "f" * 64}
    assert said["program"] == "chargebench test"
    assert said["rule_set"]["name"] == "us-federal"
    assert said["since"] is None


def test_that_an_untouched_export_agrees(folder: Path) -> None:
    assert check_manifest(folder) == ()


def test_that_a_changed_byte_a_changed_size_and_a_missing_file_are_named(folder: Path) -> None:
    (folder / "audit.xlsx").write_bytes(b"abd")
    assert check_manifest(folder) == ("audit.xlsx was changed after the manifest was written.",)
    (folder / "audit.xlsx").write_bytes(b"abcd")
    assert check_manifest(folder) == ("audit.xlsx has 4 bytes; the manifest says 3.",)
    (folder / "audit.xlsx").unlink()
    assert check_manifest(folder) == ("audit.xlsx is missing.",)


@pytest.mark.parametrize("name", ["../secret", "/etc/hosts", "a/../../b", "C:/x", "..\\x", "."])
def test_that_a_name_that_leads_elsewhere_is_refused(folder: Path, name: str) -> None:
    one = {"name": name, "bytes": 1, "sha256": "0"}
    (folder / "manifest.json").write_text(json.dumps({"files": [one]}), "utf-8")
    with pytest.raises(ExportRefused, match="Expected a manifest"):
        check_manifest(folder)


@pytest.mark.parametrize("text", ["", "[]", "{}", '{"files": 3}', '{"files": [1]}', "[" * 200_000])
def test_that_what_is_no_manifest_is_refused(folder: Path, text: str) -> None:
    (folder / "manifest.json").write_text(text, "utf-8")
    with pytest.raises(ExportRefused, match="Expected a manifest"):
        check_manifest(folder)


def test_that_a_folder_without_one_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ExportRefused, match="Expected a manifest"):
        check_manifest(tmp_path)


def test_that_a_manifest_of_a_missing_file_is_not_written(tmp_path: Path) -> None:
    with pytest.raises(ExportRefused, match="could not be written"):
        write_manifest(content_of(), tmp_path, NAMES)
    assert list(tmp_path.iterdir()) == []
