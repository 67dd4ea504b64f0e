"""What a line of a conversation means by rules: the question before changed, or another one."""

from collections.abc import Mapping

from bot.commands import command_named
from bot.dialogue.alone import by_facts
from bot.dialogue.another import BY_CASES, OF_UV, another_asked, asking, carried
from bot.dialogue.as_asked import tells_by_name
from bot.dialogue.changes import cold_told
from bot.dialogue.fragments import change_wished, changed_by, way_asked
from bot.dialogue.heat_told import doubted_there
from bot.dialogue.kept import Dialogue
from bot.dialogue.phrases import asks
from bot.dialogue.told import box_told, told_of_set_up, warmth_told
from bot.dialogue.topics import Topic, topic_of
from bot.dialogue.unclear import unclear
from bot.language.units import Units
from bot.language.unsure import NOT_SURE, Unsure
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.queries.typed import typed
from bot.routes.part import page_read
from bot.routes.routing import asked_in

__all__ = ["meant_by_rule"]

# What comes next after a check is asked of the same set-up.
_CHECK, _AFTER_CHECK, _NEEDS, _PLACE = "check", "next", "needs", "distance"

# Pages behind which a length is how far a heat lamp is.
_OF_HEAT_LAMPS = (
    *("basking-lamps", "heat-sources", "the-basking-spot", "dimmers-and-wattage"),
    *("answers-about-lamps", "answers-about-dimming"),
)


def meant_by_rule(
    dialogue: Dialogue,
    line: str,
    told: Mapping[str, object],
    context: Context,
    preferences: Preferences,
) -> Question | Layered | str:
    """Return what a line means by what it names, asks and tells: a question, or it in its words."""
    before, known = dialogue.asked, dialogue.known
    command = command_named(before.command) if before else None
    name, values = (before.command, before.values) if before else ("", {})
    changed = None
    if command is not None:
        changed = changed_by(command, values, told, line, context, preferences)
    if isinstance(changed, Layered):
        return changed
    spoken_of = "night" if values.get("about") == "night" else name
    if spoken_of != name and (cold := cold_told(values, known, told, line, context, preferences)):
        return cold
    asked = asked_in(AskQuery(question=line), context)
    if before and (doubted := doubted_there(before, line, asked, known)):
        return doubted
    topic = topic_of(line, spoken_of, dialogue.page)
    if topic and not topic.of_an_animal:
        return _of_a_topic(topic, known, line, context)
    another = _another(name, line, context)
    if changed is not None and (another is None or not asks(line)):
        return changed
    if command is not None and (step := change_wished(command, told, line)):
        return Question("basking", step)
    if spoken_of != "night" and (way := way_asked(line)):
        return page_read(way, context.language)
    if name == _CHECK and another and another.command == _AFTER_CHECK:
        return Question(_AFTER_CHECK, {**another.values, **(changed.values if changed else values)})
    is_asked = asks(line) or line.rstrip().endswith("?")
    if another is not None and not is_asked and warmth_told(line, told, context, preferences):
        return _by_what_it_tells(dialogue, line, told, context)
    if another is not None:
        heard = {n: v for n, v in another.values.items() if typed(v) != NOT_SURE}
        return asking(another, carried(another.command, known), heard)
    if topic and "animal" in known:
        return _of_its_own(topic, known)
    if is_asked and (another := another_asked("", line, context, known)):
        return asking(another, carried(another.command, known))
    return _by_what_it_tells(dialogue, line, told, context)


def _of_a_topic(topic: Topic, known: Mapping[str, object], line: str, context: Context) -> Question:
    if topic.values.get("about") == "uvi":
        return _of_its_own(topic, known)
    told_too = told_of_set_up(line, context) if topic.command != "guide" else {}
    here = carried(topic.command, {**known, **told_too})
    return asking(Question(topic.command, here), topic.values)


def _of_its_own(topic: Topic, known: Mapping[str, object]) -> Question:
    """Return what is asked of the animal; of UV what its own tube gives, where that was told."""
    if topic.values.get("about") == "uvi" and {"tube", _PLACE} <= known.keys():
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        return Question("uvi", {**unsure, **carried("uvi", known), _PLACE: known[_PLACE]})
    return Question(topic.command, carried(topic.command, known) | dict(topic.values))


def _another(name: str, line: str, context: Context) -> Question | None:
    """Return the other question that a line asks by itself; None where it tells a part."""
    if tells_by_name(line):
        return None
    by_lamp = by_facts(line, context, before=name) if name == "lamp" and not asks(line) else None
    return None if by_lamp and by_lamp.command == "watts" else another_asked(name, line, context)


def _by_what_it_tells(
    dialogue: Dialogue, line: str, told: Mapping[str, object], context: Context
) -> Question | Layered | str:
    """Return the question that a line is for by what it tells alone; else that it means nothing."""
    before, known = dialogue.asked, dialogue.known
    name, values = (before.command, before.values) if before else ("", {})
    place = told.get(_PLACE, Units.IN) if name in OF_UV else None
    spoken_of = "lamp" if dialogue.page in _OF_HEAT_LAMPS and name not in OF_UV else name
    if found := by_facts(line, context, place=place, before=spoken_of):
        if found.command == "distance" and not before and _PLACE in known:
            found = Question("uvi", {_PLACE: known[_PLACE], **found.values})
        unsure = dict.fromkeys(("reflector", "screen"), Unsure(NOT_SURE))
        by_cases = unsure if found.command in BY_CASES else {}
        return Question(
            found.command, by_cases | carried(found.command, known) | dict(found.values)
        )
    if "animal" in told_of_set_up(line, context):
        return Question(_NEEDS, {**(values if name == _NEEDS else {}), "animal": known["animal"]})
    box = box_told(line, context)
    if "enclosure" in box and "animal" in known:
        return Question("plan", {**carried("plan", known), **box})
    if (before or known) and (said := unclear(name, known, line, context)):
        return said
    whole = f"{line.rstrip(' ?!.')}?"
    if known and (another := another_asked("", whole, context, known)):
        return asking(another, carried(another.command, known))
    return line if line.startswith("ask ") else f"ask {line}"
