"""The other question that a line asks by itself, and what of the set-up goes along to it."""

from collections.abc import Mapping
from types import MappingProxyType

from bot.command import Command
from bot.commands import command_named
from bot.dialogue.phrases import asks
from bot.language.errors import NotUnderstoodError
from bot.layered import Layered
from bot.preferences import Context
from bot.queries.options import AnimalName, Tube
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.routes.routing import route

__all__ = ["BY_CASES", "OF_UV", "STAYS", "another_asked", "asking", "carried", "names_of"]

OF_UV = ("distance", "uvi", "tube", "section", "dose")
"""The questions of a UV tube, which know its box by its length."""
BY_CASES = ("distance", "uvi")
"""These are answered for every fixture and screen that it may be."""
STAYS = frozenset(
    (
        *("animal", "tube", "reflector", "screen", "length", "age", "tubes", "gap", "lamp"),
        *("enclosure", "material", "lid", "room", "state"),
    )
)
"""What is so of the keeper's set-up, whatever is asked next, by the options."""
# A name alone with a question mark goes on with what was asked.
_FEW_WORDS = 4
_WITHOUT_AN_ANIMAL = ("check", "guide")


class _GoingOn(AskQuery):
    """A question in free words, of the animal and the tube that were told before it."""

    animal: AnimalName = ""
    tube: Tube | None = None


def asking(asked: Question, *told: Mapping[str, object]) -> Question:
    """Return a question with what is told beside it; what is empty is left out."""
    values = dict(asked.values)
    for each in told:
        values |= each
    return Question(asked.command, {name: value for name, value in values.items() if value})


def another_asked(
    name: str, line: str, context: Context, known: Mapping[str, object] = MappingProxyType({})
) -> Question | None:
    """Return the other question that a line asks by itself, or of what is known."""
    told = {option: known[option] for option in ("animal", "tube") if option in known}
    try:
        query = _GoingOn.model_validate({"question": line, **told})
        whole = asks(line) or (line.rstrip().endswith("?") and len(line.split()) > _FEW_WORDS)
        routed = route(query, context, by_rule=not whole)
    except NotUnderstoodError:
        return None
    if isinstance(routed, Layered):
        found = _only_offer(routed)
    else:
        found = None if routed.animal_unclear else Question(routed.command, routed.values)
    if found is None or found.command in (name, *_WITHOUT_AN_ANIMAL):
        return None
    other = command_named(found.command)
    return found if other is not None and "animal" in names_of(other) else None


def _only_offer(told: Layered) -> Question | None:
    """Return the one question that may be meant: with what is known it can be asked."""
    return told.perhaps if len(told.offers) == 1 else None


def carried(name: str, known: Mapping[str, object]) -> dict[str, object]:
    """Return what another question takes along of the set-up that was told."""
    command = command_named(name)
    assert command is not None
    here = names_of(command) & STAYS
    return {
        option: value
        for option, value in known.items()
        # A tube's question knows the box by its length alone.
        if option in here
        and typed(value)
        and not (option == "enclosure" and name not in OF_UV and "x" not in typed(value))
    }


def names_of(command: Command) -> set[str]:
    """Return the options of a question."""
    return set(command.query.examples())
