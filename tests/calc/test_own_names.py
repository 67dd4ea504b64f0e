"""Names of animals that a group added: over those without targets, never over ours."""

import pytest

from calc.name_index import Found
from calc.naming import Known, Several, Unplaced, WithoutTargets, named, names_in

OWN = ("Moss lizard", "Emerald tree boa", "Zorgo")


def heard(text: str, own: tuple[str, ...] = OWN) -> list[str]:
    def told(found: Found) -> str:
        match found.what:
            case Known(name=name) | WithoutTargets(name=name):
                return name
            case Several(word=word):
                return f"? {word}"
            case Unplaced(words=words):
                return f"no {words}"

    return [told(found) for found in names_in(text, own=own)]


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("how far should a tube be for my moss lizard", "Moss lizard"),
        ("2 Moss-Lizards under a 12% tube", "Moss lizard"),
        ("what does my zorgo need at night", "Zorgo"),
        ("emerald tree boa: basking 85F", "Emerald tree boa"),
        ("Zorgos, 12% tube", "Zorgo"),
    ],
)
def test_an_own_name_is_found_in_a_sentence(text: str, wanted: str) -> None:
    assert heard(text) == [wanted]


def test_an_own_name_wins_over_one_without_targets_and_only_in_its_group() -> None:
    assert isinstance(named("emerald tree boa", OWN).what, Known)
    assert isinstance(named("emerald tree boa").what, WithoutTargets)
    assert isinstance(named("moss lizard").what, Unplaced)
    assert named("moss lizards", OWN).what == named("Moss lizard", OWN).what


def test_an_own_name_never_takes_the_place_of_one_of_ours() -> None:
    taken = ("Bearded dragon", "Beardie", "Royal python")
    for name, slug in (("bearded dragon", "bearded-dragon"), ("beardies", "bearded-dragon")):
        what = named(name, taken).what
        assert isinstance(what, Known)
        assert what.slug == slug
    assert heard("my ball python", taken) == ["royal python"]


def test_the_longest_name_wins_and_an_unknown_word_in_front_means_ask() -> None:
    assert heard("my giant day gecko", ("Day gecko",)) == ["giant day gecko"]
    assert heard("my horned zorgo") == ["no horned zorgo"]
    assert heard("my corn snake and my zorgo") == ["corn snake", "Zorgo"]
