"""One series of inputs on one target, counted."""

import sys
import tempfile
import traceback
from dataclasses import dataclass, field
from pathlib import Path
from random import Random

from tests.fuzz.targets import Target

MEMORY_MOST_MIB = 200


@dataclass
class Series:
    """What became of the inputs."""

    name: str
    tried: int = 0
    taken: int = 0
    faults: list[str] = field(default_factory=list)
    memory_mib: float = 0.0

    @property
    def ok(self) -> bool:
        """No crash, no partial take-in, and memory within its limit."""
        return not self.faults and self.memory_mib <= MEMORY_MOST_MIB


def memory_mib() -> float:
    """The most memory this process ever took; 0 where the system does not tell."""
    if sys.platform == "win32":
        return 0.0
    import resource

    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return most / 2**20 if sys.platform == "darwin" else most / 2**10


def series(target: type[Target], count: int, seed: int, keep: Path | None = None) -> Series:
    """Try so many inputs; each comes again from its seed and number. Failing ones are kept."""
    found = Series(target.name)
    with tempfile.TemporaryDirectory(prefix="cbfuzz") as name:
        tried = target(Path(name))
        for number in range(count):
            chance = Random(f"{target.name} {seed} {number}")
            content = tried.mutated(chance)
            found.tried += 1
            try:
                found.taken += tried.try_one(content, chance)
            except Exception:  # noqa: BLE001  whatever is no refusal is what is looked for
                found.faults.append(f"input {number} of seed {seed}:\n{traceback.format_exc()}")
                if keep:
                    (keep / f"{target.name.replace(' ', '-')}-{seed}-{number}").write_bytes(content)
                tried.forget()
        tried.forget()
    found.memory_mib = memory_mib()
    return found
