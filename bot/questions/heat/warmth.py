"""The warmth that is worked towards, and wishes that are refused. Words: ``warmth.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Name, Say, Says, Temp, degrees
from bot.language.quantities import Measure
from bot.language.shown import shown
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.questions.animals import animal_asked
from bot.questions.heat.shared import HEAT_CARE, aimed, has_best
from bot.questions.shared import animal_name, known_by, limits_for, others_say
from bot.refusal import RefusedError
from bot.reply import Alarm
from calc.animal import Animal, Subject, Target

__all__ = [
    "SurfaceAim",
    "WantedHeat",
    "WishPast",
    "WishUnknown",
    "aim_doubts",
    "aim_rows",
    "air_past",
    "air_unknown",
    "surface_wanted",
]


# A single wanted surface is met within this much: no infrared gun tells finer.
_ABOUT_K = 1.5


@dataclass(frozen=True, slots=True)
class SurfaceAim:
    """The surface to aim for: asked for, or the animal's own.

    ``usual`` is what is said of the animal, where the asker wants something else.
    """

    aim: Temp
    has_best: bool
    asked: bool
    animal: Name | None
    known: Say | None
    usual: Temp | None
    usual_has_best: bool
    usual_known: Say | None
    others: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class WantedHeat:
    """A wanted surface for the engine [degC], its ceiling, and how it is told."""

    low_c: float
    aim_c: float
    high_c: float
    ceiling_c: float
    told: SurfaceAim
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class WishPast:
    """A wish past a limit; ``own`` is the range of the animal, where both are known."""

    command: str
    wish: str
    most: Temp
    animal: Name | None
    own: Temp | None
    own_known: Say | None
    example: str


@dataclass(frozen=True, slots=True)
class WishUnknown:
    """An animal of which no such target is known; ``needless``: it wants no basking spot."""

    command: str
    animal: Name
    example: str
    needless: bool = False


def surface_wanted(command: str, want: Measure | None, animal: str, context: Context) -> WantedHeat:
    """Return the surface that was asked for, or else the animal's own; never past its ceiling."""
    limit = limits_for(animal, context).surface_c
    assert limit is not None
    if want is not None:
        is_named = bool(animal.strip() or context.default_animal)
        whose = animal_asked(animal, context) if is_named else None
        return _asked_for(command, want, limit.value, whose, context)
    found = animal_asked(animal, context)
    target = found.basking_surface_c
    if target is None:
        facts = WishUnknown(
            command, animal_name(found), _gentle(found), needless=found.needs_no_basking
        )
        raise RefusedError(facts, _surface_unknown_told, "want")
    told = SurfaceAim(
        aim=aimed(target),
        has_best=has_best(target),
        asked=False,
        animal=animal_name(found),
        known=known_by(found, Subject.BASKING_SURFACE, target, context.own),
        usual=None,
        usual_has_best=False,
        usual_known=None,
        others=others_say(found, Subject.BASKING_SURFACE),
    )
    others = found.disagreements_about(Subject.BASKING_SURFACE)
    keys = (target.source, *(d.source for d in others))
    return WantedHeat(target.low, target.aim, target.high, limit.value, told, keys)


def _asked_for(
    command: str, want: Measure, ceiling_c: float, animal: Animal | None, context: Context
) -> WantedHeat:
    if want.high > ceiling_c:
        raise _surface_past(command, want, ceiling_c, animal, context)
    middle = want.middle
    low, high = min(want.low, middle - _ABOUT_K), max(want.high, middle + _ABOUT_K)
    high = min(high, ceiling_c)
    usual = None if animal is None else animal.basking_surface_c
    if usual is not None and usual.low <= middle <= usual.high:
        usual = None
    known = None
    if animal is not None and usual is not None:
        known = known_by(animal, Subject.BASKING_SURFACE, usual, context.own)
    told = SurfaceAim(
        aim=degrees(middle, (low, high)),
        has_best=False,
        asked=True,
        animal=None if animal is None else animal_name(animal),
        known=None,
        usual=None if usual is None else aimed(usual),
        usual_has_best=usual is not None and has_best(usual),
        usual_known=known,
        others=(),
    )
    return WantedHeat(low, middle, high, ceiling_c, told, ())


def aim_rows(aim: SurfaceAim) -> Iterator[Row]:
    """Return how the surface to aim for is told among the figures."""
    told = Say("warmth-asked", aim) if aim.asked else Say("warmth-target", aim)
    yield Row(Say("warmth-label-aim"), told)
    if aim.usual is not None:
        yield Row(Say("warmth-label-usual"), Say("warmth-usual", aim))


def aim_doubts(aim: SurfaceAim) -> Iterator[Say]:
    """Return what the brief says of a wish that is not the animal's own."""
    if aim.animal is None:
        yield Say("warmth-unchecked")
    elif aim.usual is not None:
        yield Say("warmth-unusual", aim)


def _gentle(animal: Animal) -> str:
    """Return a wish that is the animal's own: its surface, else its warm or cool air."""
    known = (animal.basking_surface_c, animal.warm_air_c, animal.cool_air_c)
    target = next((t for t in known if t is not None), None)
    return "want:80F" if target is None else f"want:{_typed(target)}"


def _typed(target: Target) -> str:
    """Return the aim of a temperature target as it may be typed, never over its high end."""
    aim_f = round(target.aim * 1.8 + 32.0)
    while aim_f > target.high * 1.8 + 32.0 + 1e-9 and aim_f > target.low * 1.8 + 32.0:
        aim_f -= 1
    return f"{aim_f}F"


def air_past(
    command: str, want: Measure, most_c: float, animal: Animal | None, context: Context
) -> RefusedError:
    """Return the refusal to work towards air in which nothing can cool down."""
    own = None if animal is None else animal.cool_air_c
    example = "want:78F" if own is None else f"want:{_typed(own)}"
    subject = Subject.COOL_AIR
    facts = _past(command, want, most_c, animal, (subject, own, example), context)
    return RefusedError(facts, _air_past_told, "want", _too_hot(want))


def _surface_past(
    command: str, want: Measure, most_c: float, animal: Animal | None, context: Context
) -> RefusedError:
    """Return the refusal to work towards a surface that no place in reach may have."""
    own = None if animal is None else animal.basking_surface_c
    example = "want:95F" if animal is None else _gentle(animal)
    subject = Subject.BASKING_SURFACE
    facts = _past(command, want, most_c, animal, (subject, own, example), context)
    return RefusedError(facts, _surface_past_told, "want", _too_hot(want))


def air_unknown(command: str, animal: Animal) -> RefusedError:
    """Return that no air is known for an animal."""
    return RefusedError(
        WishUnknown(command, animal_name(animal), "want:78F"), _air_unknown_told, "want"
    )


def _past(
    command: str,
    want: Measure,
    most_c: float,
    animal: Animal | None,
    its: tuple[Subject, Target | None, str],
    context: Context,
) -> WishPast:
    subject, own, example = its
    known = None
    if animal is not None and own is not None:
        known = known_by(animal, subject, own, context.own)
    return WishPast(
        command=command,
        wish=shown(want.text),
        most=degrees(most_c),
        animal=None if animal is None else animal_name(animal),
        own=None if own is None else aimed(own),
        own_known=known,
        example=example,
    )


def _too_hot(want: Measure) -> tuple[Alarm, ...]:
    return (Alarm(key="too_hot_wish", words=want.text),)


def _air_past_told(facts: WishPast) -> Layered:
    say = Says("warmth", facts)
    return Layered(
        command=facts.command,
        status="problem",
        title=say("past-title"),
        brief=Brief(
            head=say("air-past"),
            range=(say("air-most"), *_own(facts, say)),
            steps=(say("do"),),
        ),
        steps=(say("do"), say("step-help")),
        numbers=tuple(_numbers(facts, say)),
        care=HEAT_CARE,
        guide=("the-cool-end",),
    )


def _surface_past_told(facts: WishPast) -> Layered:
    say = Says("warmth", facts)
    steps = (say("do"), say("do-name"))
    return Layered(
        command=facts.command,
        status="problem",
        title=say("past-title"),
        brief=Brief(
            head=say("surface-past"),
            range=(say("surface-most"), *_own(facts, say)),
            steps=steps,
        ),
        steps=(*steps, say("step-help")),
        care=HEAT_CARE,
        guide=("the-basking-spot",),
    )


def _surface_unknown_told(facts: WishUnknown) -> Layered:
    say = Says("warmth", facts)
    no = facts.needless
    head = say("surface-needless" if no else "surface-unknown")
    why = say("needless-why" if no else "ask-whom")
    do = say("do-needs" if no else "do")
    return Layered(
        command=facts.command,
        status="problem",
        title=say("unknown-title"),
        brief=Brief(head=head, range=(why,), steps=(do,)),
        steps=(do, say("step-help")),
        care=HEAT_CARE,
        guide=("the-basking-spot",),
    )


def _own(facts: WishPast, say: Says) -> Iterator[Say]:
    if facts.own is not None and facts.animal is not None:
        yield say("own")


def _numbers(facts: WishPast, say: Says) -> Iterator[Row]:
    if facts.own is not None and facts.own_known is not None:
        yield Row(say("label-own"), say("own-known"))


def _air_unknown_told(facts: WishUnknown) -> Layered:
    say = Says("warmth", facts)
    return Layered(
        command=facts.command,
        status="problem",
        title=say("unknown-title"),
        brief=Brief(head=say("air-unknown"), steps=(say("do"),)),
        steps=(say("do"), say("step-help")),
        care=HEAT_CARE,
        guide=("the-cool-end",),
    )
