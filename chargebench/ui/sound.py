"""Short tones: near, at and past the stop, and a prompt to read a gauge.

Qt's own player is not among the packages this program is installed with, so tones are made here
and played by what the system has; where it has nothing, its beep. Nothing here can fail or wait.
"""

import atexit
import functools
import math
import shutil
import struct
import sys
import tempfile
import wave
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QProcess
from PySide6.QtWidgets import QApplication

_RATE_HZ = 22_050
_EDGE_S = 0.01  # fades in and out for so long, so that it does not click
_LOUDNESS = 0.7
_PLAYERS = ("afplay",) if sys.platform == "darwin" else ("pw-play", "paplay", "aplay")


class Tone(StrEnum):
    """What is to be heard; told apart by number and length of sounds, and by pitch."""

    PROMPT = "prompt"
    NEAR = "near"
    AT = "at"
    PAST = "past"


# Pitch [Hz] and length [s] of each sound; a pitch of zero is a pause. 600 to 1500 Hz is where a
# small loudspeaker is loud and most people still hear well (common practice).
_SCORES: dict[Tone, tuple[tuple[float, float], ...]] = {
    Tone.PROMPT: ((660, 0.12), (0, 0.06), (880, 0.18)),
    Tone.NEAR: ((740, 0.25),),
    Tone.AT: ((990, 0.2), (0, 0.1), (990, 0.4)),
    Tone.PAST: ((1320, 0.18), (0, 0.08), (1320, 0.18), (0, 0.08), (1320, 0.5)),
}


def samples(tone: Tone) -> list[int]:
    """The tone as 16-bit samples."""
    made: list[int] = []
    for pitch, length in _SCORES[tone]:
        count = round(length * _RATE_HZ)
        for n in range(count):
            edge = min(n, count - n) / (_EDGE_S * _RATE_HZ)
            loud = _LOUDNESS * min(edge, 1.0)
            made.append(round(32_767 * loud * math.sin(2 * math.pi * pitch * n / _RATE_HZ)))
    return made


def write(tone: Tone, path: Path) -> None:
    """Write the tone as a WAV file."""
    values = samples(tone)
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(_RATE_HZ)
        file.writeframes(struct.pack(f"<{len(values)}h", *values))


class Chime:
    """Plays tones; the files are made when first wanted and gone with the program."""

    def __init__(self) -> None:
        self._folder: tempfile.TemporaryDirectory[str] | None = None
        self._files: dict[Tone, Path] = {}
        self._player = next((found for name in _PLAYERS if (found := shutil.which(name))), "")

    def __call__(self, tone: Tone) -> None:
        """Play a tone beside everything else."""
        try:
            played = self._play(self._file(tone))
        except OSError:  # no room for a file, or no sound here
            played = False
        if not played:
            QApplication.beep()

    def _file(self, tone: Tone) -> Path:
        if self._folder is None:
            self._folder = tempfile.TemporaryDirectory(
                prefix="chargebench-", ignore_cleanup_errors=True
            )
            atexit.register(self._folder.cleanup)
        if tone not in self._files:
            path = Path(self._folder.name) / f"{tone}.wav"
            write(tone, path)
            self._files[tone] = path
        return self._files[tone]

    def _play(self, path: Path) -> bool:
        if sys.platform == "win32":
            import winsound

            try:
                winsound.PlaySound(
                    str(path),
                    winsound.SND_FILENAME | winsound.SND_ASYNC | winsound.SND_NODEFAULT,
                )
            except RuntimeError:
                return False
            return True
        if not self._player:
            return False
        player = QProcess()
        player.setProgram(self._player)
        player.setArguments([str(path)])
        player.setStandardOutputFile(QProcess.nullDevice())
        player.setStandardErrorFile(QProcess.nullDevice())
        started = player.startDetached()
        # PySide gives the process's number beside it.
        return bool(started[0] if isinstance(started, tuple) else started)


@functools.cache
def chime() -> Chime:
    """The program's one player of tones."""
    return Chime()
