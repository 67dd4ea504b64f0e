"""A line of the log of changes in the words that `server show` has for the same figure."""

import json
from datetime import date
from typing import Any

from bot.answers.own import lamp_told, screen_told
from bot.keeping.own_animals import animal_told
from bot.keeping.targets import target_told
from bot.kept.group import Change, OwnAnimal, OwnLamp, OwnScreen, OwnTarget
from bot.preferences import Context

__all__ = ["value_told", "what_told"]

# The log keeps no such day, and what is told is cut off before it.
_ANY_DAY = date(2000, 1, 1)
_SET_ON = "; set on "


def what_told(line: Change) -> str:
    """Return what was changed, such as ``target bearded dragon uvi``."""
    name = line.name
    if line.what == "target":
        name = name.replace("-", " ").replace("_", " ")
    return f"{line.what} {name}"


def value_told(line: Change, text: str, context: Context) -> str:
    """Return a logged value in words; the log holds figures as JSON."""
    if not text.startswith("{"):
        return text or "nothing"
    return _figure_told(line, json.loads(text), context).partition(_SET_ON)[0]


def _figure_told(line: Change, kept: dict[str, Any], context: Context) -> str:
    if line.what == "lamp":
        lamp = OwnLamp.model_validate({**kept, "name": line.name, "set_on": _ANY_DAY})
        return lamp_told(lamp, context)
    if line.what == "screen":
        screen = OwnScreen.model_validate({**kept, "name": line.name, "set_on": _ANY_DAY})
        return screen_told(screen)
    if line.what == "animal":
        own = OwnAnimal.model_validate({**kept, "name": line.name, "set_on": _ANY_DAY})
        return animal_told(own, context)
    animal, _, subject = line.name.partition(" ")
    return target_told(
        OwnTarget.model_validate(
            {**kept, "animal": animal, "subject": subject, "set_on": _ANY_DAY}
        ),
        context,
    )
