"""Names of kept animals: each lands where it should, and none on another animal."""

import tomllib
from collections.abc import Iterator
from importlib.resources import files

import pytest

from calc.animals import animals
from calc.naming import Known, Several, Unplaced, WithoutTargets, find, named, names_in

NAMES = tomllib.loads((files("calc.data") / "animal_names.toml").read_text(encoding="utf-8"))
HERE = set(animals())


def every_name() -> Iterator[tuple[str, str]]:
    """Yield every name of the list with where it belongs: a key, + a key without targets, ?."""
    for slug, row in NAMES["species"].items():
        for names in row.values():
            yield from ((name, slug if slug in HERE else f"+{slug}") for name in names)
    for family, row in NAMES["recognised"].items():
        yield from ((name, f"+{family}") for name in row["names"])
    yield from ((row["name"], "?") for row in NAMES["ambiguous"])


SENTENCES = {
    "en": "How far should a 12% tube hang for my {}?",
    "latin": "How warm does {} need it?",
    "de": "Wie weit über meine {} muss eine Röhre mit 12 %?",
    "fr": "À quelle distance un tube de 12 % pour {} ?",
    "es": "¿A qué distancia va un tubo del 12 % para {}?",
}


@pytest.mark.parametrize("language", SENTENCES)
def test_the_first_name_of_every_species_is_found_in_a_sentence(language: str) -> None:
    said = {slug: row.get(language) for slug, row in NAMES["species"].items() if slug in HERE}
    assert set(said) == HERE
    firsts = {slug: names[0] for slug, names in said.items() if names}
    assert len(firsts) > 60
    found = {
        slug: [
            at.what.slug
            for at in names_in(SENTENCES[language].format(name))
            if isinstance(at.what, Known)
        ]
        for slug, name in firsts.items()
    }
    assert found == {slug: [slug] for slug in firsts}
    assert all(place(name) == slug for slug, name in firsts.items())


def place(name: str) -> str:
    match named(name).what:
        case Known(slug=slug):
            return slug
        case WithoutTargets(family=family):
            return f"+{family}"
        case Several():
            return "?"
    return "none"


def test_every_name_of_the_list_lands_where_it_should() -> None:
    names = list(every_name())
    assert len(names) == 1838, "where names were added on purpose, count them here"
    assert [(n, w, place(n)) for n, w in names if place(n) != w] == []


@pytest.mark.parametrize("change", [str.upper, lambda n: n.replace(" ", "-"), lambda n: f" {n}s "])
def test_case_hyphens_and_a_plural_do_not_count(change: object) -> None:
    assert callable(change)
    wrong = [(n, w) for n, w in every_name() if n[-1] not in "sx" and place(change(n)) != w]
    assert wrong == []


def test_every_name_is_found_within_a_sentence_or_asked_about_but_never_another_animal() -> None:
    wrong = []
    for name, wanted in every_name():
        text = f"how far should a tube be for my {name}, please"
        slugs = {f.what.slug for f in names_in(text) if isinstance(f.what, Known)}
        if slugs - {wanted}:
            wrong.append((name, slugs))
    assert wrong == []


@pytest.mark.parametrize(
    "word",
    [
        *("mountain", "emerald", "crocodile", "sunset", "river", "mexican", "horned", "tiger"),
        *("spiny", "madagascan", "philippine", "forest", "cave", "sail", "armoured", "striated"),
    ],
)
def test_an_unknown_word_in_front_makes_another_animal(word: str) -> None:
    listed = {name for name, _ in every_name()}
    for animal in animals().values():
        if f"{word.capitalize()} {animal.name}" in listed or f"{word} {animal.name}" in listed:
            continue
        told = f"what uvb for my {word} {animal.name}"
        assert not any(isinstance(found.what, Known) for found in names_in(told)), told
        assert find(f"{word} {animal.name}") is None


@pytest.mark.parametrize(
    "front",
    [
        *("for", "does my", "my old", "the baby", "two adult female", "a tangerine albino"),
        *("our sweet", "new", "juvenile male", "keeping a", "is my", "set up for a wild caught"),
        *("rescue", "uv for", "temps", "für meine", "pour mon", "para mi", "an underweight"),
    ],
)
def test_a_word_that_says_nothing_of_the_kind_leaves_the_animal(front: str) -> None:
    for animal in animals().values():
        found = names_in(f"{front} {animal.name} please")
        assert [f.what for f in found] == [Known(animal.slug, animal.name)], front


@pytest.mark.parametrize(
    ("typed", "slug"),
    [
        ("beardd dragon", "bearded-dragon"),
        ("bearded draagon", "bearded-dragon"),
        ("leoprad gecko", "leopard-gecko"),
        ("pather chameleon", "panther-chameleon"),
        ("veiled chamelion", "veiled-chameleon"),
        ("horsfeild tortoise", "horsfields-tortoise"),
        ("argentne tegu", "argentine-tegu"),
        ("garter snakke", "garter-snake"),
    ],
)
def test_one_slip_in_a_long_word_is_understood(typed: str, slug: str) -> None:
    found = named(typed)
    assert isinstance(found.what, Known)
    assert (found.what.slug, found.slip) == (slug, True)


@pytest.mark.parametrize(
    "typed",
    ["beaded dragon", "banded dragon", "carped pithon", "royle pyton", "corm snake", "greem anole"],
)
def test_a_word_that_is_near_more_than_one_name_or_too_far_is_no_animal(typed: str) -> None:
    assert not isinstance(named(typed).what, Known)


@pytest.mark.parametrize("word", ["monitor", "boa", "skink", "chameleon", "gecko", "python"])
def test_a_word_of_kin_alone_is_several_animals(word: str) -> None:
    what = named(word).what
    assert isinstance(what, Several)
    assert len(what.candidates) > 2


@pytest.mark.parametrize(
    "text",
    [
        *("he eats sweet corn", "a royal mess", "milk crates as stands", "a bull in the yard"),
        *(
            "monitor the temps for a day",
            "the carpet is warm",
            "see the maps",
            "a diamond mesh",
        ),
        *(
            "he eats crickets and locusts",
            "the panther print fabric",
            "i said wtf at it",
            "no rush",
        ),
    ],
)
def test_a_short_form_within_running_text_is_no_animal(text: str) -> None:
    assert [f for f in names_in(text) if not isinstance(f.what, Unplaced)] == []


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("corn, 12% tube", ["corn snake"]),
        ("my royal needs heat", ["royal python"]),
        ("is 98F right for a bd", ["bearded dragon"]),
        ("chameleon (veiled), 6% tube", ["veiled chameleon"]),
        ("emerald tree boa, basking 88", ["emerald tree boa"]),
        ("my corn snake hides, is the snake too hot", ["corn snake"]),
        ("the leachie gecko", ["leachie"]),
    ],
)
def test_the_longest_name_wins_where_an_animal_is_expected(text: str, names: list[str]) -> None:
    found = [f.what for f in names_in(text)]
    assert [w.name for w in found if isinstance(w, Known | WithoutTargets)] == names
    assert len(found) == len(names)


def test_places_are_those_of_the_text() -> None:
    text = "für meine Königspythons und l'agame barbue"
    assert [text[f.start : f.end] for f in names_in(text)] == ["Königspythons", "agame barbue"]


@pytest.mark.parametrize("word", ["lizard", "snake", "gecko", "tortoise", "frog", "python"])
def test_a_word_that_more_animals_bear_than_are_named_for_it_is_wide(word: str) -> None:
    what = named(word).what
    assert isinstance(what, Several)
    assert what.wide
    ends = [animal.slug for animal in animals().values() if animal.name.split()[-1] == word]
    assert set(ends) - {one.slug for one in what.candidates}


@pytest.mark.parametrize("word", ["uromastyx", "monitor", "skink", "dragon", "tegu"])
def test_a_word_of_which_all_are_named_is_not_wide(word: str) -> None:
    what = named(word).what
    assert isinstance(what, Several)
    assert not what.wide
    ends = [animal.slug for animal in animals().values() if animal.name.split()[-1] == word]
    assert set(ends) <= {one.slug for one in what.candidates}
