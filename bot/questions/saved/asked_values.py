"""The values of a question as they may be kept: figures, choices and animals, no other words."""

from collections.abc import Iterator, Mapping

from pydantic import ValidationError

from bot.command import Command
from bot.queries.typed import typed
from bot.saved.group import Own
from calc.animals import animal_name
from calc.naming import find

__all__ = ["values_of"]


def values_of(kind: Command | None, given: Mapping[str, str], own: Own) -> dict[str, str]:
    """Return the values of a question as text: figures, choices and animals, no other words."""
    if kind is None or kind.stored is not None:
        return {}
    try:
        query = kind.query.model_validate(dict(given), context={"own": own})
    except ValidationError:
        return {}
    return dict(_values(kind, query, given))


def _values(kind: Command, query: object, given: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    for option in kind.query.options():
        if option.name not in given or option.document:
            continue
        value = getattr(query, option.name)
        if not isinstance(value, str):
            yield option.name, typed(value)
        elif option.completes == "animal":
            if animal := find(value):
                yield option.name, animal_name(animal.slug)
        elif option.choices:
            yield option.name, value
