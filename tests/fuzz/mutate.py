"""Files that are nearly right: real ones with bytes, pages or parts of their JSON changed."""

import copy
import json
from random import Random
from typing import Any

PAGE = 4096
TEXTS = (
    "",
    "yes",
    "no",
    "R290",
    "C-001",
    "P-01",
    "weigh_in",
    "-1 g",
    "1e999 kg",
    "NaN",
    "\0",
    "é" * 9,
)
NUMBERS = (0, -1, 1, 2**31, 2**63, 2**70, 10**400, 0.5, 1e308)
ODD: tuple[Any, ...] = (*TEXTS, *NUMBERS, None, True, [], {}, [[]], {"": ""}, "x" * 70_000)


def of_bytes(whole: bytes, chance: Random) -> bytes:
    """One to four changes of bits and runs of bytes: flipped, cut out, doubled, moved, cut off."""
    content = bytearray(whole)
    for _ in range(chance.choice((1, 1, 2, 4))):
        at, other = (chance.randrange(len(content) + 1) for _ in range(2))
        run = chance.choice((1, 2, 16, 300))
        match chance.randrange(7):
            case 0 if at < len(content):
                content[at] ^= 1 << chance.randrange(8)
            case 1:
                del content[at : at + run]
            case 2:
                content[at:at] = content[other : other + run]
            case 3:
                content[at : at + run] = content[other : other + run]
            case 4:
                content[at : at + run] = chance.randbytes(run)
            case 5:
                del content[at:]
            case _:
                content[at : at + 1] = chance.choice(
                    (b"\0", b'"', b"[" * 3_000, b"\xff", b"9" * 5_000)
                )
    return bytes(content)


def of_pages(whole: bytes, chance: Random) -> bytes:
    """A database file with pages swapped, doubled, emptied or cut off, or its header edited."""
    content = bytearray(whole)
    pages = len(content) // PAGE
    one, other = (chance.randrange(pages) * PAGE for _ in range(2))
    match chance.randrange(6):
        case 0:
            page = content[one : one + PAGE]
            content[one : one + PAGE] = content[other : other + PAGE]
            content[other : other + PAGE] = page
        case 1:
            content[one : one + PAGE] = content[other : other + PAGE]
        case 2:
            content[one : one + PAGE] = bytes(PAGE)
        case 3:
            del content[one + chance.randrange(PAGE) :]
        case 4:
            content[chance.randrange(16, 100)] = chance.randrange(256)
        case _:  # the head of a page: its kind, its cells, where they begin
            content[one + chance.randrange(12)] = chance.randrange(256)
    return bytes(content)


def _inside(tree: Any, chance: Random) -> tuple[Any, Any]:
    """Some list or object of a tree, and a key in it."""
    while True:
        keys = list(tree) if isinstance(tree, dict) else range(len(tree))
        key = chance.choice(keys)
        deeper = tree[key]
        if not (isinstance(deeper, dict | list) and deeper) or chance.random() < 0.15:
            return tree, key
        tree = deeper


def change_tree(tree: Any, chance: Random) -> None:
    """Put something else at one place of a tree: odd, from elsewhere, twice, or nothing."""
    holder, key = _inside(tree, chance)
    match chance.randrange(5):
        case 0:
            del holder[key]
        case 1:
            further, there = _inside(tree, chance) if tree else (holder, key)
            holder[key] = copy.deepcopy(further[there])
        case 2 if isinstance(holder, list):
            holder.insert(key, copy.deepcopy(holder[key]))
        case 3 if isinstance(holder, dict):
            holder[chance.choice(TEXTS)] = holder.pop(key)
        case _:
            holder[key] = chance.choice(ODD)


def of_json(whole: bytes, chance: Random) -> bytes:
    """A JSON file that is one still, with one to three places of its tree changed."""
    tree = json.loads(whole)
    for _ in range(chance.randrange(1, 4)):
        if tree:
            change_tree(tree, chance)
    return json.dumps(tree, ensure_ascii=chance.random() < 0.5).encode()
