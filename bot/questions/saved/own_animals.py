"""Animals that a group adds: a name that means nothing else, targets, and limits that hold them.

Words: ``kept.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from pydantic import ValidationError

from bot.command import Command
from bot.desk import Desk
from bot.facts import Length, Name, Say, Says, metres
from bot.layered import Brief, Care, Layered, Row
from bot.preferences import Context
from bot.queries.own_ranges import of_option, range_read, uvi_limit_read, warmth_read
from bot.queries.server import AnimalQuery
from bot.questions.animals import GROUPS_OWN, own_animal, past_limits
from bot.questions.owned import By, OwnLimit, limit_span, limit_told, range_told, value_told
from bot.questions.saved.own_names import check_name
from bot.questions.saved.own_targets import OutOfOrder, in_order
from bot.questions.saved.own_uv import KEPT_NEXT
from bot.questions.saved.unable import server_of, unable
from bot.saved.group import (
    LIMITS_IN_ORDER,
    UVI_ABOVE_ZERO,
    OwnAnimal,
    OwnRange,
    OwnSubject,
    bounds_of,
    limit_bounds,
)
from bot.saved.values import OwnLife
from calc.animal import Subject
from calc.limits import Limit, limits_of
from calc.setup.bodies import check_back

__all__ = ["SERVER_ANIMAL", "animal", "tell_animal"]

_ANIMAL = "server animal"
_WANTS: Final[dict[str, OwnSubject]] = {
    "uvi": Subject.UVI,
    "basking": Subject.BASKING_SURFACE,
    "warm": Subject.WARM_AIR,
    "cool": Subject.COOL_AIR,
    "night": Subject.NIGHT_FLOOR,
    "night_off": Subject.NIGHT_HEAT_OFF,
    "water": Subject.WATER,
    "depth": Subject.WATER_DEPTH,
    "hours": Subject.LIGHT_HOURS,
}
_OPTIONS = {subject: option for option, subject in _WANTS.items()}
# The option of a limit, and what it may be.
_LIMITS = {
    OwnLimit.SURFACE: ("surface_limit", "104F"),
    OwnLimit.COOLEST: ("cool_limit", "86F"),
    OwnLimit.NIGHT: ("night_limit", "52F"),
    OwnLimit.UVI: ("uvi_limit", "6"),
}
_RANGES = {Subject.UVI: "2-3", Subject.LIGHT_HOURS: "10-12h", Subject.WATER_DEPTH: "12-16in"}
_LIMITED_BY = {
    Subject.UVI: "uvi_limit",
    Subject.BASKING_SURFACE: "surface_limit",
    Subject.WARM_AIR: "surface_limit",
}


@dataclass(frozen=True, slots=True)
class AnimalKept:
    """An animal of the group's own, whole as it is kept now."""

    name: str
    scientific: str | None
    wants: tuple[Say, ...]
    limits: tuple[Say, ...]
    replaced: bool
    back: Length | None
    life: OwnLife | None


@dataclass(frozen=True, slots=True)
class HarmfulOwn:
    """A target past a limit; ``careful``: one of ours, and the option to tell its own."""

    animal: Name
    limit: Say
    careful: str | None


async def animal(query: AnimalQuery, context: Context, desk: Desk) -> AnimalKept:
    """Keep an animal of the group's own, whole as it is told now."""
    server = server_of(desk, _ANIMAL)
    check_name(query.name)
    kept = _kept(query, desk)
    _check_it_cannot_harm(kept)
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return AnimalKept(
        name=kept.name,
        scientific=kept.scientific or None,
        wants=tuple(range_told(of, span.low, span.high) for of, span in kept.wants.items()),
        limits=tuple(_held(kept)),
        replaced=replaced,
        back=None if kept.back_m is None else metres(kept.back_m),
        life=kept.life,
    )


def _held(kept: OwnAnimal) -> Iterator[Say]:
    """Yield the limits that hold it, and whose they are."""
    limits = limits_of(own_animal(kept))
    held = {
        OwnLimit.SURFACE: limits.surface_c,
        OwnLimit.COOLEST: limits.coolest_air_c,
        OwnLimit.NIGHT: limits.night_c,
        OwnLimit.UVI: limits.uvi_now,
    }
    for what, limit in held.items():
        if limit is not None:
            by = By.CAREFUL if getattr(kept, what.value) is None else By.GROUP
            yield limit_told(what, limit.value, by)


def _kept(query: AnimalQuery, desk: Desk) -> OwnAnimal:
    wants: dict[OwnSubject, OwnRange] = {}
    for option, subject in _WANTS.items():
        if text := getattr(query, option):
            with of_option(option):
                low, high = range_read(subject, text)
            _check_order(option, subject, low, high)
            wants[subject] = OwnRange(low=low, high=high)
    example = f"server animal name:{query.name} basking:88-93F cool:70-76F"
    if not wants:
        raise unable(_ANIMAL, Say("kept-no-target"), example=example)
    limits = {what.value: _limit(query, what) for what in OwnLimit}
    try:
        return OwnAnimal.model_validate(
            {
                "name": query.name,
                "scientific": query.scientific,
                "wants": wants,
                "set_on": desk.now.date(),
                "back_m": _back_m(query),
                "life": query.life,
                **limits,
            }
        )
    except ValidationError as error:
        kind = error.errors()[0]["type"]
        if kind not in (UVI_ABOVE_ZERO, LIMITS_IN_ORDER):
            raise
        why = Say("kept-no-zero" if kind == UVI_ABOVE_ZERO else "kept-no-limit-order")
        raise unable(_ANIMAL, why, example=example) from error


def _back_m(query: AnimalQuery) -> float | None:
    if query.back is None:
        return None
    check_back(query.back.low)
    return query.back.low


def _check_order(option: str, subject: OwnSubject, low: float, high: float) -> None:
    if not in_order(subject, low, None, high):
        within = OutOfOrder(range_told(subject, *bounds_of(subject)))
        example = _RANGES.get(subject, "75-80F")
        raise unable(
            _ANIMAL, Say("kept-no-order", within), example=f"{option}:{example}", option=option
        )


def _limit(query: AnimalQuery, what: OwnLimit) -> float | None:
    option, example = _LIMITS[what]
    text = getattr(query, option)
    if not text:
        return None
    with of_option(option):
        value = uvi_limit_read(text) if what is OwnLimit.UVI else warmth_read(text)
    low, high = limit_bounds(what.value)
    if not (low <= value <= high and value > 0.0):
        within = OutOfOrder(limit_span(what, low, high))
        raise unable(
            _ANIMAL, Say("kept-no-limit", within), example=f"{option}:{example}", option=option
        )
    return value


def _check_it_cannot_harm(kept: OwnAnimal) -> None:
    """Refuse a target past a limit that was given, or past one that holds for any animal."""
    for subject, limit in past_limits(kept):
        harm = HarmfulOwn(
            Name("", kept.name),
            value_told(subject, limit.value),
            _tells_its_own(subject, limit, kept),
        )
        why = [Say("kept-no-harm", harm), Say("kept-no-harm-own", harm)]
        example = _fitting(kept, subject, limit)
        option = _OPTIONS[subject]
        raise unable(_ANIMAL, *why, example=f"{option}:{example}", option=option)


def _tells_its_own(subject: OwnSubject, limit: Limit, kept: OwnAnimal) -> str | None:
    """Return the option that tells a limit of its own, where one of ours was passed."""
    if subject in (Subject.LIGHT_HOURS, Subject.WATER_DEPTH) or limit.source == GROUPS_OWN:
        return None
    colder = kept.wants[subject].low < limit.value and subject not in _LIMITED_BY
    return "night_limit" if colder else _LIMITED_BY.get(subject, "cool_limit")


def _fitting(kept: OwnAnimal, subject: OwnSubject, limit: Limit) -> str:
    """Return a range that stays within the limits, as it may be typed."""
    if subject in (Subject.LIGHT_HOURS, Subject.WATER_DEPTH):
        return _RANGES[subject]
    if subject is Subject.UVI:
        return f"{round(limit.value * 0.4, 1):g}-{round(limit.value * 0.7, 1):g}"
    steps = (-4.0, -8.0, -16.0, 4.0, 8.0, 16.0)
    for low in (limit.value + step for step in steps):
        wants = {**kept.wants, subject: OwnRange(low=low, high=low + 2.0)}
        if subject not in dict(past_limits(kept.model_copy(update={"wants": wants}))):
            return f"{low:.0f}-{low + 2.0:.0f}C"
    return "75-80F"


def tell_animal(facts: AnimalKept) -> Layered:
    """Tell that everybody can ask for it now, and what holds it."""
    say = Says("kept", facts)
    return Layered(
        command=_ANIMAL,
        title=say("animal-title"),
        brief=Brief(head=say("animal"), range=(say("animal-by"),)),
        steps=(say("step-needs"), say("step-animal"), *KEPT_NEXT),
        numbers=tuple(_rows(facts, say)),
        care=(Care(say("care-vouch")),),
    )


def _rows(facts: AnimalKept, say: Says) -> Iterator[Row]:
    if facts.scientific is not None:
        yield Row(say("label-scientific"), say("scientific"))
    yield from (Row(say("label-target"), want) for want in facts.wants)
    yield from (Row(say("label-limit"), limit) for limit in facts.limits)
    if facts.back is not None:
        yield Row(say("label-back"), say("back"))
    if facts.life is not None:
        yield Row(say("label-life"), say.by("life", facts.life))


SERVER_ANIMAL = Command(
    name="server animal",
    query=AnimalQuery,
    stored=animal,
    tell=tell_animal,
    examples=(
        "server animal name:Moss lizard uvi:2-3 basking:88-93F cool:70-76F night:58-64F",
        (
            "server animal name:Moss lizard basking:88-93F cool:70-76F surface_limit:104F "
            "cool_limit:86F night_limit:52F uvi_limit:6"
        ),
    ),
    who="moderator",
    guide=("for-moderators",),
)
