"""Whole lines from a stream; by hand: each chunk, the moment it came, the lines it completes."""

import pytest

from chargebench.instruments.framing import LONGEST, Lines

Chunk = tuple[float, bytes]


@pytest.mark.parametrize(
    ("chunks", "lines"),
    [
        ([(1.0, b"4312.5 g\r\n")], [b"4312.5 g"]),
        ([(1.0, b"4312"), (1.2, b".5 g\r\n")], [b"4312.5 g"]),
        # Joined in the middle of a line: 12.5 g is the tail of 4312.5 g.
        ([(0.02, b"12.5 g\r\n4312.5 g\r\n")], [b"4312.5 g"]),
        ([(0.02, b"\n4312.5 g\r\n")], [b"4312.5 g"]),
        # Broken off and begun anew two seconds later.
        ([(1.0, b"43"), (3.0, b"4312.5 g\n")], [b"4312.5 g"]),
        ([(1.0, b"\x024312.5 g\x03\x024312.6 g\x03")], [b"\x024312.5 g", b"\x024312.6 g"]),
        ([(1.0, b"x" * 1000), (1.1, b"4312.5 g\n4312.6 g\n")], [b"4312.6 g"]),
        ([(1.0, b"x" * 1000 + b"\n4312.6 g\n")], [b"4312.6 g"]),
    ],
)
def test_that_only_whole_lines_come_out(chunks: list[Chunk], lines: list[bytes]) -> None:
    stream = Lines(opened_at=0.0)
    found = [line for at, chunk in chunks for line in stream.feed(chunk, at)]
    assert found == lines


def test_that_what_is_kept_stays_bounded_against_a_babbling_port() -> None:
    stream = Lines(opened_at=0.0)
    for number in range(10_000):
        assert stream.feed(b"x" * 100, 1 + number * 0.001) == []
        assert len(stream._kept) <= LONGEST
    assert stream.broken > 0
