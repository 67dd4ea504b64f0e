"""A group's own targets: kept within the limits of the animal. Words: ``kept.ftl``."""

from dataclasses import dataclass
from typing import Final

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.layered import Brief, Care, Layered
from bot.preferences import Context
from bot.queries.own_ranges import of_option, range_read, value_read
from bot.queries.server import TargetQuery
from bot.questions.animals import animal_asked, limit_past, wanted_of
from bot.questions.owned import range_told, value_told
from bot.questions.saved.own_uv import KEPT_NEXT
from bot.questions.saved.unable import server_of, unable
from bot.questions.shared import animal_name
from bot.saved.group import OwnSubject, OwnTarget, bounds_of
from calc.animal import Animal, Subject
from calc.animals import own_name

__all__ = ["SERVER_TARGET", "SUBJECTS", "OutOfOrder", "in_order", "target", "tell_target"]

SUBJECTS: Final[dict[str, OwnSubject]] = {
    "uvi": Subject.UVI,
    "basking": Subject.BASKING_SURFACE,
    "warm": Subject.WARM_AIR,
    "cool": Subject.COOL_AIR,
    "night floor": Subject.NIGHT_FLOOR,
    "night off": Subject.NIGHT_HEAT_OFF,
    "water": Subject.WATER,
    "depth": Subject.WATER_DEPTH,
    "hours": Subject.LIGHT_HOURS,
}
_TARGET = "server target"
_RANGES = {
    Subject.UVI: "range:3-5 best:4",
    Subject.LIGHT_HOURS: "range:10-14h best:12h",
    Subject.WATER_DEPTH: "range:40-60cm best:50cm",
}


@dataclass(frozen=True, slots=True)
class TargetKept:
    """A target of the group's own; ``called`` and ``of`` are as they are typed."""

    animal: Name
    called: str
    of: str
    told: Say
    replaced: bool


@dataclass(frozen=True, slots=True)
class Harmful:
    """A target past a limit of the animal."""

    animal: Name
    limit: Say


@dataclass(frozen=True, slots=True)
class NoWater:
    """An animal that does not live in water."""

    animal: Name


@dataclass(frozen=True, slots=True)
class OutOfOrder:
    """A range that cannot be; ``within`` is what can."""

    within: Say


@dataclass(frozen=True, slots=True)
class OwnWhole:
    """An animal that the group added, and that is changed as a whole."""

    name: str


async def target(query: TargetQuery, context: Context, desk: Desk) -> TargetKept:
    """Keep a target of the group's own for an animal."""
    server = server_of(desk, _TARGET)
    animal = animal_asked(query.animal, context)
    _check_it_is_ours(animal)
    subject = SUBJECTS[query.of]
    _check_it_has_water(animal, subject)
    with of_option("range"):
        low, high = range_read(subject, query.range)
    with of_option("best"):
        best = value_read(subject, query.best) if query.best else None
    if not in_order(subject, low, best, high):
        within = OutOfOrder(range_told(subject, *bounds_of(subject)))
        example = _own_range(subject, animal)
        raise unable(_TARGET, Say("kept-no-order", within), example=example, option="range")
    _check_it_cannot_harm(animal, subject, low, high)
    kept = OwnTarget(
        animal=animal.slug, subject=subject, low=low, best=best, high=high, set_on=desk.now.date()
    )
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    told = range_told(subject, low, high, best)
    return TargetKept(animal_name(animal), animal.name, query.of, told, replaced)


def in_order(subject: Subject, low: float, best: float | None, high: float) -> bool:
    """Say whether a range can be: its ends in order, and within what may be kept."""
    least, most = bounds_of(subject)
    return least <= low <= (low if best is None else best) <= high <= most


def _check_it_is_ours(animal: Animal) -> None:
    own = own_name(animal.slug)
    if own is not None:
        example = f"server animal name:{own} basking:95-105F"
        raise unable(_TARGET, Say("kept-no-whole", OwnWhole(own)), example=example)


def _check_it_has_water(animal: Animal, subject: OwnSubject) -> None:
    """Refuse a target of water for an animal that does not live in it, as far as is known."""
    if subject in (Subject.WATER, Subject.WATER_DEPTH) and animal.water_c is None:
        example = (
            f"server target animal:{animal.name} of:cool {_own_range(Subject.COOL_AIR, animal)}"
        )
        raise unable(_TARGET, Say("kept-no-water", NoWater(animal_name(animal))), example=example)


def _check_it_cannot_harm(animal: Animal, subject: OwnSubject, low: float, high: float) -> None:
    """Refuse a target past a limit: a group may aim elsewhere, and nowhere that harms."""
    limit = limit_past(animal, subject, low, high)
    if limit is None:
        return
    harm = Harmful(animal_name(animal), value_told(subject, limit.value))
    by_law = subject is Subject.WATER_DEPTH
    held = Say("kept-no-harm-law", harm) if by_law else Say("kept-no-harm-limit", harm)
    why = (Say("kept-no-harm", harm), held)
    raise unable(_TARGET, *why, example=_own_range(subject, animal), option="range")


def _own_range(subject: Subject, animal: Animal) -> str:
    """Return the animal's own range with its middle as it may be typed, else one of the kind."""
    known = wanted_of(animal, subject)
    if known is None or subject is Subject.WATER_DEPTH:
        return _RANGES.get(subject, "range:75-80F best:78F")
    if subject in _RANGES:
        unit = "h" if subject is Subject.LIGHT_HOURS else ""
        middle = round((known.low + known.high) / 2.0, 1)
        return f"range:{known.low:g}-{known.high:g}{unit} best:{middle:g}{unit}"
    low, high = (round(c * 1.8 + 32.0) for c in (known.low, known.high))
    return " ".join((f"range:{low}-{high}F", f"best:{(low + high) // 2}F"))


def tell_target(facts: TargetKept) -> Layered:
    """Tell what answers go by from now on, and how to take it away again."""
    say = Says("kept", facts)
    return Layered(
        command=_TARGET,
        title=say("target-title"),
        brief=Brief(head=say("target"), range=(say("target-told"),)),
        steps=(say("step-target"), *KEPT_NEXT),
        care=(Care(say("care-target")),),
    )


SERVER_TARGET = Command(
    name="server target",
    query=TargetQuery,
    stored=target,
    tell=tell_target,
    examples=(
        "server target animal:bearded dragon of:basking range:98-106F best:103F",
        "server target animal:bearded dragon of:uvi range:3-4",
    ),
    who="moderator",
    guide=("for-moderators",),
)
