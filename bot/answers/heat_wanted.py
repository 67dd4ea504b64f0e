"""The wanted surface: the asker's own figure or the animal's target, never past its ceiling."""

from dataclasses import dataclass

from bot.answers.animals import doubtful_rows
from bot.answers.figures import temperature, temperature_range
from bot.answers.heat_parts import Kept, kept_named, target_text
from bot.answers.past_limit import PastLimitError
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure, Units
from bot.preferences import Context
from bot.questions.shared import limits_for
from bot.reply import Alarm, Row, Value
from calc.animals import Animal, Subject, Target

__all__ = ["WantedHeat", "typed", "wanted_surface"]

# A single wanted surface is met within this much: no infrared gun tells finer.
_ABOUT_K = 1.5
_UNCHECKED = "not checked for an animal: name yours, such as animal:corn snake, to have it checked"


@dataclass(frozen=True, slots=True)
class WantedHeat:
    """A wanted temperature: the aim and its range [degC], how it is known, and its ceiling."""

    low_c: float
    aim_c: float
    high_c: float
    ceiling_c: float
    rows: tuple[Row, ...]
    sources: tuple[str, ...]

    def value(self, name: str) -> Value:
        """Return the wanted range as a figure of the reply."""
        return Value(name=name, low=self.low_c, best=self.aim_c, high=self.high_c, unit="degC")


def wanted_surface(want: Measure | None, animal: str, context: Context) -> WantedHeat:
    """Return the surface that was asked for, or else the animal's own."""
    if want is not None:
        return _wanted_by_asker(want, animal, context)
    kept = kept_named(animal, context)
    target = kept.animal.basking_surface_c
    if target is None:
        raise NotUnderstoodError(
            kept.animal.name,
            "a wanted surface, because none is known here for that animal: give one that a "
            "keeper or reptile vet you trust named",
            _gentle(kept.animal),
            "animal",
        )
    told = f"{target_text(target, context.units)} for {kept.whom}"
    rows = [Row(label="Wanted surface", text=told)]
    against = doubtful_rows(kept.animal, Subject.BASKING_SURFACE)
    rows += [Row(label="Others say", text=text) for text in against]
    others = kept.animal.disagreements_about(Subject.BASKING_SURFACE)
    keys = (target.source, *(d.source for d in others))
    ceiling = _ceiling(animal, context)
    return WantedHeat(target.low, target.aim, target.high, ceiling, tuple(rows), keys)


def _ceiling(animal: str, context: Context) -> float:
    """Return the hottest surface that may be in reach [degC]."""
    limit = limits_for(animal, context).surface_c
    assert limit is not None
    return limit.value


def _wanted_by_asker(want: Measure, animal: str, context: Context) -> WantedHeat:
    middle = (want.low + want.high) / 2.0
    is_named = bool(animal.strip() or context.default_animal)
    kept = kept_named(animal, context) if is_named else None
    ceiling = _ceiling(animal, context)
    _check_it_cannot_burn(want, ceiling, kept, context.units)
    low, high = min(want.low, middle - _ABOUT_K), max(want.high, middle + _ABOUT_K)
    unchecked = "" if is_named else f"; {_UNCHECKED}"
    told = f"{temperature(middle, context.units)}, as you gave it{unchecked}"
    rows = (Row(label="Wanted surface", text=told), *_usual_rows(middle, kept, context))
    return WantedHeat(low, middle, min(high, ceiling), ceiling, rows, ())


def _usual_rows(aim_c: float, kept: Kept | None, context: Context) -> tuple[Row, ...]:
    """Return what the animal is said to want, where the asker wants something else."""
    target = None if kept is None else kept.animal.basking_surface_c
    if kept is None or target is None or target.low <= aim_c <= target.high:
        return ()
    told = f"not what is usual for {kept.whom}: {target_text(target, context.units)}"
    return (Row(label="Look again", text=told),)


def _check_it_cannot_burn(want: Measure, ceiling_c: float, kept: Kept | None, units: Units) -> None:
    """Refuse to work towards a surface that no place in reach may have."""
    if want.high <= ceiling_c:
        return
    most = temperature(ceiling_c, units)
    if kept is None:
        accepted = (
            f"a surface that does not burn: over {most} is too hot for nearly every animal I know "
            "(if yours wants it hotter, name it with animal:)"
        )
        raise PastLimitError(want.text, accepted, "want:95F", "want", _too_hot(want))
    own = kept.animal.basking_surface_c
    usual = "" if own is None else f" {temperature_range(own.low, own.high, units)} is right, and"
    accepted = (
        f"a surface that does not burn {kept.whom}:{usual} nothing over {most} may be in its "
        "reach (if yours is another animal that wants it hotter, name it with animal:)"
    )
    raise PastLimitError(want.text, accepted, _gentle(kept.animal), "want", _too_hot(want))


def _too_hot(want: Measure) -> tuple[Alarm, ...]:
    return (Alarm(key="too_hot_wish", words=want.text),)


def _gentle(animal: Animal) -> str:
    """Return a wish that is the animal's own: its surface, else its warm or cool air."""
    known = (animal.basking_surface_c, animal.warm_air_c, animal.cool_air_c)
    target = next((t for t in known if t is not None), None)
    return "want:80F" if target is None else f"want:{typed(target)}"


def typed(target: Target) -> str:
    """Return the aim of a temperature target as it may be typed, never over its high end."""
    aim_f = round(target.aim * 1.8 + 32.0)
    while aim_f > target.high * 1.8 + 32.0 + 1e-9 and aim_f > target.low * 1.8 + 32.0:
        aim_f -= 1
    return f"{aim_f}F"
