"""What an animal is told to need here, noted when it is told, and what changed of it since.

Words: ``words/<language>/retarget.ftl``.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.desk import Desk
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.units import Units
from bot.preferences import Context
from bot.questions.animals import animal_asked, wanted_of
from bot.questions.owned import range_told
from bot.saved.group import Own, OwnSubject
from bot.saved.keeper import Enclosure
from bot.saved.targets import Aim, TargetMoved
from calc.animal import Subject
from calc.animals import animal_name

__all__ = ["TargetChanged", "moved_said", "note_told", "targets_of"]

_SUBJECTS: tuple[OwnSubject, ...] = (
    Subject.UVI,
    Subject.BASKING_SURFACE,
    Subject.WARM_AIR,
    Subject.COOL_AIR,
    Subject.NIGHT_FLOOR,
    Subject.NIGHT_HEAT_OFF,
    Subject.WATER,
    Subject.WATER_DEPTH,
    Subject.LIGHT_HOURS,
)


@dataclass(frozen=True, slots=True)
class TargetChanged:
    """What was told to be aimed at, and what is now; None: no figure is known any more."""

    before: Say
    now: Say | None


def targets_of(slug: str, own: Own) -> dict[OwnSubject, Aim]:
    """Return what an animal is told to need, a group's own figures first; nothing if unknown."""
    try:
        animal = animal_asked(animal_name(slug), Context(Units.CM, own=own))
    except NotUnderstoodError:
        return {}
    found = {subject: wanted_of(animal, subject) for subject in _SUBJECTS}
    return {
        subject: Aim(low=target.low, best=target.best, high=target.high)
        for subject, target in found.items()
        if target is not None
    }


async def note_told(desk: Desk, context: Context, *boxes: Enclosure) -> None:
    """Note which targets the keeper of these enclosures is told here and now."""
    told = {
        box.name: (box.setup.animal, targets_of(box.setup.animal, context.own))
        for box in boxes
        if box.setup.animal is not None
    }
    await desk.store.told.tell(desk.keeper, desk.server, told)


def moved_said(moved: Sequence[TargetMoved]) -> tuple[Say, ...]:
    """Return what changed, each as it is now and as it was."""
    return tuple(Say("retarget-one", _changed(one)) for one in moved)


def _changed(one: TargetMoved) -> TargetChanged:
    now = one.now
    return TargetChanged(
        before=range_told(one.subject, one.before.low, one.before.high, one.before.best),
        now=None if now is None else range_told(one.subject, now.low, now.high, now.best),
    )
