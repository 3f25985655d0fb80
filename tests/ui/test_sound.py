"""Tones: they differ, they do not clip or click, and no system can make them fail."""

import wave
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from chargebench.ui.sound import Chime, Tone, samples, write


@pytest.mark.parametrize("tone", Tone)
def test_that_a_tone_is_a_wav_file_any_player_takes(tone: Tone, tmp_path: Path) -> None:
    write(tone, tmp_path / "tone.wav")
    with wave.open(str(tmp_path / "tone.wav")) as file:
        assert (file.getnchannels(), file.getsampwidth()) == (1, 2)
        assert 0.2 < file.getnframes() / file.getframerate() < 1.5
    values = samples(tone)
    assert max(map(abs, values)) < 32_767
    assert abs(values[0]) < 400
    assert abs(values[-1]) < 4_000


def test_that_past_the_stop_sounds_longer_than_at_it_and_that_longer_than_near_it() -> None:
    lengths = [len(samples(tone)) for tone in (Tone.NEAR, Tone.AT, Tone.PAST)]
    assert lengths == sorted(set(lengths))


def test_that_where_nothing_can_play_the_system_beeps(
    monkeypatch: pytest.MonkeyPatch,
    qapp: QApplication,  # noqa: ARG001
) -> None:
    beeps: list[bool] = []
    monkeypatch.setattr(QApplication, "beep", lambda: beeps.append(True))
    monkeypatch.setattr("shutil.which", lambda _: None)
    Chime()(Tone.AT)
    assert beeps == [True]


def test_that_no_room_for_a_file_is_no_trouble(
    monkeypatch: pytest.MonkeyPatch,
    qapp: QApplication,  # noqa: ARG001
) -> None:
    beeps: list[bool] = []
    monkeypatch.setattr(QApplication, "beep", lambda: beeps.append(True))

    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tempfile.TemporaryDirectory", full)
    Chime()(Tone.PAST)
    assert beeps == [True]
