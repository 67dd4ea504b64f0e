"""Facts and cautions that several questions share."""

from collections import Counter
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum, auto

from bot.facts import Hours, Name, Say, Temp, degrees, hours
from bot.language.errors import NotUnderstoodError
from bot.layered import Row, Teller
from bot.preferences import Context
from bot.questions.animals import GROUPS_OWN, animal_asked
from bot.saved.group import Own
from calc.animal import Animal, BodyKind, Subject, Target
from calc.animals import ANY, animals, own_name
from calc.limits import Limits, any_limits, limits_of
from calc.naming import Several, named
from calc.sources import Kind as SourceKind
from calc.sources import source
from calc.states import changes_of

__all__ = [
    "FEW_KIN",
    "AuthorityTold",
    "BodyTold",
    "How",
    "Known",
    "animal_name",
    "authorities_say",
    "bodies_told",
    "body_rows",
    "known_by",
    "limits_for",
    "months_told",
    "name_of",
    "others_say",
]


FEW_KIN = 3
"""A name that so few animals share is judged by what is right for one of them."""


class How(Enum):
    """How a figure is known."""

    COMMON_PRACTICE = auto()
    MEMORY = auto()
    OWN = auto()
    PUBLISHED = auto()


_HOW = {SourceKind.COMMON_PRACTICE: How.COMMON_PRACTICE, SourceKind.MEMORY: How.MEMORY}


@dataclass(frozen=True, slots=True)
class Known:
    """How a figure is known, from where, what is noted about it, and when a group set its own."""

    how: How
    citation: str
    note: Say | None
    set_on: date | None


def known_by(animal: Animal, subject: Subject, target: Target, own: Own) -> Say:
    """Return how a target of an animal is known."""
    entry = source(target.source)
    if target.source == GROUPS_OWN:
        return Say("known", Known(How.OWN, entry.citation, None, _set_on(animal, subject, own)))
    note = Say.of("note", animal.slug, subject.value) if target.note else None
    if any(change.subject is subject for change in changes_of(animal)):
        note = Say.of("state-note", subject.value)
    return Say("known", Known(_HOW.get(entry.kind, How.PUBLISHED), entry.citation, note, None))


def _set_on(animal: Animal, subject: Subject, own: Own) -> date | None:
    name = own_name(animal.slug)
    kept = None if name is None else own.animal(name)
    if kept is not None:
        return kept.set_on
    mine = (x.set_on for x in own.targets_of(animal.slug) if x.subject is subject)
    return next(mine, None)


def animal_name(animal: Animal) -> Name:
    """Return the name of an animal; one of the group's own is called as the group calls it."""
    return name_of(animal.slug)


def name_of(slug: str) -> Name:
    """Return the name of an animal by what it is kept as; one no longer known keeps its key."""
    own = own_name(slug) or ("" if slug in animals() or slug == ANY else slug)
    return Name("", own) if own else Name(f"animal-{slug}")


def others_say(animal: Animal, *subjects: Subject) -> tuple[Say, ...]:
    """Return what other sources say against a target."""
    found = animal.disagreements_about(*subjects)
    numbered = Counter[str]()
    told = []
    for other in found:
        numbered[other.about] += 1
        told.append(Say.of("others", animal.slug, other.about.value, str(numbered[other.about])))
    return tuple(told)


def limits_for(name: str, context: Context) -> Limits:
    """Return the limits of the animal named or usual here; else those that hold for any animal.

    Of a name that a few share, no surface is too hot that is right for one of them.
    """
    wish = name.strip() or context.default_animal
    if not wish:
        return any_limits()
    try:
        return limits_of(animal_asked(wish, context))
    except NotUnderstoodError:
        return _of_kin(wish, context)


def _of_kin(wish: str, context: Context) -> Limits:
    what, limits = named(wish, context.own.names).what, any_limits()
    if not isinstance(what, Several) or len(what.candidates) > FEW_KIN:
        return limits
    listed = (animals()[one.slug] for one in what.candidates if one.slug in animals())
    kin = (limits_of(one).surface_c for one in listed)
    known = [one for one in (*kin, limits.surface_c) if one is not None]
    return replace(limits, surface_c=max(known, key=lambda one: one.value, default=None))


@dataclass(frozen=True, slots=True)
class BodyTold:
    """What is published on bodies, told apart from the surfaces that warm them."""

    taxon: str
    what: BodyKind
    is_relative: bool
    range: Temp


def bodies_told(animal: Animal) -> tuple[BodyTold, ...]:
    """Return the body temperatures that are published of an animal or its relatives."""
    return tuple(
        BodyTold(
            body.taxon,
            body.what,
            body.is_relative,
            degrees((body.low_c + body.high_c) / 2.0, (body.low_c, body.high_c)),
        )
        for body in animal.bodies
    )


def body_rows(bodies: tuple[BodyTold, ...]) -> tuple[Row, ...]:
    """Return a row for each of them."""
    return tuple(Row(Say("body-label"), Say("body-told", body)) for body in bodies)


@dataclass(frozen=True, slots=True)
class AuthorityTold:
    """What a law, a veterinary text or a welfare body asks for; one of both figures is there."""

    about: Subject
    warmth: Temp | None
    light: Hours | None
    citation: str


def authorities_say(animal: Animal, *subjects: Subject) -> tuple[Say, ...]:
    """Return what laws, vets and welfare bodies ask for, beside each other, not against a target.

    The range of a whole enclosure is told with each of its temperatures.
    """
    wanted = {*subjects, Subject.GRADIENT}
    told = []
    for reading in animal.readings:
        if reading.about not in wanted:
            continue
        ends, middle = (reading.low, reading.high), (reading.low + reading.high) / 2.0
        is_light = reading.about is Subject.LIGHT_HOURS
        facts = AuthorityTold(
            reading.about,
            None if is_light else degrees(middle, ends),
            hours(middle, ends) if is_light else None,
            source(reading.source).citation,
        )
        told.append(Say("authority-light" if is_light else "authority-warmth", facts))
    return tuple(told)


def months_told(teller: Teller) -> tuple[str, ...]:
    """Return the short names of the months, as an axis shows them."""
    return tuple(teller.say(Say.of("figures-short", str(month))) for month in range(1, 13))
