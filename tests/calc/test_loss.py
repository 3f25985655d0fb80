from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.loss import (
    AverageLoss,
    MissingWord,
    Search,
    SeenWord,
    average_loss,
    could_have_seen,
    explanations,
    short_dates,
)
from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity

FULL, NOW = date(2024, 3, 1), date(2026, 3, 1)  # 730 days


def g(grams: float) -> Quantity:
    return Q(grams, "g")


def rate(grams: float) -> Quantity:
    return Q(grams, "g/year")


def loss(recovered: float, doubt: float = 0.5, full: date = FULL, behind: float = 0) -> AverageLoss:
    return average_loss(
        nameplate=g(85),
        recovered=g(recovered),
        uncertainty=g(doubt),
        last_full=full,
        on=NOW,
        left_behind=g(behind),
    )


def test_that_the_rate_is_the_missing_mass_over_the_time() -> None:
    found = loss(65)
    assert found.word is MissingWord.MISSING
    assert found.rate is not None
    assert found.rate_uncertainty is not None
    # By hand: 20 g in 730 days of a 365.25-day year; u = 0.5 g, k = 2.
    assert found.rate.m_as("g/year") == pytest.approx(10.007, abs=0.001)
    assert found.rate_uncertainty.m_as("g/year") == pytest.approx(0.5003, abs=0.0001)


@pytest.mark.parametrize(
    ("recovered", "word"),
    [(84.5, MissingWord.NONE), (83.5, MissingWord.MISSING), (87, MissingWord.MORE)],
)
def test_that_mass_is_missing_only_beyond_the_doubt(recovered: float, word: MissingWord) -> None:
    assert loss(recovered).word is word


def test_that_what_recovery_leaves_behind_is_not_called_lost() -> None:
    # Between 0 and 4 g in the oil: 2 g taken off, and 4 / sqrt(12) g of doubt (JCGM 100, 4.3.7).
    found = loss(81, behind=4)
    assert found.missing.m_as("g") == pytest.approx(2)
    assert found.missing_uncertainty.m_as("g") == pytest.approx(2 * (0.25 + 16 / 12) ** 0.5)
    assert found.word is MissingWord.NONE


def test_that_the_same_day_gives_a_mass_but_no_rate() -> None:
    found = loss(65, full=NOW)
    assert found.missing.m_as("g") == pytest.approx(20)
    assert found.rate is found.rate_uncertainty is None
    assert could_have_seen(found, [Search("bubbles", rate(30))])[0].word is SeenWord.DOUBTFUL


def test_that_a_future_full_date_is_refused() -> None:
    with pytest.raises(OutsideDomain, match="2027-01-01"):
        loss(65, full=date(2027, 1, 1))
    with pytest.raises(OutsideDomain, match="2026-03-02"):
        loss(65, full=date(2026, 3, 2))


@pytest.mark.parametrize(
    ("search", "word"),
    [
        (Search("detector", rate(3)), SeenWord.WOULD),
        (Search("decay test", rate(70), rate(1200)), SeenWord.COULD_NOT),
        (Search("pressure test", rate(5), rate(66)), SeenWord.DOUBTFUL),
        (Search("bubbles", rate(10)), SeenWord.DOUBTFUL),
        (Search("dye", None), SeenWord.DOUBTFUL),
        (Search("detector", rate(3), void="it failed its check after"), SeenWord.COULD_NOT),
    ],
)
def test_that_each_search_is_asked_whether_it_could_have_seen_it(
    search: Search, word: SeenWord
) -> None:
    found = could_have_seen(loss(65), [search])[0]
    assert found.word is word
    assert found.search == search.name
    assert search.void in found.reason


# By the ranges: 10 g/yr, give or take 1, is surely seen from 9 and surely missed only above 11.
@pytest.mark.parametrize(
    ("low", "high", "word"),
    [
        (9.0, None, SeenWord.WOULD),
        (9.1, None, SeenWord.DOUBTFUL),
        (11.0, None, SeenWord.DOUBTFUL),
        (11.1, None, SeenWord.COULD_NOT),
        (3.0, 9.0, SeenWord.WOULD),
        (3.0, 9.1, SeenWord.DOUBTFUL),
        (11.1, 900.0, SeenWord.COULD_NOT),
        (10.9, 900.0, SeenWord.DOUBTFUL),
    ],
)
def test_that_a_search_is_judged_by_the_edges_of_its_range(
    low: float, high: float | None, word: SeenWord
) -> None:
    lost = AverageLoss(MissingWord.MISSING, g(20), g(2), 730, rate(10), rate(1))
    upper = None if high is None else rate(high)
    found = could_have_seen(lost, [Search("pressure test", rate(low), upper)])[0]
    assert found.word is word
    seen_from = f"{low:g}" if high is None else f"{low:g} to {high:g}"
    assert f"it sees from {seen_from} g/yr; the loss is 10 ± 1 g/yr" in found.reason


def test_that_figures_are_said_in_few_digits_and_without_a_power_of_ten() -> None:
    lost = AverageLoss(MissingWord.MISSING, g(2e4), g(2), 1, rate(7_304_999), rate(730.5))
    reason = could_have_seen(lost, [Search("bubbles", rate(12.3456))])[0].reason
    assert "it sees from 12.3 g/yr; the loss is 7300000 ± 730 g/yr" in reason


@pytest.mark.parametrize(
    ("recovered", "word"), [(84.5, MissingWord.MISSING), (85.5, MissingWord.MORE)]
)
def test_that_half_a_gram_is_missing_where_the_doubt_is_smaller(
    recovered: float, word: MissingWord
) -> None:
    assert loss(recovered, doubt=0.1).word is word


def test_that_without_a_word_nothing_is_left_behind() -> None:
    found = average_loss(
        nameplate=g(85), recovered=g(65), uncertainty=g(0.5), last_full=FULL, on=NOW
    )
    assert found == loss(65, behind=0)


def test_that_mass_within_its_doubt_is_not_missing() -> None:
    assert loss(84).word is MissingWord.NONE  # 1 g with a doubt of 1 g
    assert loss(86).word is MissingWord.NONE


def test_that_one_day_gives_a_rate() -> None:
    found = loss(84, full=date(2026, 2, 28))
    assert found.days == 1
    assert found.rate is not None
    assert found.rate.m_as("g/year") == pytest.approx(365.25)


def test_that_a_missing_charge_is_never_called_a_proven_leak() -> None:
    found = loss(65)
    sentences = explanations(found, could_have_seen(found, [Search("detector", rate(3))]))
    assert sentences[0].startswith("A leak is possible, but detector would have seen a steady one")
    assert "never have been charged right" in sentences[1]
    assert explanations(found, [])[0] == "A leak is possible; it has not been searched for."
    blind = could_have_seen(found, [Search("decay test", rate(70))])
    unseen = "A leak is possible; no search made so far could rule it out."
    assert explanations(found, blind)[0] == unseen


def test_that_nothing_missing_and_too_much_are_said_as_such() -> None:
    assert "Nothing is missing" in explanations(loss(85), [])[0]
    assert "overcharged" in explanations(loss(95), [])[0]


def dates(content: float, grams_a_year: float, doubt: float = 0) -> list[date | None]:
    found = short_dates(
        content=g(content),
        nameplate=g(100),
        rate=rate(grams_a_year),
        rate_uncertainty=rate(doubt),
        on=date(2025, 1, 1),
    )
    return [each for one in found for each in (one.expected, one.earliest)]


def test_that_a_steady_loss_is_10_and_20_per_cent_short_on_its_days() -> None:
    # By hand: 10 g at 10 g/yr is 365.25 days, 20 g is 730.5; at 20 g/yr half of it.
    assert dates(100, 10, 10) == [
        date(2026, 1, 1),
        date(2025, 7, 2),
        date(2027, 1, 1),
        date(2026, 1, 1),
    ]


def test_that_what_is_short_already_is_short_today() -> None:
    assert dates(85, 10)[:2] == [date(2025, 1, 1)] * 2


# By hand: 90 g of 100 g are 10 % short; the doubt alone may make a still rate a loss.
def test_that_the_shares_short_have_their_edges() -> None:
    day = date(2025, 1, 1)
    assert dates(90, 10)[:2] == [day] * 2
    assert dates(90, 0)[:2] == [day] * 2
    assert dates(90.5, 0, 10)[:2] == [None, date(2025, 1, 19)]  # 0.5 g at 10 g/yr: 18.3 days
    assert dates(80, 10) == [day] * 4
    assert dates(100, 0.5, -0.5)[1] == date(2035, 1, 1)  # 10 years of 365.25 days


def test_that_half_a_gram_of_charge_runs_short_too() -> None:
    found = short_dates(
        content=g(0.5), nameplate=g(0.5), rate=rate(0.05), rate_uncertainty=rate(0), on=NOW
    )
    assert found[0].expected == date(2027, 3, 1)  # by hand: 0.05 g at 0.05 g/yr, 365.25 days


@pytest.mark.parametrize("grams_a_year", [0.0, -5.0, 1e-9])
def test_that_no_loss_gives_no_date(grams_a_year: float) -> None:
    assert dates(100, grams_a_year) == [None] * 4


def test_that_a_share_of_no_charge_is_refused() -> None:
    with pytest.raises(OutsideDomain, match="above zero"):
        short_dates(content=g(1), nameplate=g(0), rate=rate(1), rate_uncertainty=rate(0), on=NOW)


@given(st.floats(0, 200), st.floats(-1e6, 1e6), st.floats(0, 1e6))
def test_that_a_faster_loss_is_never_short_later(
    content: float, grams_a_year: float, more: float
) -> None:
    for slow, fast in zip(
        dates(content, grams_a_year), dates(content, grams_a_year + more), strict=True
    ):
        assert slow is None or (fast is not None and fast <= slow)
