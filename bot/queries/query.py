"""What every question is: a frozen model whose options say what a front may offer for them."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any, get_args

from pydantic import BaseModel, BeforeValidator, ConfigDict
from pydantic.fields import FieldInfo

from bot.language.words import split_line
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["Option", "Query", "QueryOption", "reading"]


@dataclass(frozen=True, slots=True)
class Option:
    """What a front may offer for an option: fixed choices, a list that completes it, or a file.

    For a ``document`` the front hands over the text of a file that the asker names or attaches.
    ``several``: a list, of which the last is completed.
    """

    choices: tuple[str, ...] = ()
    completes: str = ""
    document: bool = False
    several: bool = False


@dataclass(frozen=True, slots=True)
class QueryOption:
    """An option of a question as the fronts and the help see it."""

    name: str
    required: bool
    example: str
    choices: tuple[str, ...]
    completes: str
    document: bool
    several: bool


class Query(BaseModel):
    """A question that was understood."""

    model_config = ConfigDict(
        frozen=True, extra="forbid", arbitrary_types_allowed=True, defer_build=True
    )

    def asks_of_an_animal(self) -> bool:
        """Say whether the answer depends on the animal, where the question has such an option."""
        return True

    @classmethod
    @cache
    def options(cls) -> tuple[QueryOption, ...]:
        """Return the options in the order of the model."""
        found = []
        for name, field in cls.model_fields.items():
            facts = next((m for m in _facts_of(field) if isinstance(m, Option)), Option())
            found.append(
                QueryOption(
                    name=name,
                    required=field.is_required(),
                    example=str((field.examples or ("",))[0]),
                    choices=facts.choices,
                    completes=facts.completes,
                    document=facts.document,
                    several=facts.several,
                )
            )
        return tuple(found)

    @classmethod
    @cache
    def examples(cls) -> Mapping[str, str]:
        """Return an example of each option, by its name."""
        return MappingProxyType({option.name: option.example for option in cls.options()})

    @classmethod
    def texts_in(cls, rest: str, free: str = "") -> dict[str, str]:
        """Return the text of each option in what follows the question's name, or raise.

        ``free`` names the option that takes the words before the first ``name:``.
        """
        # The name itself, which may be of two words, is one word here.
        return split_line(f"question {rest}", cls.examples(), free)[1]

    @classmethod
    def lacking(cls, given: Mapping[str, str], _own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return the options that are not given and that this question cannot do without."""
        return tuple(o.name for o in cls.options() if o.required and o.name not in given)


def _facts_of(field: FieldInfo) -> Iterator[object]:
    """Yield what is noted of a field's kind, also where the field may stay empty."""
    yield from field.metadata
    for kind in get_args(field.annotation):
        yield from getattr(kind, "__metadata__", ())


def reading(read: Callable[[str], Any]) -> BeforeValidator:
    """Return a validator that reads text with ``read`` and passes what is read already."""

    def validate(value: object) -> object:
        return read(value) if isinstance(value, str) else value

    return BeforeValidator(validate)
