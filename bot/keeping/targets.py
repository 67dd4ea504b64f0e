"""A group's own targets: kept within the limits of the animal, told in words."""

from collections.abc import Iterator
from contextlib import contextmanager

from pydantic import ValidationError

from bot.answers.animals import animal_asked, limit_past, of_animal, wanted_of
from bot.answers.figures import (
    calendar_day,
    hours,
    number,
    temperature,
    temperature_range,
    uvi_range,
)
from bot.desk import Desk
from bot.keeping.places import server_of
from bot.keeping.words import measured_name
from bot.kept.group import OwnSubject, OwnTarget
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import (
    read_duration,
    read_number,
    read_number_range,
    read_temperature,
    single,
)
from bot.preferences import Context
from bot.queries.server import TargetQuery
from bot.reply import Reply, Row
from calc.animals import Animal, Subject, own_name
from calc.limits import Limit
from calc.quantities import Quantity

__all__ = [
    "NEXT",
    "SUBJECTS",
    "WORDS",
    "limit_told",
    "of_option",
    "range_read",
    "range_told",
    "target",
    "target_told",
]

SUBJECTS: dict[str, OwnSubject] = {
    "uvi": Subject.UVI,
    "basking": Subject.BASKING_SURFACE,
    "warm": Subject.WARM_AIR,
    "cool": Subject.COOL_AIR,
    "night floor": Subject.NIGHT_FLOOR,
    "night off": Subject.NIGHT_HEAT_OFF,
    "hours": Subject.LIGHT_HOURS,
}
_READ = (Quantity.UVI, Quantity.BASKING_SURFACE, Quantity.WARM_AIR, Quantity.COOL_AIR)
WORDS = {
    **{Subject(quantity): measured_name(quantity) for quantity in _READ},
    Subject.NIGHT_FLOOR: "night floor",
    Subject.NIGHT_HEAT_OFF: "night heat off at",
    Subject.LIGHT_HOURS: "light",
}
_RANGES = {
    Subject.UVI: "range:3-5 best:4",
    Subject.LIGHT_HOURS: "range:10-14 hours best:12 hours",
}
_UVI = ("a range of the UV index", "3-5")
_HOUR_S = 3600.0
NEXT = ("Look at all of them: server show", "Who changed what: server changes")


async def target(query: TargetQuery, context: Context, desk: Desk) -> Reply:
    """Keep a target of the group's own for an animal."""
    server = server_of(desk)
    animal = animal_asked(query.animal, context)
    _check_it_is_ours(animal)
    subject = SUBJECTS[query.of]
    with of_option("range"):
        low, high = range_read(subject, query.range)
    with of_option("best"):
        best = _best(subject, query.best) if query.best else None
    try:
        kept = OwnTarget(
            animal=animal.slug,
            subject=subject,
            low=low,
            best=best,
            high=high,
            set_on=desk.now.date(),
        )
    except ValidationError as error:
        reason = error.errors()[0]["msg"].removeprefix("Value error, ")
        read = f"{query.range} {query.best}"
        raise NotUnderstoodError(
            read,
            f"a range that can be: {reason}",
            _own_range(subject, animal),
            "range",
        ) from error
    _check_it_cannot_harm(kept, animal, query.range, context)
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return Reply(
        command="server target",
        status="ok",
        title=f"The group's target for {animal.name} is {'changed' if replaced else 'kept'}",
        answer=f"Every answer here now goes by it: {target_told(kept, context)}.",
        rows=(
            Row(
                label="Take care",
                text="an own target replaces the one with a source; answers say that it is yours",
            ),
        ),
        steps=(
            f"Take it away again: server remove animal:{animal.name} of:{query.of}",
            *NEXT,
        ),
    )


def _check_it_is_ours(animal: Animal) -> None:
    if own_name(animal.slug) is not None:
        raise NotUnderstoodError(
            animal.name,
            "an animal of mine; one that the group added is changed as a whole",
            f"server animal name:{animal.name} basking:95-105F",
            "animal",
        )


def _check_it_cannot_harm(kept: OwnTarget, animal: Animal, typed: str, context: Context) -> None:
    """Refuse a target past a limit: a group may aim elsewhere, and nowhere that harms."""
    limit = limit_past(animal, kept.subject, kept.low, kept.high)
    if limit is None:
        return
    told = limit_told(limit, kept.subject, context)
    raise NotUnderstoodError(
        typed,
        f"a range that does not harm {of_animal(animal)}: {told} is its limit here, whatever the "
        "target (from memory; a reptile vet's word is better)",
        _own_range(kept.subject, animal),
        "range",
    )


def limit_told(limit: Limit, subject: Subject, context: Context) -> str:
    """Return a limit that a target passes, in words."""
    if subject is Subject.UVI:
        return f"UV index {number(limit.value, 0.1)}"
    if subject is Subject.LIGHT_HOURS:
        return f"{hours(limit.value)} of light"
    return temperature(limit.value, context.units)


def _own_range(subject: Subject, animal: Animal) -> str:
    """Return the animal's own range with its middle as it may be typed, else one of the kind."""
    known = wanted_of(animal, subject)
    if known is None or subject in _RANGES:
        return _RANGES.get(subject, "range:75-80F best:78F")
    low, high = (round(c * 1.8 + 32.0) for c in (known.low, known.high))
    return f"range:{low}-{high}F best:{(low + high) // 2}F"


@contextmanager
def of_option(name: str) -> Iterator[None]:
    """Name the option in a refusal of what was put into it."""
    try:
        yield
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, name) from error


def range_read(subject: Subject, text: str) -> tuple[float, float]:
    """Return the ends of a range of a target as typed, in the target's own unit."""
    if subject is Subject.UVI:
        return read_number_range(text, *_UVI)
    if subject is Subject.LIGHT_HOURS:
        light = read_duration(text, "h")
        return light.low / _HOUR_S, light.high / _HOUR_S
    measure = read_temperature(text, None)
    return measure.low, measure.high


def _best(subject: Subject, text: str) -> float:
    if subject is Subject.UVI:
        return read_number(text, "a UV index", "4")
    if subject is Subject.LIGHT_HOURS:
        return single(read_duration(text, "h")).low / _HOUR_S
    return single(read_temperature(text, None)).low


def target_told(kept: OwnTarget, context: Context) -> str:
    """Return a target of the group's own in words."""
    told, best = range_told(kept.subject, kept.low, kept.high, context), kept.best
    if best is None:
        aim = ""
    elif kept.subject is Subject.UVI:
        aim = number(best, 0.1)
    elif kept.subject is Subject.LIGHT_HOURS:
        aim = hours(best)
    else:
        aim = temperature(best, context.units)
    return f"{told}{f', best {aim}' if aim else ''}; set on {calendar_day(kept.set_on)}"


def range_told(subject: Subject, low: float, high: float, context: Context) -> str:
    """Return what a range is of and its ends, in words."""
    if subject is Subject.UVI:
        return f"UV index {uvi_range(low, high)}"
    if subject is Subject.LIGHT_HOURS:
        return f"light {hours(low)} to {hours(high)}"
    return f"{WORDS[subject]} {temperature_range(low, high, context.units)}"
