"""Bytes of a serial line cut into whole lines; what may be the tail of one is never used."""

LONGEST = 256  # bytes of one line; longer is babble
PAUSE_S = 1.0  # a line that stops in the middle for so long is broken off
SILENCE_S = 0.1  # of a line just opened: what comes after it begins a line
_ENDS = b"\r\n\x03"  # some instruments end a line by ETX
_TABLE = bytes.maketrans(_ENDS, b"\n" * len(_ENDS))


class Lines:
    """Whole lines from a stream that may have been joined in the middle of one."""

    def __init__(self, opened_at: float) -> None:
        self._kept = bytearray()
        self._last_at = opened_at
        self._whole = False  # what is kept began at the beginning of a line
        self._fresh = True
        self.broken = 0  # lines thrown away: begun before we listened, broken off, or too long

    def feed(self, chunk: bytes, at: float) -> list[bytes]:
        """Take what came; the lines it completes."""
        pause, self._last_at = at - self._last_at, at
        if self._fresh:
            self._whole, self._fresh = pause >= SILENCE_S, False
        elif pause >= PAUSE_S:
            self.broken += bool(self._kept)
            self._kept.clear()
            self._whole = True
        self._kept += chunk.translate(_TABLE)
        *ended, rest = self._kept.split(b"\n")
        self._kept = rest
        found = [bytes(line) for line in ended if line.strip()]
        if ended:
            if not self._whole and ended[0].strip():
                found = found[1:]
                self.broken += 1
            self._whole = True
        if len(self._kept) > LONGEST:
            self._kept.clear()
            self._whole = False
            self.broken += 1
        self.broken += sum(len(line) > LONGEST for line in found)
        return [line for line in found if len(line) <= LONGEST]
