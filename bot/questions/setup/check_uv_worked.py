"""The UV of a set-up worked out of its tube and distance, for every case that may be."""

from collections.abc import Iterator

from bot.facts import Say, Uvi, metres, uvi
from bot.language.hearing import FactName
from bot.language.quantities import Measure
from bot.questions.setup.check_cases import Case, every_case, every_way
from bot.questions.setup.check_parts import Part, Piece, Todo, Urgency, find_out, sign
from bot.questions.setup.check_uv_cases import UvByCase, by_case
from bot.questions.setup.check_uv_facts import From, UvWish, UvWorked, missing_of
from bot.questions.setup.check_uv_moves import more_room, moves, until_known
from bot.questions.setup.told import Said, SetUpTold
from bot.questions.uv.judged import mildest, wants_move
from bot.questions.uv.tubes import length_sources, length_value, tube_told
from calc.judgement import Judged
from calc.limits import Limits
from calc.quantities import Quantity
from calc.setup.set_up import Sign, Spot
from calc.uncertainty import Estimate
from calc.uv.placement import SAFE_MINIMUM_M, spot

__all__ = ["by_distance", "every_uvi"]

_YEAR_S = 31_557_600.0
_FROM = {FactName.DISTANCE_BACK: From.BACK, FactName.DISTANCE_PERCH: From.PERCH}


def every_uvi(told: SetUpTold, distance_m: float) -> Uvi:
    """Return the UV index at a distance, from the weakest case to the strongest."""
    spots = [spot(lamp, distance_m, between).uvi for _, _, lamp, between in every_way(told)]
    return _spanned(spots)


def _spanned(several: list[Estimate]) -> Uvi:
    low, high = min(x.low for x in several), max(x.high for x in several)
    best = several[0].best if len(several) == 1 else (low * high) ** 0.5
    return uvi(best, (low, high))


def by_distance(
    told: SetUpTold, name: FactName, said: Said[Measure], wish: UvWish, limits: Limits
) -> Part:
    """Judge the UV at a distance: a verdict only where all cases agree."""
    middle_m = said.value.middle
    cases = tuple(every_case(told, middle_m, wish.ends, limits, unchecked=wish.unchecked))
    judged = mildest([case.check.judged for case in cases])
    value = _spanned([case.check.here.uvi for case in cases])
    near = middle_m < SAFE_MINIMUM_M
    may_be_above = judged is not None and any(case.check.may_be_above for case in cases)
    facts = UvWorked(
        uvi=value,
        one=len(cases) == 1,
        at=metres(middle_m),
        told_from=_FROM.get(name, From.UNSAID),
        tubes=told.tubes,
        across=told.lies_across,
        aged=_is_aged(told),
        near=near,
        longer=may_be_above,
        wanted=wish.wanted,
        known=wish.known,
        verdict=None if judged is None else judged.verdict,
        above=judged is not None and judged.is_likely_above,
    )
    missing = missing_of(told, (name, said))
    found = tuple(find_out(one) for one in missing[:1])
    if judged is None:
        todo = (*until_known(cases), *found)
    else:
        todo = (*_todo(cases, judged, middle_m, name), *(found if may_be_above else ()))
    apart = by_case(cases) if judged is None else None
    tube = tube_told(cases[0].lamp, None)
    long = length_value(tube)
    return Part(
        Piece.UV,
        _sign(judged, near=near, may_be_above=may_be_above),
        Say("check-why-uv-open", facts) if judged is None else Say("check-why-uv-worked", facts),
        head=_head(facts, apart),
        read=Say("check-read-uvi-worked", facts),
        more=apart.told if apart else (),
        depends=Say("check-head-uv-depends", apart) if apart else None,
        aim=Say("check-aim-uvi", wish),
        todo=todo,
        missing=missing,
        values=(("uvi", value), *([] if long[1] is None else [(long[0], long[1])])),
        sources=(wish.source, "keitz1971", "uv_distance_rows", *length_sources(tube)),
        spot=_spot(value, wish, judged),
    )


def _head(facts: UvWorked, apart: UvByCase | None) -> Say | None:
    if facts.near:
        return Say("check-head-too-near", facts)
    if facts.verdict is None:
        return None if apart is None else Say("check-head-uv-depends", apart)
    return Say("check-head-uv", facts)


def _spot(value: Uvi, wish: UvWish, judged: Judged | None) -> Spot:
    met = Estimate(value.low, value.best, value.high)
    return Spot(Quantity.UVI, None, wish.ends, met, judged, is_read=False)


def _sign(judged: Judged | None, *, near: bool, may_be_above: bool) -> Sign:
    if judged is not None and near:
        return Sign.CHANGE
    found = sign(judged)
    return Sign.CANNOT_TELL if may_be_above and found is Sign.FINE else found


def _is_aged(told: SetUpTold) -> bool:
    age = told.measure(FactName.AGE)
    return age is not None and age.value.low > _YEAR_S


def _todo(
    cases: tuple[Case, ...], judged: Judged, distance_m: float, name: FactName
) -> Iterator[Todo]:
    if distance_m < SAFE_MINIMUM_M:
        yield more_room(distance_m)
    elif wants_move(judged):
        yield from moves(cases, judged)
    if name is not FactName.DISTANCE_BACK:
        yield Todo(Urgency.MEASURE, Say("check-do-to-back"), Say("check-find-short-distance"))
