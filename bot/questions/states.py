"""What the state of an animal changes in an answer: said in its brief, and why. ``state.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.facts import Name, Say, Temp
from bot.language.errors import NotUnderstoodError
from bot.language.states import states_told
from bot.layered import Care, Layered
from bot.preferences import Context
from bot.queries.query import Query
from bot.questions.animals import animal_asked
from bot.questions.heat.shared import aimed
from bot.questions.shared import animal_name
from calc.animal import Animal, Particular, State, Subject
from calc.animals import ANY
from calc.states import changes_of

__all__ = ["StateTold", "with_states"]

# What of a state bears on a question; every other one tells all of an animal.
_BEARS_ON = {
    **dict.fromkeys(
        ("distance", "uvi", "tube", "meter", "section", "card", "outdoors"), (Subject.UVI,)
    ),
    "temps": (Subject.BASKING_SURFACE, Subject.WATER, Subject.NIGHT_FLOOR),
    "night": (Subject.NIGHT_FLOOR,),
    **dict.fromkeys(("basking", "surface", "watts"), (Subject.BASKING_SURFACE,)),
}
_NOT_OF_ANIMALS = frozenset(("ask", "guide", "hours", "lamp"))


@dataclass(frozen=True, slots=True)
class StateTold:
    """One state of an animal, and what it changes here; ``brood``: its kind is known with eggs."""

    animal: Name
    state: State
    less_uv: bool
    night: Temp | None
    water: Temp | None
    surface: Temp | None
    brood: bool

    @property
    def changes(self) -> bool:
        """Say whether a target here is another than that of its kind."""
        return self.less_uv or any((self.night, self.water, self.surface))


def with_states(layered: Layered, query: Query, context: Context) -> Layered:
    """Return an answer that says what the state of its animal changes, where one was told."""
    if layered.status != "ok" or layered.command in _NOT_OF_ANIMALS:
        return layered
    animal = _animal(layered, query, context)
    if animal is None or not animal.states:
        return layered
    told = tuple(_told(animal, layered.command))
    short = tuple(Say.by("state-short", one.state, one) for one in told)
    brief = replace(layered.brief, assumed=(*short, *layered.brief.assumed))
    why = (*layered.why, *(say for one in told for say in _why(one, animal)))
    ill = State.ILL in animal.states
    care = (Care(Say("state-care-ill")), *layered.care) if ill else layered.care
    sources = (*layered.sources, *(change.source for change in changes_of(animal)))
    found = tuple(dict.fromkeys(sources))
    return replace(layered, brief=brief, why=tuple(dict.fromkeys(why)), care=care, sources=found)


def _animal(layered: Layered, query: Query, context: Context) -> Animal | None:
    """Return the animal that an answer was for, if it is in a state that was told."""
    name = getattr(query, "animal", "") or ""
    if not (context.states or states_told(name)):
        return None
    if layered.command == "check":
        return _checked(query, context)
    if not hasattr(query, "animal"):
        return None
    try:
        return animal_asked(name, context)
    except NotUnderstoodError:
        return None


def _checked(query: Query, context: Context) -> Animal | None:
    from bot.queries.setup import CheckQuery
    from bot.questions.setup.check_whom import whom_asked
    from bot.questions.setup.told import told_by

    assert isinstance(query, CheckQuery)
    animal = whom_asked(told_by(query.setup, query, context.own), context).kept
    return None if animal.slug == ANY else animal


def _told(animal: Animal, command: str) -> Iterator[StateTold]:
    bears_on = _BEARS_ON.get(command, tuple(Subject))
    for state in animal.states:
        moved = {change.subject for change in changes_of(animal) if change.state is state}
        moved.intersection_update(bears_on)
        told = StateTold(
            animal=animal_name(animal),
            state=state,
            less_uv=Subject.UVI in moved,
            night=_target(animal, Subject.NIGHT_FLOOR, moved),
            water=_target(animal, Subject.WATER, moved),
            surface=_target(animal, Subject.BASKING_SURFACE, moved),
            brood=Particular.BROOD in animal.particular,
        )
        # That it is a female matters only where something is known of females.
        if state is not State.FEMALE or told.changes:
            yield told


def _target(animal: Animal, subject: Subject, moved: set[Subject]) -> Temp | None:
    targets = {
        Subject.NIGHT_FLOOR: animal.night_floor_c,
        Subject.WATER: animal.water_c,
        Subject.BASKING_SURFACE: animal.basking_surface_c,
    }
    target = targets[subject] if subject in moved else None
    return None if target is None else aimed(target)


def _why(told: StateTold, animal: Animal) -> Iterator[Say]:
    yield Say.by("state-why", told.state, told)
    if told.state is State.YOUNG and animal.group is not None:
        yield Say.of("kind-young", animal.group.value)
    if told.state is State.GRAVID and told.brood:
        yield Say.of("kind-brood", animal.slug)
