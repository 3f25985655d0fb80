import pytest

from chargebench.calc.evacuation import MICRON_PA, DecayRule, RuleWord, standard_rules
from chargebench.units import Q

# Real Decreto 552/2019, IF-09 1.6.3 (SEEN): below 270 Pa, 3 h, at most 2 Pa of rise.
IF09 = DecayRule(
    "IF-09 1.6.3",
    pull_to=Q(270, "Pa"),
    hold=Q(3, "hour"),
    allowed_rise=Q(2, "Pa"),
    strictly_below=True,
    source="RD552/2019",
)
# Deep vacuum method of hvacspecialists.info (SEEN): 500 micron, isolated, steady at or below 1000;
# the 10 minutes are those of another shop's rule (jswmi.happyfox.com KB 445, SEEN).
THUMB = DecayRule(
    "rule of thumb",
    pull_to=Q(500, "micron_Hg"),
    hold=Q(10, "min"),
    end_at_most=Q(1000, "micron_Hg"),
    source="COMMON",
)


def rule_words(minutes: list[float], pascals: list[float]) -> list[RuleWord]:
    return [result.word for result in standard_rules(minutes, pascals, [IF09, THUMB])]


def test_that_500_to_620_micron_in_10_min_passes_one_rule_and_fails_another() -> None:
    found = rule_words([0, 5, 10], [500 * MICRON_PA, 570 * MICRON_PA, 620 * MICRON_PA])
    assert found == [RuleWord.FAILED, RuleWord.PASSED]


@pytest.mark.parametrize(
    ("minutes", "pascals", "word"),
    [
        ([0, 180], [100, 102], RuleWord.PASSED),
        ([0, 180], [100, 102.1], RuleWord.FAILED),
        ([0, 60], [100, 101], RuleWord.TOO_SHORT),
        ([0, 60], [100, 103], RuleWord.FAILED),
        ([0, 180], [270, 270], RuleWord.NOT_DEEP),
        ([0, 170, 200], [100, 101, 103], RuleWord.FAILED),
        ([0, 180, 400], [100, 101, 110], RuleWord.PASSED),
        ([0, 180, 300], [100, 101, 110], RuleWord.PASSED),
        ([0, 170, 200, 400], [100, 101, 101, 110], RuleWord.PASSED),
        ([0, 180, 180], [100, 101, 103], RuleWord.FAILED),
        ([1000, 1180, 1400], [100, 101, 110], RuleWord.PASSED),
        ([1000, 1060], [100, 101], RuleWord.TOO_SHORT),
        ([0, 180], [269.9, 270], RuleWord.PASSED),
    ],
)
def test_that_a_pass_rule_is_taken_by_the_letter(
    minutes: list[float], pascals: list[float], word: RuleWord
) -> None:
    assert rule_words(minutes, pascals)[0] is word


# "At most" and "steady at or below" hold on the figure itself, whatever floats make of it.
@pytest.mark.parametrize(("end", "word"), [(1000, RuleWord.PASSED), (1001, RuleWord.FAILED)])
def test_that_a_vacuum_on_the_printed_figures_passes(end: float, word: RuleWord) -> None:
    assert rule_words([0, 10], [500 * MICRON_PA, end * MICRON_PA])[1] is word
    assert rule_words([0, 10], [501 * MICRON_PA, 600 * MICRON_PA])[1] is RuleWord.NOT_DEEP


def test_that_a_rule_held_longer_than_asked_asks_for_nothing_more() -> None:
    found = standard_rules([5, 175, 205], [100, 101, 101.5], [IF09])[0]
    assert found.minutes_more == 0
    assert found.held.m_as("min") == pytest.approx(200)
    assert found.highest_rise.m_as("Pa") == pytest.approx(1.5)
    assert found.start.m_as("Pa") == 100


def test_that_a_reading_without_its_time_is_a_bug() -> None:
    with pytest.raises(ValueError, match="shorter"):
        standard_rules([0, 180], [100], [IF09])


def test_that_a_rule_says_how_long_to_hold_on() -> None:
    found = standard_rules([0, 60], [100, 101], [IF09])[0]
    assert found.minutes_more == 120
    assert found.held.m_as("hour") == 1
    assert standard_rules([], [], [IF09]) == ()
    later = standard_rules([0, 30, 90], [100, 101, 101], [IF09])[0]
    assert (later.minutes_more, later.word) == (90, RuleWord.TOO_SHORT)


# Carrier 17/19EX manual (SEEN): in 24 h at most 0.05 inHg, which it gives as 0.17 kPa.
def test_that_the_chiller_rule_is_the_printed_rise() -> None:
    rule = DecayRule(
        "chiller",
        pull_to=Q(101_325, "Pa") - Q(18, "inHg"),
        hold=Q(24, "hour"),
        allowed_rise=Q(0.05, "inHg"),
        source="COMMON",
    )
    for rise, word in ((168, RuleWord.PASSED), (175, RuleWord.FAILED)):
        found = standard_rules([0, 1440], [40_000, 40_000 + rise], [rule])
        assert found[0].word is word
