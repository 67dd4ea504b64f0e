"""Hazards told in German: the lists, their spelling and moods, and what was learned beside them."""

import pytest

from bot.dangers import listen
from bot.dangers.clauses import Mood, take_apart
from bot.dangers.figures import LEVELS_C
from bot.dangers.listening import listen as listen_in_full
from bot.dangers.pairs import pairs
from bot.dangers.table import hazards
from bot.dangers.thesaurus import listed
from bot.language.tongue import Tongue

_LISTS = ("things.toml", "bodies.toml", "states.toml", "beside.toml", "moods.toml")
_FIGURES = "near over_watts percent_strong t_cold uvi_strong"


def _first(text: str) -> str:
    return next((alarm.key for alarm in listen(text) if not alarm.asked), "none")


def _found(text: str) -> set[str]:
    return set(take_apart(text, Tongue.GERMAN).hits)


def test_every_list_that_a_german_pair_names_is_there() -> None:
    there = set(listed("groups.toml")) | set(LEVELS_C) | set(_FIGURES.split())
    for file in _LISTS:
        there |= set(listed(file, Tongue.GERMAN))
    named = {
        name
        for rows in pairs(Tongue.GERMAN).values()
        for pair in rows
        for name in (*pair.first, *(name for place in pair.others for name in place.names))
    }
    assert named <= there


def test_every_hazard_of_the_table_but_no_other_has_german_pairs() -> None:
    assert set(pairs(Tongue.GERMAN)) == set(hazards())


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("uvlamp", ["Röhre", "Roehre", "rohre", "Röhren", "UVB-Röhre", "Leuchtstoffröhren"]),
        ("stat", ["Thermostat", "Termostat", "thermostatt", "Dimmthermostate", "Temperaturregler"]),
        ("heater", ["Heizmatte", "heizmate", "Heizmatten", "Keramikstrahler", "Bodenheizung"]),
        ("smoke", ["raucht", "qualmt", "qualmte", "Rauchwolken", "schwelt", "kokelt"]),
        ("lead", ["Steckdose", "Steckdosenleiste", "Mehrfachstecker", "Verlängerungskabel"]),
    ],
)
def test_spelling_endings_and_compounds_are_heard(name: str, words: list[str]) -> None:
    assert [word for word in words if name not in _found(word)] == []


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("D Lampn is obigfoin", "die lampe ist gefallen"),
        ("jetz chunnt rouch us de fassig", "jetzt kommt rauch aus die fassung"),
        ("s terrarium staht a de sunn", "das terrarium steht ein die sonne"),
        ("die Boa hi und her", "die boa hi und her"),
    ],
)
def test_dialect_is_heard_as_the_written_language(text: str, words: str) -> None:
    assert [word.word for word in take_apart(text, Tongue.GERMAN).words] == words.split()


def test_no_word_of_dialect_stands_for_two_or_for_a_written_one() -> None:
    told = listed("dialect.toml", Tongue.GERMAN)
    spoken = [word for words in told.values() for word in words.split()]
    assert len(spoken) == len(set(spoken))
    assert set(told).isdisjoint(spoken)


@pytest.mark.parametrize("text", ["der Spot ist umgefallen", "die Lampe fällt immer wieder runter"])
def test_verbs_that_come_apart_are_heard(text: str) -> None:
    assert "fall" in _found(text)


@pytest.mark.parametrize(
    ("text", "mood"),
    [
        ("die Lampe raucht nicht", Mood.DENIED),
        ("hier raucht zum Glück nichts", Mood.DENIED),
        ("kein Rauch", Mood.DENIED),
        ("letztes Jahr kam da Rauch raus", Mood.OVER),
        ("im Forum steht was von Rauch", Mood.REPORTED),
        ("was tun wenn Rauch kommt", Mood.ASKED),
        ("da kommt Rauch", Mood.PLAIN),
    ],
)
def test_what_is_denied_over_read_of_or_asked_is_marked(text: str, mood: int) -> None:
    told = take_apart(text, Tongue.GERMAN)
    assert told.mood(told.hits["smoke"][0]) == mood


@pytest.mark.parametrize("text", ["38,5 Grad", "38.5 °C", "38 grad", "vierzig Grad"])
def test_a_german_degree_is_celsius(text: str) -> None:
    assert "t_hot" in _found(text)


@pytest.mark.parametrize("text", ["70 cm", "95 Watt", "100 Euro", "2024"])
def test_a_german_figure_is_no_degree_fahrenheit(text: str) -> None:
    assert not {"t_warm", "t_hot"} & _found(text)


# Mended on: what was learned from has these or their like.
@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("aus dem stecker von meinem strahler kommt rauch", "fire"),
        ("Hab grad nen Stromschlag von der Lampe bekommen", "shock"),
        ("die leiste liegt im wasser und die lampe ist noch an", "water_mains"),
        ("meine röhre ist runtergefallen und zersprungen, überall scherben", "broken_mercury"),
        ("strom ist weg, hab teelichter unters terrarium gestellt", "open_flame"),
        ("s terrarium staht i de pralle sunn", "sun_on_glass"),
        ("meine Schlange reagiert nicht mehr wenn ich sie anfasse", "not_moving"),
    ],
)
def test_a_german_hazard_comes_first(text: str, key: str) -> None:
    assert _first(text) == key


@pytest.mark.parametrize(
    "text",
    [
        "hier raucht nichts, war nur der Vernebler",
        "was tun falls die Lampe mal raucht",
        "wie weit soll die Röhre von meiner Bartagame weg sein",
        "letztes jahr ist uns die fassung verschmort, seitdem haben wir porzellan",
        "mein sonnenplatz hat 41 Grad, passt das",
        "welche lampe für ein 120er terrarium",
    ],
)
def test_a_german_look_alike_is_no_alarm(text: str) -> None:
    assert _first(text) == "none"


def test_english_never_looks_into_the_german_lists(monkeypatch: pytest.MonkeyPatch) -> None:
    def refused(name: str, tongue: Tongue = Tongue.ENGLISH) -> object:
        assert tongue is Tongue.ENGLISH
        return take_apart(name)

    monkeypatch.setattr("bot.dangers.listening.take_apart", refused)
    assert listen_in_full("is the lamp too near to my gecko") == ()
    assert listen_in_full("the plug is melting")[0].key == "fire"
