"""What is to be moved for the UV of a set-up that was told, in words and as a movement."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Bound, Length, Say, Uvi, metres
from bot.questions.setup.check_cases import Case
from bot.questions.setup.check_parts import Missing, Todo, Urgency, find_out
from calc.judgement import Judged
from calc.setup.set_up import Act, Movement, Thing
from calc.uv.placement import COMFORTABLE_MINIMUM_M, PlaceCheck

__all__ = [
    "MeterMove",
    "MoreRoom",
    "TubeMove",
    "more_room",
    "moved_by_meter",
    "moves",
    "until_known",
]


@dataclass(frozen=True, slots=True)
class MoreRoom:
    """A tube that is too close, and how close one may be."""

    at: Length
    nearest: Length


@dataclass(frozen=True, slots=True)
class MeterMove:
    """A tube that is moved until a meter shows what is wanted."""

    farther: bool
    wanted: Uvi


@dataclass(frozen=True, slots=True)
class TubeMove:
    """A tube that is moved: to where, as far as that is known."""

    farther: bool
    to: Length | None


def more_room(distance_m: float) -> Todo:
    """Return that the animal has to get farther from the tube."""
    facts = MoreRoom(metres(distance_m), metres(COMFORTABLE_MINIMUM_M, bound=Bound.AT_LEAST))
    return Todo(
        Urgency.DANGER,
        Say("check-do-room", facts),
        Say("check-do-room-short", facts),
        _moved(up=True, by_m=COMFORTABLE_MINIMUM_M - distance_m),
    )


def moved_by_meter(wanted: Uvi, *, farther: bool) -> Todo:
    """Return that the tube is moved until the meter shows what is wanted."""
    facts = MeterMove(farther, wanted)
    return Todo(
        _urgency(farther=farther),
        Say("check-do-meter", facts),
        Say("check-do-meter-short", facts),
        _moved(up=farther),
    )


def moves(cases: tuple[Case, ...], judged: Judged) -> Iterator[Todo]:
    """Yield where the tube goes, where one is likely too strong or surely too weak there."""
    above = judged.is_likely_above
    urgency = _urgency(farther=above)
    fitting = [case.check.placement for case in cases if case.check.placement.ends]
    lengths = [case.check for case in cases if case.check.placement.mild_m is not None]
    if lengths and not fitting:
        most = max(lengths, key=lambda check: check.placement.mild_m or 0.0)
        yield _until_measured(most, urgency)
        return
    if not fitting:
        yield Todo(urgency, Say("check-do-no-place"), Say("check-do-no-place-short"))
        return
    to, by_m = None, None
    if len(fitting) == 1 and len(cases) == 1:
        assert fitting[0].ends is not None
        near, start, far = (spot.distance_m for spot in fitting[0].ends)
        to, by_m = metres(start, (near, far), Bound.START), cases[0].check.move_to_start_m
    facts = TubeMove(above, to)
    say, short = Say("check-do-move", facts), Say("check-do-move-short", facts)
    yield Todo(urgency, say, short, _moved(up=above, by_m=by_m))


def until_known(cases: tuple[Case, ...]) -> Iterator[Todo]:
    """Yield that the tube hangs farther away for now, where one way it may be is too strong."""
    here_m = cases[0].check.here.distance_m
    strong = [case.check for case in cases if case.check.judged.is_likely_above]
    safe_m = [
        spots.mild_m or (spots.ends[1].distance_m if spots.ends else 0.0)
        for spots in (check.placement for check in strong)
    ]
    if strong and max(safe_m) > here_m:
        facts = TubeMove(farther=True, to=metres(max(safe_m), bound=Bound.AT_LEAST))
        say, short = Say("check-do-for-now", facts), Say("check-do-for-now-short", facts)
        yield Todo(Urgency.TOO_MUCH_UV, say, short, _moved(up=True))


def _urgency(*, farther: bool) -> Urgency:
    return Urgency.TOO_MUCH_UV if farther else Urgency.TOO_LITTLE_UV


def _until_measured(check: PlaceCheck, urgency: Urgency) -> Todo:
    """Return what to do with a tube whose length decides where it hangs."""
    mild_m = check.placement.mild_m
    assert mild_m is not None
    too_strong = check.may_be_above or check.judged.is_likely_above
    if too_strong and check.here.distance_m < mild_m:
        facts = TubeMove(farther=True, to=metres(mild_m, bound=Bound.AT_LEAST))
        say, short = Say("check-do-until", facts), Say("check-do-until-short", facts)
    else:
        say, short = Say("check-do-length"), find_out(Missing.TUBE_LENGTH).short
    return Todo(urgency, say, short, _moved(up=True))


def _moved(*, up: bool, by_m: float | None = None) -> Movement:
    """Return the tube moved away from the back or towards it [m]; how far may not be known."""
    way = (0, 0, 1 if up else -1)
    by = None if by_m is None else (0.0, 0.0, by_m)
    return Movement(Act.MOVE, (Thing.TUBE,), by, way)
