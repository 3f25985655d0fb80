import pytest

from chargebench.calc.leak_search import (
    DetectorWord,
    EquipmentKind,
    advice,
    components,
    coverage,
    detector_check,
)
from chargebench.units import Q

KINDS = list(EquipmentKind)


@pytest.mark.parametrize("kind", KINDS)
def test_that_each_place_is_listed_once(kind: EquipmentKind) -> None:
    keys = [each.key for each in components(kind)]
    assert len(set(keys)) == len(keys)
    assert {"process-stubs", "evaporator", "condenser"} <= set(keys)


def test_that_each_kind_has_places_of_its_own() -> None:
    lists = [{each.key for each in components(kind)} for kind in KINDS]
    for own in lists:
        others = set.union(*(other for other in lists if other is not own))
        assert own - others


@pytest.mark.parametrize("kind", KINDS)
def test_that_only_a_full_list_counts_as_everything(kind: EquipmentKind) -> None:
    keys = [each.key for each in components(kind)]
    assert coverage(kind, keys).everything
    assert coverage(kind, keys).sentence.startswith(f"All {len(keys)} ")
    part = coverage(kind, keys[1:])
    assert not part.everything
    assert part.left == components(kind)[:1]
    assert components(kind)[0].label in part.sentence
    assert coverage(kind, []).sentence.startswith("None of")


def test_that_a_tick_of_another_list_does_not_count() -> None:
    assert coverage(EquipmentKind.CABINET, ["flares"]).done == ()


@pytest.mark.parametrize(
    ("before", "after", "word"),
    [
        (True, True, DetectorWord.COUNTS),
        (True, False, DetectorWord.FAILED),
        (False, None, DetectorWord.FAILED),
        (True, None, DetectorWord.UNCHECKED),
        (None, None, DetectorWord.UNCHECKED),
    ],
)
def test_that_a_search_counts_only_with_both_checks(
    before: bool | None, after: bool | None, word: DetectorWord
) -> None:
    found = detector_check(before=before, after=after)
    assert found.word is word


def test_that_the_missing_check_is_named() -> None:
    assert "not checked after the" in detector_check(before=True, after=None).reason
    assert "before and after" in detector_check(before=None, after=None).reason
    assert "failed its check before" in detector_check(before=False, after=True).reason
    assert "failed its check after" in detector_check(before=True, after=False).reason


def test_that_the_one_check_made_is_not_named_as_missing() -> None:
    assert "not checked before the" in detector_check(before=None, after=True).reason


def said(molar: float, bar: float | None, *, wind: bool = False) -> list[str]:
    found = advice(
        molar_mass=Q(molar, "g/mol"),
        system_pressure=None if bar is None else Q(bar, "bar"),
        air_pressure=Q(1, "bar"),
        wind=wind,
    )
    return [each.advice for each in found]


def test_that_heavy_gases_are_sought_low_and_light_ones_high() -> None:
    # Molar masses: propane 44.1, ammonia 17.03 g/mol; air 28.96 (ISO 2533).
    assert said(44.1, 8) == ["Search low first, below each joint."]
    assert said(17.03, 8) == ["Search above each joint first."]
    # Carbon monoxide's 28.01 is just below the air's, 29.5 just above.
    assert said(28.01, 8) == ["Search above each joint first."]
    assert said(29.5, 8) == ["Search low first, below each joint."]


# Two bar over the air is our own choice of what drives enough out.
@pytest.mark.parametrize(("pascal", "enough"), [(300_000, True), (299_999.5, False)])
def test_that_two_bar_gauge_are_enough(pascal: float, *, enough: bool) -> None:
    assert (len(said(44.1, pascal / 1e5)) == 1) is enough


def test_that_wind_and_low_pressure_are_spoken_of() -> None:
    assert len(said(44.1, 8, wind=True)) == 2
    assert "nitrogen" in said(44.1, 1.5)[1]
    assert "Read the pressure" in said(44.1, None)[1]
