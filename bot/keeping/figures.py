"""A group's own targets: kept, changed; its figures of any kind taken away."""

from collections.abc import Iterator
from contextlib import contextmanager

from pydantic import ValidationError

from bot.answers.animals import animal_asked, of_animal, wanted_of
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
from bot.kept.group import Figure, Own, OwnSubject, OwnTarget
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import (
    read_duration,
    read_number,
    read_number_range,
    read_temperature,
    single,
)
from bot.preferences import Context
from bot.queries.server import DropQuery, TargetQuery
from bot.reply import Reply, Row
from calc.animals import Animal, Subject, animals
from calc.limits import limits_of, target_past

__all__ = ["drop", "target", "target_told"]

_SUBJECTS: dict[str, OwnSubject] = {
    "uvi": Subject.UVI,
    "basking": Subject.BASKING_SURFACE,
    "warm": Subject.WARM_AIR,
    "cool": Subject.COOL_AIR,
    "night floor": Subject.NIGHT_FLOOR,
    "night off": Subject.NIGHT_HEAT_OFF,
    "hours": Subject.LIGHT_HOURS,
}
_WORDS = {
    Subject.UVI: "UV index",
    Subject.BASKING_SURFACE: "basking surface",
    Subject.WARM_AIR: "warm-end air",
    Subject.COOL_AIR: "cool-end air",
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
_NEXT = ("Look at all of them: server show", "Who changed what: server changes")


async def target(query: TargetQuery, context: Context, desk: Desk) -> Reply:
    """Keep a target of the group's own for an animal."""
    server = server_of(desk)
    animal = animal_asked(query.animal, context)
    subject = _SUBJECTS[query.of]
    with _of_option("range"):
        low, high = _range(subject, query.range)
    with _of_option("best"):
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
            _RANGES.get(subject, "range:95-110F best:103F"),
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
            *_NEXT,
        ),
    )


def _check_it_cannot_harm(kept: OwnTarget, animal: Animal, typed: str, context: Context) -> None:
    """Refuse a target past a limit: a group may aim elsewhere, and nowhere that harms."""
    limit = target_past(limits_of(animal), kept.subject, kept.low, kept.high)
    if limit is None:
        return
    if kept.subject is Subject.UVI:
        told = f"UV index {number(limit.value, 0.1)}"
    elif kept.subject is Subject.LIGHT_HOURS:
        told = f"{hours(limit.value)} of light"
    else:
        told = temperature(limit.value, context.units)
    raise NotUnderstoodError(
        typed,
        f"a range that does not harm {of_animal(animal)}: {told} is its limit here, whatever the "
        "target (from memory; a reptile vet's word is better)",
        _own_range(kept, animal),
        "range",
    )


def _own_range(kept: OwnTarget, animal: Animal) -> str:
    """Return the animal's own range as it may be typed, else one of the kind."""
    known = wanted_of(animal, kept.subject)
    if known is None or kept.subject in _RANGES:
        return _RANGES.get(kept.subject, "range:75-80F")
    low, high = (round(c * 1.8 + 32.0) for c in (known.low, known.high))
    return f"range:{low}-{high}F"


@contextmanager
def _of_option(name: str) -> Iterator[None]:
    """Name the option in a refusal of what was put into it."""
    try:
        yield
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, name) from error


def _range(subject: Subject, text: str) -> tuple[float, float]:
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
    best = kept.best
    if kept.subject is Subject.UVI:
        told = f"UV index {uvi_range(kept.low, kept.high)}"
        aim = "" if best is None else number(best, 0.1)
    elif kept.subject is Subject.LIGHT_HOURS:
        told = f"light {hours(kept.low)} to {hours(kept.high)}"
        aim = "" if best is None else hours(best)
    else:
        span = temperature_range(kept.low, kept.high, context.units)
        told = f"{_WORDS[kept.subject]} {span}"
        aim = "" if best is None else temperature(best, context.units)
    return f"{told}{f', best {aim}' if aim else ''}; set on {calendar_day(kept.set_on)}"


async def drop(query: DropQuery, context: Context, desk: Desk) -> Reply:
    """Take a figure of the group's own away."""
    server = server_of(desk)
    own = await desk.store.figures.own(server)
    found, name = _asked(query, own, context)
    if found is None or not await desk.store.figures.remove(server, found, desk.by):
        known = [*(x.name for x in own.lamps), *(x.name for x in own.screens)]
        known += [f"{animals()[x.animal].name} {_WORDS[x.subject]}" for x in own.targets]
        raise NotUnderstoodError(
            name,
            f"a figure that the group has ({', '.join(known) or 'none so far'})",
            "server show",
        )
    await desk.store.boards.look_again(desk.now, server)
    return Reply(
        command="server remove",
        status="ok",
        title="Taken away",
        answer=f"The group's own {name} is gone; answers here go by ours again.",
        steps=_NEXT,
    )


def _asked(query: DropQuery, own: Own, context: Context) -> tuple[Figure | None, str]:
    """Return the figure that is asked for, if the group has it, and its name in words."""
    if query.lamp:
        return own.lamp(query.lamp), f"lamp “{query.lamp}”"
    if query.screen:
        return own.screen(query.screen), f"screen “{query.screen}”"
    if query.animal and query.of:
        animal = animal_asked(query.animal, context)
        subject, name = _SUBJECTS[query.of], f"target for {animal.name}, {query.of}"
        ours = own.targets_of(animal.slug)
        return next((x for x in ours if x.subject is subject), None), name
    raise NotUnderstoodError(
        "nothing to take away",
        "a lamp, a screen, or an animal and which of its targets",
        "server remove lamp:Hood by the door",
    )
