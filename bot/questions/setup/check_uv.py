"""The UV of a set-up: by the keeper's meter where there is one, else by tube and distance.

What was not said is not guessed: every usual fixture and screen is tried, and there is a verdict
only where all of them agree.
"""

from bot.facts import Say, metres, uvi
from bot.language.hearing import FactName
from bot.language.quantities import Measure
from bot.language.readings import PlacedReading
from bot.preferences import Context
from bot.questions.setup.check_beyond import beyond_part
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, Urgency, find_out, sign
from bot.questions.setup.check_unlit import unlit_part
from bot.questions.setup.check_uv_facts import (
    UvBare,
    UvMeter,
    UvUnjudged,
    UvWish,
    missing_of,
    uv_wish,
)
from bot.questions.setup.check_uv_moves import more_room, moved_by_meter
from bot.questions.setup.check_uv_worked import by_distance, every_uvi
from bot.questions.setup.check_whom import Whom
from bot.questions.setup.told import Said, SetUpTold
from bot.questions.uv.judged import judged_uvi_read, wants_move
from calc.limits import Limits, limits_of
from calc.quantities import Quantity
from calc.setup.set_up import Sign, Spot
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.validity import OutsideModelError, check

__all__ = ["uv_part"]

_NEAREST_M, _FARTHEST_M = 0.05, 3.0
_DISTANCES = (FactName.DISTANCE_BACK, FactName.DISTANCE, FactName.DISTANCE_PERCH)


def uv_part(told: SetUpTold, whom: Whom, context: Context) -> Part:
    """Judge the UV of a set-up for an animal."""
    unlit = unlit_part(told, whom.kept)
    if unlit is not None:
        return unlit
    wish = uv_wish(whom.kept, context.own)
    if wish is None:
        return _unjudged(told, whom)
    limits = limits_of(whom.kept)
    meter = told.one(FactName.UVI, tuple)
    if meter is not None:
        return _by_meter(meter.value, wish, limits)
    placed = [x.value for x in told.all(FactName.UVI_AT) if isinstance(x.value, PlacedReading)]
    if len(placed) == 1:
        return _by_meter((placed[0].value,), wish, limits)
    bare = _without_figures(told, wish, several=bool(placed))
    if bare is not None:
        return bare
    distance = _distance(told)
    if told.tube is None or distance is None:
        return _untold(told, wish, distance)
    name, said = distance
    low, high = said.value.low, said.value.high
    try:
        check("distance", low, _NEAREST_M, _FARTHEST_M, "m")
        check("distance", high, _NEAREST_M, _FARTHEST_M, "m")
        return by_distance(told, name, said, wish, limits)
    except OutsideModelError as error:
        # Another figure of the tube may be meant.
        is_distance = error.unit == "m" and low <= error.value <= high
        return beyond_part(Piece.UV, error, "distance:16in" if is_distance else "tube:12%")


def _without_figures(told: SetUpTold, wish: UvWish, *, several: bool) -> Part | None:
    """Return the UV of a set-up whose lamp has no figures, that has none, or several readings."""
    if several:
        return _for_the_meter(wish)
    if told.lacks("uvb") and told.tube is None:
        return _without_tube(wish)
    if told.pane is not None:
        return _behind_pane(told.pane.value.material, wish)
    return None if told.uv_lamp is None else _of_other_lamp(UvBare.of(wish, told.uv_lamp))


def _unjudged(told: SetUpTold, whom: Whom) -> Part:
    """Tell the UV for an animal whose range is not known: near is too near, no more is judged."""
    read = told.one(FactName.UVI, tuple)
    if read is not None:
        low, high = read.value[0], read.value[-1]
        value = uvi((low + high) / 2.0, (low, high))
        facts = UvUnjudged(whom.animal, value, None)
        cell = Say("check-read-uvi", facts)
        why = Say("check-why-uv-unjudged-read", facts)
        return Part(Piece.UV, Sign.CANNOT_TELL, why, read=cell, values=(("uvi", value),))
    distance, nothing = _distance(told), UvUnjudged(whom.animal, None, None)
    unknown = Say("check-why-uv-unjudged", nothing)
    has_way = told.pane is None and told.uv_lamp is None and told.tube is not None
    if distance is None or not has_way:
        missing = missing_of(told, distance)
        return Part(Piece.UV, Sign.CANNOT_TELL, unknown, missing=missing)
    name, said = distance
    middle_m = said.value.middle
    if not _NEAREST_M <= middle_m <= _FARTHEST_M:
        return Part(Piece.UV, Sign.CANNOT_TELL, unknown)
    value = every_uvi(told, middle_m)
    facts = UvUnjudged(whom.animal, value, metres(middle_m))
    near = middle_m < COMFORTABLE_MINIMUM_M
    return Part(
        Piece.UV,
        Sign.CHANGE if near else Sign.CANNOT_TELL,
        Say("check-why-uv-unjudged-worked", facts),
        head=Say("check-head-too-near", facts),
        read=Say("check-read-uvi-range", facts),
        todo=(more_room(middle_m),) if near else (),
        missing=missing_of(told, (name, said)),
        values=(("uvi", value),),
        sources=("keitz1971", "uv_distance_rows"),
    )


def _by_meter(read: tuple[float, ...], wish: UvWish, limits: Limits) -> Part:
    judged = judged_uvi_read(read, *wish.ends, limits, unchecked=wish.unchecked)
    middle = judged.value.best
    facts = UvMeter(
        uvi(middle, (read[0], read[-1])), wish.wanted, wish.known, judged.verdict,
        above=judged.is_likely_above,
    )  # fmt: skip
    todo = (moved_by_meter(wish.wanted, farther=judged.is_likely_above),)
    return Part(
        Piece.UV,
        sign(judged),
        Say("check-why-uv-meter", facts),
        head=Say("check-head-uv", facts),
        read=Say("check-read-uvi", facts),
        aim=Say("check-aim-uvi", wish),
        todo=todo if wants_move(judged) else (),
        values=(("uvi", facts.uvi),),
        sources=(wish.source,),
        spot=Spot(Quantity.UVI, None, wish.ends, judged.value, judged),
    )


def _distance(told: SetUpTold) -> tuple[FactName, Said[Measure]] | None:
    for name in _DISTANCES:
        said = told.measure(name)
        if said is not None:
            return name, said
    return None


def _untold(told: SetUpTold, wish: UvWish, distance: tuple[FactName, Said[Measure]] | None) -> Part:
    missing = missing_of(told, distance)
    return Part(
        Piece.UV,
        Sign.CANNOT_TELL,
        Say("check-why-uv-untold", wish),
        aim=Say("check-aim-uvi", wish),
        todo=(find_out(missing[0]),),
        missing=missing,
        sources=(wish.source,),
    )


def _behind_pane(material: str, wish: UvWish) -> Part:
    """Judge a tube over glass or plastic: nothing useful comes through, at any distance."""
    say, short = Say("check-do-pane"), Say("check-do-pane-short")
    return Part(
        Piece.UV,
        Sign.CHANGE,
        Say("check-why-uv-pane", wish),
        head=Say("check-head-pane"),
        aim=Say("check-aim-uvi", wish),
        todo=(Todo(Urgency.TOO_LITTLE_UV, say, short),),
        sources=(wish.source, "float_glass_uv"),
    )


def _for_the_meter(wish: UvWish) -> Part:
    """Judge nothing of several readings: another question fits them together."""
    say, short = Say("check-do-ask-meter"), Say("check-do-ask-meter-short")
    return Part(
        Piece.UV,
        Sign.CANNOT_TELL,
        Say("check-why-uv-several", wish),
        aim=Say("check-aim-uvi", wish),
        todo=(Todo(Urgency.MEASURE, say, short),),
        sources=(wish.source, "common_practice"),
    )


def _of_other_lamp(facts: UvBare) -> Part:
    """Judge nothing of a lamp that has no figures, whatever its distance."""
    say, short = Say("check-do-read-uvi", facts), Say("check-find-short-meter")
    return Part(
        Piece.UV,
        Sign.CANNOT_TELL,
        Say("check-why-uv-no-figures", facts),
        aim=Say("check-aim-uvi", facts),
        todo=(Todo(Urgency.MEASURE, say, short),),
        missing=(Missing.METER,),
        sources=(facts.source, "common_practice", "nearest_distance"),
    )


def _without_tube(wish: UvWish) -> Part:
    """Judge a set-up that has no UV tube."""
    say, short = Say("check-do-plan-tube"), Say("check-do-plan-tube-short")
    return Part(
        Piece.UV,
        Sign.CHANGE,
        Say("check-why-uv-none", wish),
        head=Say("check-head-no-tube"),
        aim=Say("check-aim-uvi", wish),
        todo=(Todo(Urgency.TOO_LITTLE_UV, say, short),),
        sources=(wish.source, "common_practice"),
    )
