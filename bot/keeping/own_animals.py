"""Animals that a group adds: a name that means nothing else, targets, and limits that hold them."""

from collections.abc import Iterator
from typing import Final

from pydantic import ValidationError

from bot.answers.animals import GROUPS_OWN, own_animal, past_limits
from bot.answers.figures import calendar_day, number, temperature
from bot.desk import Desk
from bot.keeping.places import server_of
from bot.keeping.targets import NEXT, limit_told, of_option, range_read, range_told
from bot.kept.group import OwnAnimal, OwnRange, OwnSubject
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.language.hearing.lexicon import known_phrases
from bot.language.quantities import read_number, read_temperature, single
from bot.preferences import Context
from bot.queries.server import AnimalQuery
from bot.questions.setup.told import heard_in
from bot.reply import Reply, Row
from calc.animals import Subject
from calc.limits import Limit, limits_of
from calc.name_index import folded, words_around
from calc.naming import Known, Several, named, names_in

__all__ = ["animal", "animal_told"]

_WANTS: Final[dict[str, OwnSubject]] = {
    "uvi": Subject.UVI,
    "basking": Subject.BASKING_SURFACE,
    "warm": Subject.WARM_AIR,
    "cool": Subject.COOL_AIR,
    "night": Subject.NIGHT_FLOOR,
    "night_off": Subject.NIGHT_HEAT_OFF,
    "hours": Subject.LIGHT_HOURS,
}
_OPTIONS = {subject: option for option, subject in _WANTS.items()}
# What a limit is called, the option and what it may be.
_LIMITS = {
    "surface_limit_c": ("no surface over", "surface_limit", "104F", "59 to 149 °F (15 to 65 °C)"),
    "coolest_limit_c": ("coolest place under", "cool_limit", "86F", "50 to 100 °F (10 to 38 °C)"),
    "night_limit_c": ("no night under", "night_limit", "52F", "36 to 86 °F (2 to 30 °C)"),
    "uvi_limit": ("UV index under", "uvi_limit", "6", "a UV index up to 11"),
}
_LIMITED_BY = {
    Subject.UVI: "uvi_limit",
    Subject.BASKING_SURFACE: "surface_limit",
    Subject.WARM_AIR: "surface_limit",
}
_EXAMPLE = "Moss lizard"
_CAREFUL = "a careful one of mine"


async def animal(query: AnimalQuery, context: Context, desk: Desk) -> Reply:
    """Keep an animal of the group's own, whole as it is told now."""
    server = server_of(desk)
    _check_name(query.name)
    kept = _kept(query, desk)
    _check_it_cannot_harm(kept, query, context)
    replaced = await desk.store.figures.put(server, kept, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    return Reply(
        command="server animal",
        status="ok",
        title=f"The animal “{kept.name}” is {'changed' if replaced else 'kept'}",
        answer=(
            f"Everybody here can now ask for {kept.name}. Answers say that its figures were set by "
            "this group."
        ),
        rows=tuple(_rows(kept, context)),
        steps=(
            f"Look at what it needs: needs {kept.name}",
            f"Take it away again: server remove animal:{kept.name}",
            *NEXT,
        ),
        cautions=(
            (
                "You vouch for these figures: have a reptile vet or a keeper with years of "
                "experience with just this animal look at them."
            ),
        ),
    )


def _rows(kept: OwnAnimal, context: Context) -> Iterator[Row]:
    if kept.scientific:
        yield Row(label="Scientific name", text=kept.scientific)
    for subject, span in kept.wants.items():
        yield Row(label="Target", text=range_told(subject, span.low, span.high, context))
    limits = limits_of(own_animal(kept))
    held = {
        "surface_limit_c": limits.surface_c,
        "coolest_limit_c": limits.coolest_air_c,
        "night_limit_c": limits.night_c,
        "uvi_limit": limits.uvi_now,
    }
    for name, limit in held.items():
        if limit is not None:
            told = _limit_told(name, limit.value, context)
            whose = "set by this group" if getattr(kept, name) is not None else _CAREFUL
            yield Row(label="Limit", text=f"{told} ({whose})")


def animal_told(kept: OwnAnimal, context: Context) -> str:
    """Return an animal of the group's own in words."""
    told = [kept.scientific] if kept.scientific else []
    told += [range_told(of, span.low, span.high, context) for of, span in kept.wants.items()]
    told += [
        _limit_told(name, value, context)
        for name in _LIMITS
        if (value := getattr(kept, name)) is not None
    ]
    return f"{', '.join(told) or 'no figures'}; set on {calendar_day(kept.set_on)}"


def _limit_told(name: str, value: float, context: Context) -> str:
    shown = number(value, 0.1) if name == "uvi_limit" else temperature(value, context.units)
    return f"{_LIMITS[name][0]} {shown}"


def _check_name(name: str) -> None:
    """Refuse a name that already means something, or that no sentence would be heard by."""
    what = named(name).what
    inside = [one.what for one in names_in(name)]
    ours = next((one.name for one in (what, *inside) if isinstance(one, Known)), "")
    if ours:
        accepted = f"a name that is not one of mine (I know {ours}: its targets are yours to set)"
        raise NotUnderstoodError(name, accepted, _EXAMPLE, "name")
    if isinstance(what, Several) and (not what.candidates or any(x.slug for x in what.candidates)):
        raise NotUnderstoodError(name, "a name of one animal, not of several", _EXAMPLE, "name")
    usual = known_phrases().words | words_around().in_front
    words = [folded(word) for word in name.replace("-", " ").split()]
    heard = heard_in(f"a 12% tube 14 inches over my {name}", (name,))
    found = [fact.value for fact in heard.facts if fact.name is FactName.ANIMAL]
    others = {FactName.TUBE} <= {fact.name for fact in heard.facts}
    if all(word in usual for word in words) or found != [name] or not others:
        accepted = "a name of one to five words that is no everyday word, without digits"
        raise NotUnderstoodError(name, accepted, _EXAMPLE, "name")


def _kept(query: AnimalQuery, desk: Desk) -> OwnAnimal:
    wants: dict[OwnSubject, OwnRange] = {}
    for option, subject in _WANTS.items():
        if text := getattr(query, option):
            with of_option(option):
                low, high = range_read(subject, text)
            wants[subject] = OwnRange(low=low, high=high)
    if not wants:
        raise NotUnderstoodError(
            "no target",
            "one thing at least that it needs: uvi, basking, warm, cool, night or hours",
            f"server animal name:{query.name} basking:88-93F cool:70-76F",
        )
    limits = {name: _limit(getattr(query, row[1]), row[1]) for name, row in _LIMITS.items()}
    try:
        return OwnAnimal.model_validate(
            {
                "name": query.name,
                "scientific": query.scientific,
                "wants": wants,
                "set_on": desk.now.date(),
                **limits,
            }
        )
    except ValidationError as error:
        raise _refusal(error, query) from error


def _limit(text: str, option: str) -> float | None:
    if not text:
        return None
    with of_option(option):
        if option == "uvi_limit":
            return read_number(text, "a UV index", "6")
        return single(read_temperature(text, None)).low


def _refusal(error: ValidationError, query: AnimalQuery) -> NotUnderstoodError:
    first = error.errors()[0]
    where = str(first["loc"][0]) if first["loc"] else ""
    if where in _LIMITS:
        _, option, example, bounds = _LIMITS[where]
        return NotUnderstoodError(getattr(query, option), bounds, example, option)
    reason = first["msg"].removeprefix("Value error, ")
    return NotUnderstoodError(
        query.name,
        f"figures that can be: {reason}",
        f"server animal name:{query.name} basking:88-93F cool:70-76F",
    )


def _check_it_cannot_harm(kept: OwnAnimal, query: AnimalQuery, context: Context) -> None:
    """Refuse a target past a limit that was given, or past one that holds for any animal."""
    for subject, limit in past_limits(kept):
        option = _OPTIONS[subject]
        told = f"{limit_told(limit, subject, context)} is its limit"
        raise NotUnderstoodError(
            getattr(query, option),
            f"a range that does not harm it: {told}{_whose(subject, limit, kept)}",
            _fitting(kept, subject, limit),
            option,
        )


def _whose(subject: OwnSubject, limit: Limit, kept: OwnAnimal) -> str:
    if _OPTIONS[subject] == "hours" or limit.source == GROUPS_OWN:
        return ""
    colder = kept.wants[subject].low < limit.value and subject not in _LIMITED_BY
    option = "night_limit" if colder else _LIMITED_BY.get(subject, "cool_limit")
    return f" ({_CAREFUL}, unless you know its own: {option})"


def _fitting(kept: OwnAnimal, subject: OwnSubject, limit: Limit) -> str:
    """Return a range that stays within the limits, as it may be typed."""
    if _OPTIONS[subject] == "hours":
        return "10-12 hours"
    if _OPTIONS[subject] == "uvi":
        return f"{number(limit.value * 0.4, 0.1)}-{number(limit.value * 0.7, 0.1)}"
    steps = (-4.0, -8.0, -16.0, 4.0, 8.0, 16.0)
    for low in (limit.value + step for step in steps):
        wants = {**kept.wants, subject: OwnRange(low=low, high=low + 2.0)}
        if subject not in dict(past_limits(kept.model_copy(update={"wants": wants}))):
            return f"{low:.0f}-{low + 2.0:.0f}C"
    return "75-80F"
