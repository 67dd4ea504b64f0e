"""What the state of an animal changes, in every answer that it bears on, and that it is told."""

import pytest

from bot.ask import ask
from bot.language.states import read_states, states_told
from bot.preferences import Language, Preferences
from bot.reply import Reply
from calc.animal import Animal, Group, State
from calc.animals import animals
from calc.limits import LimitName, Met, limits_of, passed
from calc.states import changes_of, in_states

TUBE = "tube:12% reflector:polished screen:none length:34in"


def wanted(reply: Reply) -> str:
    return next(row.text for row in reply.rows if row.label in ("Wanted", "Aim for"))


@pytest.mark.parametrize(
    "line",
    [
        f"distance {TUBE} animal:albino bearded dragon",
        f"distance {TUBE} animal:baby beardie",
        f"uvi distance:20in {TUBE} animal:bearded dragon hatchling",
        "meter readings:4.2 at 12 in animal:amelanistic bearded dragon",
        f"distance {TUBE} animal:bearded dragon baby",
        f"distance {TUBE} animal:Bartagame Baby",
        f"distance {TUBE} animal:albinotische Bartagame",
        "how far should a 12% tube in a polished hood with no mesh be for my albino bearded dragon",
        "how far should a 12% tube in a polished hood with no mesh be for my baby bearded dragon",
    ],
)
def test_half_the_uv_of_its_kind_is_wanted_and_told(line: str, anyone: Preferences) -> None:
    # Pinned: half of UVI 3 to 5, our judgement.
    reply = ask(line, anyone)
    assert "1.5 to 2.5" in wanted(reply)
    assert "half of what its kind gets" in wanted(reply)


@pytest.mark.parametrize(
    "line",
    [
        f"distance {TUBE} animal:bearded dragon",
        "how far should a 12% tube in a polished hood with no mesh be for my baby, a beardie",
        "how far should a 12% tube in a polished hood with no mesh be for my beardie, not a baby",
    ],
)
def test_any_other_gets_that_of_its_kind(line: str, anyone: Preferences) -> None:
    assert "3 to 5" in wanted(ask(line, anyone))


def test_what_its_kind_bears_switches_the_tube_of_a_pale_one_off(anyone: Preferences) -> None:
    keys = [d.key for d in ask("check animal:albino bearded dragon meter:5", anyone).dangers]
    assert "uv_too_strong" in keys
    assert not ask("check animal:bearded dragon meter:5", anyone).dangers


def test_a_wish_that_its_kind_may_have_is_refused_for_a_pale_one(anyone: Preferences) -> None:
    reply = ask(f"distance {TUBE} animal:albino bearded dragon uvi:4-5", anyone)
    assert "too strong" in reply.answer
    assert ask(f"distance {TUBE} animal:bearded dragon uvi:4-5", anyone).status == "ok"


@pytest.mark.parametrize(
    ("text", "states"),
    [
        ("albino leopard gecko", {State.PALE}),
        ("baby corn snake", {State.YOUNG}),
        ("hatchling", {State.YOUNG}),
        ("leopard gecko", set()),
        ("my baby", set()),
        ("not an albino", set()),
        ("albinos", {State.PALE}),
        ("babylon", set()),
        ("gravid female veiled chameleon", {State.GRAVID, State.FEMALE}),
        ("my beardie is sick and in quarantine", {State.ILL, State.QUARANTINE}),
        ("i'll check it, it isn't sick", set()),
        ("Schlüpfling einer Bartagame", {State.YOUNG}),
        ("trächtige Boa", {State.GRAVID}),
        ("young adult beardie", set()),
    ],
)
def test_the_words_are_read(text: str, states: set[State]) -> None:
    assert states_told(text) == states


@pytest.mark.parametrize("state", list(State))
def test_a_state_is_read_as_it_is_typed(state: State) -> None:
    assert read_states(state.value) == {state}
    assert read_states(f"{state.value}, albino") == {state, State.PALE}


def _passed(animal: Animal) -> set[LimitName]:
    spot, water, night = animal.basking_surface_c, animal.water_c, animal.night_floor_c
    met = Met(
        surface_c=None if spot is None else spot.high,
        water_c=None if water is None else water.high,
        night_c=None if night is None else night.low,
    )
    return {each.name for each in passed(limits_of(animal), met)}


@pytest.mark.parametrize("state", list(State))
@pytest.mark.parametrize("animal", animals().values(), ids=lambda animal: animal.slug)
def test_no_target_of_a_state_passes_a_limit_or_leaves_its_kind(
    animal: Animal, state: State
) -> None:
    told = in_states(animal, [state])
    limits = limits_of(told)
    spot, water = told.basking_surface_c, told.water_c
    assert _passed(told) <= _passed(animal)
    if told.uvi is not None:
        assert limits.uvi_high is not None
        assert told.uvi.high <= limits.uvi_high.value
    for mine, kind in ((spot, animal.basking_surface_c), (water, animal.water_c)):
        assert (mine is None) is (kind is None)
        assert mine is None or kind is None or mine.high <= kind.high
    assert all(change.source for change in changes_of(told))


def test_two_reasons_for_less_uv_halve_it_once() -> None:
    both = in_states(animals()["bearded-dragon"], [State.PALE, State.YOUNG]).uvi
    assert both is not None
    assert (both.low, both.high) == (1.5, 2.5)


def test_being_told_twice_changes_nothing_more() -> None:
    once = in_states(animals()["slider"], [State.YOUNG])
    assert in_states(once, [State.YOUNG]) == once


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("state", list(State))
@pytest.mark.parametrize(
    "slug", ["bearded-dragon", "veiled-chameleon", "slider", "axolotl", "corn-snake"]
)
def test_it_is_told_that_it_changes_something_or_that_nothing_is_known(
    slug: str, state: State, language: Language
) -> None:
    kind = animals()[slug]
    reply = ask(f"needs animal:{kind.name} state:{state.value}", Preferences(language=language))
    plain = ask(f"needs animal:{kind.name}", Preferences(language=language))
    moved = bool(changes_of(in_states(kind, [state])))
    silent = state is State.FEMALE and not moved
    assert (len(reply.why) > len(plain.why)) is not silent
    assert (reply.brief != plain.brief) is not silent
    assert moved or reply.values == plain.values


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("night room:66F animal:corn snake state:ill", "Ill: heat at night below"),
        ("temps basking:95F animal:veiled chameleon state:female", "where she basks"),
        ("check gravid corn snake, hot side 88F, cool side 78F", "I know no figures of that"),
        ("is 95F basking right for my baby beardie", "Very young"),
    ],
)
def test_the_brief_tells_it(line: str, words: str, anyone: Preferences) -> None:
    assert words in " ".join(each.text for each in ask(line, anyone).brief)


def test_a_sick_reptile_has_no_cool_nights_and_a_frog_no_warm_ones() -> None:
    for animal in animals().values():
        night, ill = animal.night_floor_c, in_states(animal, [State.ILL]).night_floor_c
        if night is not None and animal.group in (Group.LIZARD, Group.SNAKE, Group.TORTOISE):
            assert ill is not None
            assert ill.low >= night.high
            assert animal.cool_air_c is None or ill.high <= animal.cool_air_c.high
        else:
            assert ill == night


@pytest.mark.parametrize(
    "name",
    [
        "female veiled chameleon",
        "veiled chameleon female",
        "weibliches Jemenchamäleon",
        "Jemenchamäleon Weibchen",
        "trächtiges Jemenchamäleon",
        "Jemenchamäleon Weibchen mit Eiern",
    ],
)
def test_a_female_is_heard_before_and_behind_the_name_in_both_languages(name: str) -> None:
    for language in ("en", "de"):
        told = ask(f"needs animal:{name}", Preferences(language=language))
        highs = {value.name: value.high for value in told.values}
        assert highs["basking_surface"] == pytest.approx(29.5, abs=0.3)
