"""What the options of a question may consult while they are read, and its answer afterwards."""

from collections.abc import Mapping
from contextlib import suppress
from functools import cache
from typing import Annotated, Any

from pydantic import TypeAdapter, ValidationError

from bot.language.errors import NotUnderstoodError
from bot.language.states import before_animals, read_states, states_told
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.typed import typed
from bot.queries.units import system_of
from calc.animal import State

__all__ = ["context_of", "read_alone", "read_options", "reading_of", "states_of"]

_FREE_WORDS = ("question", "setup", "words")


def reading_of(preferences: Preferences) -> dict[str, object]:
    """Return what the options may consult while they are read."""
    return {"units": preferences.bare, "own": preferences.own, "today": preferences.today}


def read_options(
    model: type[Query], values: Mapping[str, object], preferences: Preferences
) -> tuple[Query, Mapping[str, object]]:
    """Return the options read, and their values; a text not read is read in hearing's own words.

    So an option takes what is typed in another language: room: 18 Grad, screen: kein Gitter. What
    was heard and is no value of its option is refused by the words that would be typed for it.
    """
    reading = reading_of(preferences)
    try:
        return model.model_validate(dict(values), context=reading), values
    except ValidationError as error:
        wrong = {str(part) for found in error.errors() for part in found["loc"]} & values.keys()
        texts = {name: typed(values[name]) for name in wrong}
        if any(values[name] != text for name, text in texts.items()):
            return read_options(model, {**values, **texts}, preferences)
        from bot.language.glossary import chosen, glossed

        choices = {option.name: option.choices for option in model.options()}
        heard = {
            name: chosen(text, choices.get(name, ())) or glossed(text).text
            for name, text in texts.items()
        }
        if heard == texts:
            raise
        with suppress(ValidationError):
            again = dict(values) | heard
            return model.model_validate(again, context=reading), again
        raise


def read_alone(
    model: type[Query], option: str, value: object, preferences: Preferences
) -> object | None:
    """Return what one option says, or None where it says nothing that can be read."""
    if isinstance(value, str) and not value.strip():
        return None
    try:
        read: object = _reader(model, option).validate_python(
            value, context=reading_of(preferences)
        )
    except ValidationError:
        return None
    return read


@cache
def _reader(model: type[Query], option: str) -> TypeAdapter[Any]:
    field = model.model_fields[option]
    kind: Any = field.annotation
    for note in field.metadata:
        kind = Annotated[kind, note]
    return TypeAdapter(kind)


def context_of(query: Query, given: Mapping[str, object], preferences: Preferences) -> Context:
    """Return what the answer needs beside the query."""
    typed = (getattr(query, name, None) for name in given)
    # Without a setting, a bare number has a unit only where it tells its own.
    own = preferences.bare is None
    first = next((s for value in typed if (s := system_of(value, bare=own))), None)
    units = preferences.forced_units or first or preferences.shown
    return Context(
        units=units,
        guide_url=preferences.guide_url,
        default_animal=preferences.default_animal,
        own=preferences.own,
        today=preferences.today,
        language=preferences.spoken,
        states=states_of(given, preferences),
    )


def states_of(given: Mapping[str, object], preferences: Preferences) -> frozenset[State]:
    """Return the states of the animal, by an option, by free words or as they were told before."""
    found = set(preferences.states)
    for name, text in given.items():
        if name in _FREE_WORDS and isinstance(text, str):
            found |= states_told(text)
            own = preferences.own.names
            found |= {state for state, words in before_animals(text) if _names_one(words, own)}
    # States that were heard are the preferences' already; what cannot be read is said elsewhere.
    if isinstance(told := given.get("state"), str):
        with suppress(NotUnderstoodError):
            found |= read_states(told)
    return frozenset(found)


def _names_one(words: str, own: tuple[str, ...]) -> bool:
    from calc.naming import Known, Several, named

    return any(
        isinstance(named(text, own).what, Known | Several) for text in (words, words.split()[0])
    )
