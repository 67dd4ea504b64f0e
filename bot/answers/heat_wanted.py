"""The wanted surface: the asker's own figure or the animal's target, and what would burn."""

from dataclasses import dataclass

from bot.answers.animals import AnimalNotNamedError, doubtful_rows
from bot.answers.figures import temperature
from bot.answers.heat_parts import Kept, kept_named, target_text
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Measure
from bot.preferences import Context
from bot.reply import Row, Value
from calc.animals import Animal, Subject, animals
from calc.heat.judge import DANGER_OVER_SURFACE_K

__all__ = ["WantedHeat", "burning_above", "kept_under_lamp", "lamp_off_first", "wanted_surface"]

# A single wanted surface is met within this much: no infrared gun tells finer.
_ABOUT_K = 1.5
# A surface that burns this many of the animals is not left on for want of a name.
_NEARLY_ALL = 0.75
_UNCHECKED = "not checked for an animal: name yours, such as animal:corn snake, to have it checked"


@dataclass(frozen=True, slots=True)
class WantedHeat:
    """A wanted temperature: the aim and its range [degC], how it is known, and what burns."""

    low_c: float
    aim_c: float
    high_c: float
    burning_above_c: float
    rows: tuple[Row, ...]
    sources: tuple[str, ...]

    def value(self, name: str) -> Value:
        """Return the wanted range as a figure of the reply."""
        return Value(name=name, low=self.low_c, best=self.aim_c, high=self.high_c, unit="degC")


def wanted_surface(
    want: Measure | None, animal: str, surface: Measure | None, context: Context
) -> WantedHeat:
    """Return the surface that was asked for, or else the animal's own.

    ``surface`` is what was measured, if anything was: one that burns nearly every animal is to
    be switched off before the animal is asked for.
    """
    if want is not None:
        return _wanted_by_asker(want, animal, context)
    kept = kept_under_lamp(animal, surface, context)
    target = kept.animal.basking_surface_c
    if target is None:
        raise NotUnderstoodError(
            kept.animal.name,
            "a wanted surface, because none is known here for that animal: give one that a "
            "keeper or reptile vet you trust named",
            "want:85F",
            "animal",
        )
    told = f"{target_text(target, context.units)} for {kept.whom}"
    rows = [Row(label="Wanted surface", text=told)]
    against = doubtful_rows(kept.animal, Subject.BASKING_SURFACE)
    rows += [Row(label="Others say", text=text) for text in against]
    others = kept.animal.disagreements_about(Subject.BASKING_SURFACE)
    keys = (target.source, *(d.source for d in others))
    return WantedHeat(
        target.low, target.aim, target.high, burning_above(kept.animal), tuple(rows), keys
    )


def _wanted_by_asker(want: Measure, animal: str, context: Context) -> WantedHeat:
    middle = (want.low + want.high) / 2.0
    is_named = bool(animal.strip() or context.default_animal)
    kept = kept_named(animal, context) if is_named else None
    _check_it_cannot_burn(want, middle, kept, context)
    low, high = min(want.low, middle - _ABOUT_K), max(want.high, middle + _ABOUT_K)
    unchecked = "" if is_named else f"; {_UNCHECKED}"
    told = f"{temperature(middle, context.units)}, as you gave it{unchecked}"
    rows = (Row(label="Wanted surface", text=told), *_usual_rows(middle, kept, context))
    burning_c = burning_above(None if kept is None else kept.animal)
    return WantedHeat(low, middle, high, burning_c, rows, ())


def _usual_rows(aim_c: float, kept: Kept | None, context: Context) -> tuple[Row, ...]:
    """Return what the animal is said to want, where the asker wants something else."""
    target = None if kept is None else kept.animal.basking_surface_c
    if kept is None or target is None or target.low <= aim_c <= target.high:
        return ()
    told = f"not what is usual for {kept.whom}: {target_text(target, context.units)}"
    return (Row(label="Look again", text=told),)


def kept_under_lamp(
    animal: str, surface: Measure | None, context: Context, *, night_c: float | None = None
) -> Kept:
    """Return the animal named; where none was, ask for it, a burning lamp off first."""
    try:
        return kept_named(animal, context, night_c=night_c)
    except AnimalNotNamedError:
        first = "" if surface is None else lamp_off_first(surface)
        if not first:
            raise
        raise AnimalNotNamedError(first) from None


def lamp_off_first(surface: Measure) -> str:
    """Return the call to switch off, where a surface can burn nearly every animal."""
    burnt = _burnt_by(surface.high)
    if not burnt or burnt < _NEARLY_ALL * len(_limits()):
        return ""
    return f"First switch the lamp off and let it cool: that surface can burn {_share(burnt)}. "


def burning_above(animal: Animal | None) -> float:
    """Return the surface [degC] above which the animal, or nearly every one, can be burnt."""
    target = None if animal is None else animal.basking_surface_c
    if target is not None:
        return target.high + DANGER_OVER_SURFACE_K
    return _limits()[int(_NEARLY_ALL * len(_limits()))]


def _limits() -> list[float]:
    """Return the surface [degC] that burns, of every animal for which it is known, in order."""
    targets = (animal.basking_surface_c for animal in animals().values())
    return sorted(t.high + DANGER_OVER_SURFACE_K for t in targets if t is not None)


def _burnt_by(surface_c: float) -> int:
    return sum(surface_c > limit for limit in _limits())


def _share(burnt: int) -> str:
    return f"{burnt} of the {len(_limits())} animals I know"


def _check_it_cannot_burn(want: Measure, aim_c: float, kept: Kept | None, context: Context) -> None:
    """Refuse to work towards a surface that would burn the animal."""
    target = None if kept is None else kept.animal.basking_surface_c
    if aim_c <= burning_above(None if kept is None else kept.animal):
        return
    if kept is None or target is None:
        raise NotUnderstoodError(
            want.text,
            f"a surface that does not burn: this would burn {_share(_burnt_by(aim_c))} (if yours "
            "wants it that hot, name it with animal:)",
            "want:95F",
            "want",
        )
    raise NotUnderstoodError(
        want.text,
        f"a surface that does not burn {kept.whom}, for which "
        f"{temperature(target.high, context.units)} is the most (if yours is another animal that "
        "wants it hotter, name it with animal:)",
        f"want:{temperature(target.aim, context.units).split(' (')[0].replace(' °', '')}",
        "want",
    )
