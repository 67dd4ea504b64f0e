"""Which of what rules found and what was learned of such lines a line means."""

from collections.abc import Mapping

from bot.dialogue.bare import only_number
from bot.dialogue.doing import OPTIONS, Doer, Meant, ways
from bot.dialogue.figures import bare_degrees
from bot.dialogue.following import Does, does, line_after
from bot.dialogue.kept import Dialogue
from bot.dialogue.phrases import asks
from bot.dialogue.places import place_named
from bot.dialogue.topics import topic_of
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.routes.asked import Asked
from bot.routes.beyond import BEYOND
from bot.routes.routing import asked_in, route

__all__ = ["agrees_with", "meant_by"]

# From these chances [1] on what was learned bears out what rules say, speaks where they are silent,
# and speaks against them.
# The last three hold where rules read what a line tells: for another place of it, and for another
# question, which a line that does not ask never is.
_BEARS_OUT, _SPEAKS, _AGAINST = 0.12, 0.18, 0.5
_AGAINST_WHAT_IS_TOLD, _AGAINST_A_CHANGE, _NEVER = 0.8, 0.9, 1.1
# Of one word alone little is sure; and whoever asks, or says more, does not only thank.
_FEWEST_WORDS, _OF_ONE_WORD, _TELLS, _MOST_OF_THANKS = 2, 0.3, 0.25, 4
_ASKS_NOTHING = ("t:thanks", "t:done")
_TELLS_LITTLE = frozenset((FactName.ANIMAL, FactName.LAMP, FactName.UV_LAMP))
_CHOICE = "talk-either"
_OF_UNITS = ("cm", "c", "in", "f", "unit")
_SAYS_IT_AGAIN = ("again", "cm", "c", "in", "f", "unit", "no idea")

_OF_WARMTH = ("temps", "night")
_OF_A_WAY = frozenset(("distance", "uvi"))
# What is asked on about is answered too where it changes the question before.
_ASKED_OF = {"mesh": "screen", "glass": "screen", "compact": "lamp", "size": "enclosure"}
_IN_WORDS = ("watts", "enclosure", "lid", "lamp", "hours", "measured")
"""Of these a whole set-up may hold the words."""


def meant_by(
    dialogue: Dialogue,
    line: str,
    found: Question | Layered | str,
    told: Mapping[str, object],
    context: Context,
    preferences: Preferences,
) -> Meant | None:
    """Return what a line means by what was learned; None where what rules found stands.

    ``found`` is what they say: the question before with what they read, another question, or that
    they did not follow.
    """
    asked = asked_in(AskQuery(question=line), context)
    likely = does(line_after(dialogue, asked))
    by_rule, unclear = _as_question(found, line, context)
    if by_rule is not None and any(
        one.chance >= _BEARS_OUT and agrees_with(one.key, by_rule, dialogue.asked) for one in likely
    ):
        return None
    if by_rule is not None and (
        _is_named_by_itself(by_rule, line, dialogue)
        or _tells_what_was_asked_for(by_rule, dialogue)
        or _is_a_bare_number_of(by_rule, line, dialogue)
    ):
        return None
    if likely and unclear == "off" and likely[0].key == "t:off":
        return None
    doer = Doer(dialogue, line, told, context, preferences)
    for one in _figures_first(likely, line):
        if one.chance < _SPEAKS:
            continue
        meant = doer.does(one.key)
        if meant is not None and one.chance >= _least(one, meant, asked, found, by_rule, dialogue):
            return meant
    return None


def _tells_what_was_asked_for(found: Question, dialogue: Dialogue) -> bool:
    """Say whether the question before is told what it had asked for last."""
    before, wanted = dialogue.asked, dialogue.wanted[-1:]
    same = before is not None and before.command == found.command
    return same and any(
        name in found.values and before is not None and name not in before.values for name in wanted
    )


def _is_a_bare_number_of(found: Question, line: str, dialogue: Dialogue) -> bool:
    """Say whether a number without unit and place changes what the answer before was about."""
    before = dialogue.asked
    if before is None or found == before or not only_number(line) or place_named(line):
        return False
    of_needs = before.command == "needs" and "about" in before.values
    same = found.command == before.command or {found.command, before.command} <= _OF_A_WAY
    return same or (of_needs and found.command in _OF_WARMTH)


def _is_named_by_itself(found: Question, line: str, dialogue: Dialogue) -> bool:
    """Say whether the words alone name what is asked, whatever the animal."""
    before = dialogue.asked.command if dialogue.asked else ""
    topic = topic_of(line, before, dialogue.page)
    return topic is not None and not topic.of_an_animal and topic.command == found.command


def _figures_first(likely: tuple[Does, ...], line: str) -> tuple[Does, ...]:
    """Return what a line may do; one with a figure tells it, before it is about the answer."""
    if not any(map(str.isdigit, line)) or not likely or likely[0].key[0] != "t":
        return likely
    return tuple(sorted(likely, key=lambda one: one.key[0] != "f"))


def _least(
    one: Does,
    meant: Meant,
    asked: Asked,
    found: Question | Layered | str,
    by_rule: Question | None,
    dialogue: Dialogue,
) -> float:
    """Return from which chance [1] on what was learned is taken, beside what rules found."""
    is_asking = asks(asked.said) or "?" in asked.said
    if by_rule is None:
        is_choice = isinstance(found, Layered) and found.brief.head.id == _CHOICE
        if one.key in _ASKS_NOTHING and (is_asking or len(asked.words.split()) > _MOST_OF_THANKS):
            return _AGAINST_WHAT_IS_TOLD
        if one.key == "t:off":
            return _AGAINST
        few = len(asked.words.split()) < _FEWEST_WORDS
        if few and one.key in _ASKS_NOTHING:
            return _AGAINST_A_CHANGE
        return _AGAINST if is_choice else _OF_ONE_WORD if few else _SPEAKS
    before = dialogue.asked
    figure = only_number(asked.said) or bare_degrees(asked.said)
    tells = bool(asked.told.facts.keys() - _TELLS_LITTLE) or bool(figure)
    changes = before is not None and (
        by_rule != before if by_rule.command == before.command else tells
    )
    if not (tells or changes):
        has_figures = any(map(str.isdigit, asked.said))
        return _AGAINST if is_asking or has_figures or one.key[0] != "f" else _TELLS
    if one.key[0] == "f":
        # What would change nothing is no reason to leave what was read.
        return _NEVER if meant[1] == before else _AGAINST_WHAT_IS_TOLD
    of_the_answer = one.key[0] == "t" and one.key[2:] not in _OF_UNITS
    if of_the_answer and changes and any(map(str.isdigit, asked.said)):
        return _NEVER
    return _AGAINST_A_CHANGE if is_asking else _NEVER


def _as_question(
    found: Question | Layered | str, line: str, context: Context
) -> tuple[Question | None, str]:
    """Return what rules found as a question; else whether it is no matter of this bot."""
    if isinstance(found, Question):
        return found, ""
    if isinstance(found, Layered):
        return None, ""
    try:
        routed = route(AskQuery(question=line), context)
    except NotUnderstoodError:
        return None, ""
    if isinstance(routed, Layered):
        return None, "off" if routed.title is BEYOND else ""
    return Question(routed.command, routed.values), ""


def agrees_with(key: str, found: Question, before: Question | None) -> bool:
    """Say whether a question is what a line asks or tells that does this."""
    kind, _, name = key.partition(":")
    if kind == "q" and ways()[name].leads_to(found):
        return True
    name = _ASKED_OF.get(name, name) if kind == "q" else name
    if name in OPTIONS:
        given = before.values if before is not None and before.command == found.command else {}
        options = (*OPTIONS[name], *(("setup",) if name in _IN_WORDS else ()))
        return any(
            option in found.values and typed(found.values[option]) != typed(given.get(option, ""))
            for option in options
        )
    return kind == "t" and name in _SAYS_IT_AGAIN and found == before
