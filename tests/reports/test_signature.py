"""The signature of an export: RFC 8032's own test vector, and what each change comes to."""

from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

from chargebench.errors import ExportRefused
from chargebench.reports.signature import PUBLIC_KEY, SIGNATURE, bench_key, check, sign

MANIFEST = b'{"chargebench_manifest": 1, "files": []}\n'


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "export"
    made.mkdir()
    (made / "manifest.json").write_bytes(MANIFEST)
    return made


def test_that_a_signature_is_the_one_of_the_standard(tmp_path: Path) -> None:
    # RFC 8032, 7.1, test 2: a secret key, the one-byte message 72, and the signature.
    secret = bytes.fromhex("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
    expected = bytes.fromhex(
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
        "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"
    )
    (tmp_path / "manifest.json").write_bytes(b"\x72")
    signature, _ = sign(tmp_path, Ed25519PrivateKey.from_private_bytes(secret))
    assert signature.read_bytes() == expected


def test_that_another_machine_checks_with_the_public_key_alone(
    folder: Path, tmp_path: Path
) -> None:
    sign(folder, bench_key(tmp_path / "key.pem"))
    trusted = tmp_path / "had-from-the-shop.pem"
    trusted.write_bytes((folder / PUBLIC_KEY).read_bytes())
    found = check(folder, trusted)
    assert found is not None
    assert found.good
    assert str(trusted) in found.says
    beside = check(folder)
    assert beside is not None
    assert beside.good
    assert "who signed is shown only by a key had from the shop itself" in beside.says


def test_that_a_changed_manifest_or_another_key_is_told(folder: Path, tmp_path: Path) -> None:
    sign(folder, bench_key(tmp_path / "key.pem"))
    trusted = tmp_path / "trusted.pem"
    trusted.write_bytes((folder / PUBLIC_KEY).read_bytes())
    (folder / "manifest.json").write_bytes(MANIFEST.replace(b"1", b"2"))
    changed = check(folder, trusted)
    assert changed is not None
    assert not changed.good
    # Somebody signs the changed folder anew with a key of their own: only the trusted key tells.
    sign(folder, bench_key(tmp_path / "other.pem"))
    forged, beside = check(folder, trusted), check(folder)
    assert forged is not None
    assert beside is not None
    assert (forged.good, beside.good) == (False, True)


def test_that_a_folder_without_signature_is_told_only_where_one_is_asked_for(
    folder: Path, tmp_path: Path
) -> None:
    assert check(folder) is None
    asked = check(folder, tmp_path / "some.pem")
    assert asked is not None
    assert not asked.good


def test_that_the_bench_keeps_its_key_for_itself(tmp_path: Path) -> None:
    path = tmp_path / "key.pem"
    first = bench_key(path)
    again = bench_key(path)
    assert first.private_bytes_raw() == again.private_bytes_raw()
    assert path.stat().st_mode & 0o077 == 0


@pytest.mark.parametrize("content", [b"", b"no key", b"-----BEGIN PUBLIC KEY-----\n"])
def test_that_what_is_no_key_is_refused(folder: Path, tmp_path: Path, content: bytes) -> None:
    bad = tmp_path / "bad.pem"
    bad.write_bytes(content)
    with pytest.raises(ExportRefused, match="Expected an Ed25519 private key"):
        bench_key(bad)
    (folder / SIGNATURE).write_bytes(bytes(64))
    with pytest.raises(ExportRefused, match="Expected an Ed25519 public key"):
        check(folder, bad)
