"""A bench's detached Ed25519 signature over the manifest of an export, and its check elsewhere.

The manifest holds the SHA-256 of every file and the head of the chain, so one signature stands for
the folder. Any tool for RFC 8032 keys checks it: the signature is the 64 bytes themselves, the
public key is PEM (RFC 8410).
"""

import os
from dataclasses import dataclass
from pathlib import Path

from cryptography.exceptions import InvalidSignature, UnsupportedAlgorithm
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    PublicFormat,
    load_pem_private_key,
    load_pem_public_key,
)

from chargebench.errors import ExportRefused
from chargebench.reports.manifest import NAME as MANIFEST

SIGNATURE, PUBLIC_KEY = "manifest.sig", "bench-key.pem"
_LENGTH = 64  # bytes of an Ed25519 signature (RFC 8032, 5.1.6)
_KEY_MOST = 10_000  # bytes of a PEM file that can be a key


@dataclass(frozen=True, slots=True)
class Checked:
    """What a signature was found to be worth."""

    good: bool
    says: str


def bench_key(path: Path) -> Ed25519PrivateKey:
    """The bench's own key, made at first need and readable by this person alone.

    Raises
    ------
    ExportRefused
        The file is no such key, or can not be read or written.
    """
    try:
        if path.exists():
            key = load_pem_private_key(path.read_bytes(), password=None)
            if isinstance(key, Ed25519PrivateKey):
                return key
            raise ExportRefused(f"Expected an Ed25519 private key in {path}.")
        made = Ed25519PrivateKey.generate()
        pem = made.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())
        handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(pem)
            file.flush()
            os.fsync(file.fileno())
    except OSError as problem:
        raise ExportRefused(
            f"The bench's key {path} can not be used ({problem.strerror or problem}). "
            "Export without signature, or mend its folder."
        ) from problem
    except (ValueError, TypeError, UnsupportedAlgorithm) as problem:
        raise ExportRefused(f"Expected an Ed25519 private key in {path}.") from problem
    return made


def sign(folder: Path, key: Ed25519PrivateKey) -> tuple[Path, Path]:
    """Sign a folder's manifest; paths of the signature and of the public key beside it.

    Raises
    ------
    ExportRefused
        The folder has no manifest, or can not be written.
    """
    signature, public = folder / SIGNATURE, folder / PUBLIC_KEY
    try:
        signature.write_bytes(key.sign((folder / MANIFEST).read_bytes()))
        public.write_bytes(_pem(key.public_key()))
    except OSError as problem:
        raise ExportRefused(
            f"The signature could not be written to {folder} ({problem.strerror or problem})."
        ) from problem
    return signature, public


def check(folder: Path, trusted: Path | None = None) -> Checked | None:
    """Check a folder's signature against a key one has from elsewhere; None where there is none.

    Without a trusted key the one in the folder is used, and what that leaves open is said.

    Raises
    ------
    ExportRefused
        The trusted key can not be read, or is no Ed25519 public key.
    """
    if not (folder / SIGNATURE).is_file():
        if trusted is None:
            return None
        return Checked(good=False, says=f"There is no {SIGNATURE} to check with {trusted}.")
    key = _public_key(trusted or folder / PUBLIC_KEY)
    with (folder / SIGNATURE).open("rb") as file:
        signature = file.read(_LENGTH + 1)
    try:
        key.verify(signature, (folder / MANIFEST).read_bytes())
    except InvalidSignature:
        return Checked(
            good=False,
            says=f"The signature does not fit: {MANIFEST} was changed after it was signed, "
            f"or another key than {fingerprint(key)} signed it.",
        )
    if trusted is None:
        says = (
            f"Signed with the key beside it, {fingerprint(key)}. That shows no change since; "
            "who signed is shown only by a key had from the shop itself (--key)."
        )
    else:
        says = f"Signed with the key {fingerprint(key)} of {trusted}."
    return Checked(good=True, says=says)


def fingerprint(key: Ed25519PublicKey) -> str:
    """The first half of the key's SHA-256, in groups of four, to be compared by voice."""
    digest = hashes.Hash(hashes.SHA256())
    digest.update(key.public_bytes(Encoding.Raw, PublicFormat.Raw))
    text = digest.finalize().hex()[:32]
    return "-".join(text[at : at + 4] for at in range(0, len(text), 4))


def _pem(key: Ed25519PublicKey) -> bytes:
    return key.public_bytes(Encoding.PEM, PublicFormat.SubjectPublicKeyInfo)


def _public_key(path: Path) -> Ed25519PublicKey:
    refusal = ExportRefused(f"Expected an Ed25519 public key (PEM) in {path}.")
    try:
        with path.open("rb") as file:
            key = load_pem_public_key(file.read(_KEY_MOST))
    except (OSError, ValueError, UnsupportedAlgorithm) as problem:
        raise refusal from problem
    if not isinstance(key, Ed25519PublicKey):
        raise refusal
    return key
