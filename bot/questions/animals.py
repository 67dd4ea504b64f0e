"""The animal a question is about: found by name, or asked for."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from bot.facts import Name, Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.states import states_told
from bot.preferences import Context
from bot.refusal import ANY_ANIMAL, AnimalNotNamedError, WithoutFiguresError
from bot.saved.group import Own, OwnAnimal, OwnSubject
from bot.saved.values import OwnLife
from calc.animal import Animal, Awake, OwnLimits, State, Subject, Target
from calc.animals import animal_name, animals, any_animal, own_name, own_slug
from calc.limits import Limit, limits_of
from calc.name_index import first_of_each, names_with_targets, wide_kins, word_index
from calc.naming import Known, Several, WithoutTargets, named
from calc.states import in_states
from calc.target_limits import target_past

__all__ = [
    "ANY_ANIMAL",
    "GROUPS_OWN",
    "AnimalNotNamedError",
    "AnimalsMeant",
    "WithoutFiguresError",
    "among_of",
    "animal_asked",
    "animal_of",
    "animals_meant",
    "limit_past",
    "name_said",
    "own_animal",
    "past_limits",
    "perhaps_meant",
    "wanted_of",
]

GROUPS_OWN = "groups_own"
"""The source key of a figure that a group set for itself."""

_MOST_MEANT = 4
_FIELDS = {
    Subject.UVI: "uvi",
    Subject.BASKING_SURFACE: "basking_surface_c",
    Subject.WARM_AIR: "warm_air_c",
    Subject.COOL_AIR: "cool_air_c",
    Subject.NIGHT_FLOOR: "night_floor_c",
    Subject.NIGHT_HEAT_OFF: "night_heat_off_c",
    Subject.WATER: "water_c",
    Subject.WATER_DEPTH: "water_depth_m",
    Subject.LIGHT_HOURS: "light_hours",
}


def animal_asked(name: str, context: Context) -> Animal:
    """Return the animal with this name, or the group's default where none was named.

    Targets that the group set for itself stand in place of those of the list.
    """
    wish = name.strip() or context.default_animal
    if not wish:
        raise AnimalNotNamedError
    match named(wish, context.own.names).what:
        case Known(slug=slug):
            animal = animal_of(slug, context.own)
            return in_states(animal, context.states | _told_of(wish))
        case WithoutTargets(name=name):
            raise WithoutFiguresError(name)
        case Several() as several:
            raise _which_of(several)
    raise _not_known(wish, context)


def _told_of(wish: str) -> frozenset[State]:
    """Return the states that a name tells, before it or behind it: a bearded dragon baby."""
    name, _, last = wish.strip().rpartition(" ")
    return states_told(wish) | (states_told(f"{last} {name}") if name else frozenset())


def _not_known(wish: str, context: Context) -> NotUnderstoodError:
    """Return the question which animal is meant, or that there are no figures for such a name."""
    near = perhaps_meant(wish, context.own.names)
    if near:
        known = Say("wanted-animal-near", AnimalsMeant(_names(near, context.own.names), ()))
        return NotUnderstoodError(shown(wish), known, f"animal:{near[0]}", "animal")
    if all(character.isalpha() or character in " '’-" for character in wish):
        return WithoutFiguresError(shown(wish))
    return NotUnderstoodError(
        shown(wish), Say("wanted-animal-known"), f"animal:{ANY_ANIMAL}", "animal"
    )


def _which_of(several: Several) -> NotUnderstoodError:
    """Return the question which of several animals is meant."""
    among = among_of(several)
    here = [name for name in among if isinstance(named(name).what, Known)]
    if not here:
        return WithoutFiguresError(several.word)
    meant = animals_meant(among, here)
    wanted = Say("wanted-which-of-both" if meant.others else "wanted-which-of", meant)
    return NotUnderstoodError(several.word, wanted, f"animal:{here[0]}", "animal")


def among_of(several: Several) -> tuple[str, ...]:
    """Return the animals that a word may mean; of a word for all of them one of each group."""
    return tuple(one.name for one in several.candidates) or first_of_each()


@dataclass(frozen=True, slots=True)
class AnimalsMeant:
    """The animals that words may mean: those with figures here, and those without.

    ``more``: further ones with figures here bear such a name.
    """

    here: tuple[Name, ...]
    others: tuple[Name, ...]
    more: bool = False


def animals_meant(
    names: Sequence[str], with_figures: Sequence[str], own: tuple[str, ...] = ()
) -> AnimalsMeant:
    """Return animals to choose from, and those of them that have no figures here."""
    here = [name for name in names if name in with_figures]
    others = [name for name in names if name not in with_figures]
    more = frozenset(names) in wide_kins()
    here = here[:_MOST_MEANT] if more else here
    return AnimalsMeant(_names(here, own), _names(others, own), more)


def _names(names: Sequence[str], own: tuple[str, ...] = ()) -> tuple[Name, ...]:
    return tuple(name_said(name, own) for name in names)


def name_said(name: str, own: tuple[str, ...] = ()) -> Name:
    """Return an animal's name as every language says it; one that I lack is said as it is."""
    what = named(name, own).what
    if isinstance(what, Known) and own_name(what.slug) is None:
        return Name(f"animal-{what.slug}")
    return Name("", name)


def perhaps_meant(wish: str, own: tuple[str, ...] = ()) -> list[str]:
    """Return the animals whose names, by-names included, are most like what was typed."""
    typed = wish.lower()
    names = {name.lower(): slug for name, slug in names_with_targets().items()}
    names |= {name.lower(): own_slug(name) for name in own}
    found = [form for form in names if typed in form.split()]
    if not found and typed in word_index()[1]:
        # Rightly spelled, of an animal without figures: a spider is no slip of a slider.
        return []
    if not found and (near := closest(typed, names)) and _is_slip(typed, near):
        found = [near]
    if not found and (word := closest(typed, dict.fromkeys(" ".join(names).split()))):
        found = [form for form in names if word in form.split()]
    return list(dict.fromkeys(animal_name(names[form]) for form in found))[:_MOST_MEANT]


def _is_slip(typed: str, form: str) -> bool:
    """Say whether more is alike than the word for a kind: no moor lizard is a bobtail lizard."""
    first, _, last = typed.rpartition(" ")
    other, _, kind = form.rpartition(" ")
    return not first or last != kind or closest(first, (other,)) is not None


def animal_of(slug: str, own: Own) -> Animal:
    """Return an animal by its key, one that the group added included."""
    name = own_name(slug)
    kept = None if name is None else own.animal(name)
    return _with_own(animals()[slug], own) if kept is None else own_animal(kept)


def own_animal(kept: OwnAnimal) -> Animal:
    """Return an animal that a group added; a target that passes a limit counts for nothing."""
    past: dict[str, Any] = {_FIELDS[subject]: None for subject, _ in past_limits(kept)}
    return replace(_as_told(kept), **past)


def past_limits(kept: OwnAnimal) -> tuple[tuple[OwnSubject, Limit], ...]:
    """Return what of the targets of an animal that a group added passes a limit, and which."""
    animal = _as_told(kept)
    limits = ((x, limit_past(animal, x, span.low, span.high)) for x, span in kept.wants.items())
    return tuple((subject, limit) for subject, limit in limits if limit is not None)


def _as_told(kept: OwnAnimal) -> Animal:
    wants: dict[str, Any] = {
        _FIELDS[subject]: Target(span.low, None, span.high, GROUPS_OWN, "")
        for subject, span in kept.wants.items()
    }
    limits = OwnLimits(
        kept.surface_limit_c, kept.coolest_limit_c, kept.night_limit_c, kept.uvi_limit
    )
    return replace(
        any_animal(kept.name),
        slug=own_slug(kept.name),
        scientific=kept.scientific,
        own_limits=limits,
        own_back_m=kept.back_m,
        own_life=None if kept.life is None else kept.life.value,
        awake=Awake.NOCTURNAL if kept.life is OwnLife.NIGHT else None,
        **wants,
    )


def limit_past(animal: Animal, subject: Subject, low: float, high: float) -> Limit | None:
    """Return the limit that a group's own target would pass, or None where it stays within."""
    limits = limits_of(animal)
    highest = limits.uvi_high if animal.own_limits is not None else None
    if subject is Subject.UVI and highest is not None and high > highest.value:
        return highest
    if subject is Subject.WATER_DEPTH:
        # Only a group that sets a depth needs to know how shallow a code lets it be.
        from calc.setup.space import smallest_floor

        floor = smallest_floor(animal.slug)
        least = None if floor is None or floor.water_m is None else floor.water_m
        return Limit(least, floor.source) if floor and least is not None and low < least else None
    return target_past(limits, subject, low, high)


def _with_own(animal: Animal, own: Own) -> Animal:
    targets: dict[str, Any] = {
        _FIELDS[x.subject]: Target(x.low, x.best, x.high, GROUPS_OWN, "")
        for x in own.targets_of(animal.slug)
        # One that passes a limit counts for nothing, however long it has been kept.
        if limit_past(animal, x.subject, x.low, x.high) is None
    }
    return replace(animal, **targets) if targets else animal


def wanted_of(animal: Animal, subject: Subject) -> Target | None:
    """Return an animal's target of a kind, or None where it is not known."""
    target: Target | None = getattr(animal, _FIELDS[subject])
    return target
