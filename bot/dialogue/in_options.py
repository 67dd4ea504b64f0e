"""A set-up that was told in words as the options of its question: nothing else of it is kept."""

from collections.abc import Iterator, Mapping

from bot.commands import command_named
from bot.dialogue.another import names_of
from bot.dialogue.told import set_up_told, states_in
from bot.language.hearing import FactName
from bot.preferences import Context
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.routes.asked import Asked
from bot.routes.routing import asked_in

__all__ = ["joined", "set_up_in_options"]

_CHECK, _WORDS, _STATE = "check", "setup", "state"
_AS_OPTIONS = {
    FactName.ANIMAL: "animal",
    FactName.TUBE: "tube",
    FactName.REFLECTOR: "reflector",
    FactName.SCREEN: "screen",
    FactName.DISTANCE: "distance",
    FactName.DISTANCE_BACK: "distance",
    FactName.DISTANCE_PERCH: "distance",
    FactName.TUBE_LENGTH: "length",
    FactName.AGE: "age",
    FactName.UVI: "meter",
    FactName.BASKING: "basking",
    FactName.COOL: "cool",
    FactName.WARM: "warm",
    FactName.NIGHT: "night",
    FactName.ROOM_NIGHT: "night",
    FactName.WATER: "water",
    FactName.ON_FOR: "lamp_on",
    FactName.HOURS: "hours",
    FactName.UV_LAMP: "lamp",
    FactName.TUBES: "tubes",
    FactName.GAP: "gap",
}
"""The facts that an option of a check holds; of all others their words are kept."""


def set_up_in_options(words: str, context: Context) -> Question | None:
    """Return the check of a set-up by its options, and the words of what none of them holds.

    None where nothing is told of one, or several animals are.
    """
    command = command_named(_CHECK)
    assert command is not None
    asked = asked_in(AskQuery(question=words), context)
    if not asked.told.facts or len(asked.told.all(FactName.ANIMAL)) > 1:
        return None
    told = set_up_told(Question(_CHECK, {_WORDS: words}), context)
    options = names_of(command) - {_WORDS}
    values = {name: value for name, value in told.items() if name in options}
    if states := states_in(words):
        values[_STATE] = states
    rest = ", ".join(dict.fromkeys(_rest(asked, values)))
    return Question(_CHECK, {**({_WORDS: rest} if rest else {}), **values})


def joined(before: Question, more: Question) -> Question:
    """Return one check of two: what was told last of an option holds."""
    words = [typed(each.values.get(_WORDS, "")).strip("“”") for each in (before, more)]
    rest = ", ".join(dict.fromkeys(filter(None, words)))
    both = {**before.values, **more.values, _WORDS: rest}
    return Question(_CHECK, {name: value for name, value in both.items() if value})


def _rest(asked: Asked, values: Mapping[str, object]) -> Iterator[str]:
    """Yield the words of what no option holds, and of what is not clear."""
    told = asked.told
    untold = (name for name in told.facts if _AS_OPTIONS.get(name) not in values)
    words = [said.words for name in untold for said in told.all(name)]
    words += [ask.words for ask in told.unclear if ask.name is not FactName.TEXT]
    yield from (each.strip(" .,;") for each in words)
