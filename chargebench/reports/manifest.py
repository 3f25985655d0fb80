"""The manifest of an export: each file with its size and SHA-256, and where the chain stood."""

import hashlib
import json
import os
from collections.abc import Iterable
from pathlib import Path, PurePosixPath

from chargebench.errors import ExportRefused
from chargebench.reports.content import AuditContent

NAME = "manifest.json"
_PIECE = 1 << 20  # bytes read at a time
_SIZE_MOST = 10_000_000  # bytes of a manifest that is still one


def write_manifest(content: AuditContent, folder: Path, names: Iterable[str]) -> Path:
    """Write the manifest of files in a folder; the path of the manifest.

    Raises
    ------
    ExportRefused
        A file is not there, or the manifest could not be written.
    """
    number, head = content.chain_head
    path = folder / NAME
    part = path.with_name(f".{NAME}.part")
    try:
        said = {
            "chargebench_manifest": 1,
            "program": content.program,
            "made_at": content.made_at.isoformat(timespec="seconds"),
            "shop": content.shop.get("name", ""),
            "since": content.since.isoformat() if content.since else None,
            "until": content.until.isoformat() if content.until else None,
            "rule_set": {"name": content.rule_set.name, "edition": content.rule_set.edition},
            "chain_head": {"entry": number, "sha256": head},
            "chain_heads": {
                bench: {"entry": last, "sha256": digest}
                for bench, (last, digest) in content.chain_heads.items()
            },
            "files": [_listed(folder / name, name) for name in sorted(names)],
        }
        with part.open("w", encoding="utf-8") as file:
            json.dump(said, file, ensure_ascii=False, indent=2)
            file.write("\n")
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"The manifest could not be written to {path}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)
    return path


def _listed(path: Path, name: str) -> dict[str, str | int]:
    return {"name": name, "bytes": path.stat().st_size, "sha256": sha256_of(path)}


def sha256_of(path: Path) -> str:
    """SHA-256 of a file, read piece by piece."""
    hashed = hashlib.sha256()
    with path.open("rb") as file:
        while piece := file.read(_PIECE):
            hashed.update(piece)
    return hashed.hexdigest()


def check_manifest(folder: Path) -> tuple[str, ...]:
    """What does not agree with a folder's manifest, a sentence each; empty where all agrees.

    Raises
    ------
    ExportRefused
        There is no manifest, or it is not one.
    """
    problems: list[str] = []
    for name, size, sha256 in _files(folder / NAME):
        path = folder / name
        if not path.is_file():
            problems.append(f"{name} is missing.")
        elif path.stat().st_size != size:
            problems.append(f"{name} has {path.stat().st_size} bytes; the manifest says {size}.")
        elif sha256_of(path) != sha256:
            problems.append(f"{name} was changed after the manifest was written.")
    return tuple(problems)


def _files(path: Path) -> list[tuple[str, int, str]]:
    """Names, sizes and hashes a manifest lists; names that lead out of the folder are refused."""
    refusal = ExportRefused(f"Expected a manifest of an export at {path}.")
    try:
        if path.stat().st_size > _SIZE_MOST:
            raise refusal
        said = json.loads(path.read_text("utf-8"))
        files = [(str(one["name"]), int(one["bytes"]), str(one["sha256"])) for one in said["files"]]
    except (OSError, ValueError, LookupError, TypeError, RecursionError):
        raise refusal from None
    if not all(inside(name) for name, _, _ in files):
        raise refusal
    return files


def inside(name: str) -> bool:
    """Whether a listed name stays in the export's folder, on any system."""
    path = PurePosixPath(name)
    parts = path.parts
    foreign = "\\" in name or ":" in name or "\0" in name
    return bool(parts) and not path.is_absolute() and ".." not in parts and not foreign
