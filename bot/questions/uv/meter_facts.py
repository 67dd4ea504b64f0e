"""What a keeper's own readings say of the lamp, as facts. Words: ``meter.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.facts import (
    Bound,
    Figure,
    Length,
    Say,
    Share,
    Uvi,
    metres,
    plain_number,
    share,
    uvi,
)
from bot.language import screens as typed
from bot.language.lamps import TubeStrength
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.options import OwnTube, kind_of, names_a_class
from bot.queries.uv_depth import MeterQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.fit import FitTold, ReadingMade, fit_told
from bot.questions.uv.lamp_asked import classes_of, fixture_of, told_under, wanted_asked
from bot.questions.uv.length_asked import length_asked
from bot.questions.uv.meter_asked import Through, read_through
from bot.questions.uv.move import Move, move_of
from bot.questions.uv.readings import LampRead, expected_shape, off_before
from bot.questions.uv.readings_off import off_of
from bot.questions.uv.shared import Between, Wish, WishedFor, between_told, wish_told
from bot.questions.uv.tubes import ByGroup, Tube, all_together, by_group, length_value, tube_told
from bot.reply import Alarm
from calc.judgement import Verdict as Judgement
from calc.uncertainty import Estimate
from calc.uv.as_read import as_read
from calc.uv.lamp import CLASS_STRENGTH_PERCENT, Fixture, Lamp, of_length
from calc.uv.meter import MeterFit
from calc.uv.placement import PlaceCheck, Spot, Verdict, check_place, spot
from calc.uv.point import Shape
from calc.uv.screen import Screen
from calc.uv.shapes import fit_lamp, lamp_by_readings

__all__ = ["Metered", "metered"]


@dataclass(frozen=True, slots=True)
class Metered(WishedFor):
    """A lamp by its readings, and how it stands at a place; ``against`` is set against a class.

    ``group``: its keepers read that class, and what they read takes the place of our figure.
    ``near`` to ``far``: the spots of the engine, for the picture.
    """

    wish: Wish
    read: LampRead
    tube: Tube
    named: Say | None
    behind: Fixture | None
    screen: Screen
    between: Between
    passes: Share | None
    here: Uvi
    at: Length
    basks: bool
    judgement: Judgement
    place: Verdict
    away: Length | None
    begin: Length | None
    ends: tuple[Spot, Spot, Spot] | None
    move: Move
    fit: FitTold
    against: Share | None
    group: ByGroup | None
    shown: tuple[ReadingMade, ...]
    alarms: tuple[Alarm, ...]
    extra: tuple[tuple[str, Figure | None], ...]

    @property
    def keepers(self) -> int | None:
        """Return how many keepers of the group read its class."""
        return self.group.keepers if self.group else None

    @property
    def differ(self) -> Share | None:
        """Return by how much tubes of its class differ in the group."""
        return self.group.differ if self.group else None

    @property
    def judged(self) -> Say:
        """Return how the place is judged, in a word or two."""
        return Say.by("verdict", self.judgement)


def metered(query: MeterQuery, context: Context) -> Metered:
    """Work out the lamp by its readings, and the place where the animal basks."""
    kind = kind_of(query.tube, query.lamp)
    is_named = query.reflector is not None and names_a_class(query.tube, query.lamp)
    named = _named_lamp(query)
    like = as_read(named, classes_of(context.own)) if is_named else None
    through = read_through(query, named)
    fit = fit_lamp(through.given, named, expected_shape(kind))
    read = _read(through, fit, named, kind, like)
    place_m = query.distance.low if query.distance else query.readings[0].distance.low
    with told_under(spot(read.lamp, place_m, through.screen).uvi, query.animal, context):
        wanted = wanted_asked(query.animal, query.uvi, context, *off_before(read.off))
    ends = wanted.low, wanted.high
    limits = None if read.cannot_be else limits_for(query.animal, context)
    check = check_place(
        read.lamp, through.screen, place_m, *ends, limits, unchecked=wanted.unchecked
    )
    believed = None if read.cannot_be else check.here.uvi
    tube = tube_told(read.lamp, None, query.lamp)
    against = fit.against_class / (like.group.factor if like and like.group else 1.0)
    return Metered(
        wish=wish_told(wanted, context),
        read=read,
        tube=tube,
        named=Say("tubes-name", tube_told(named, query.tube, kind)) if is_named else None,
        behind=named.fixture if query.reflector else None,
        screen=through.screen,
        between=between_told(_screen_told(query), through.screen, check.here.screen_transmission),
        passes=None if through.passes is None else share(through.passes),
        here=uvi(check.here.uvi),
        at=metres(check.here.distance_m),
        basks=query.distance is not None,
        judgement=check.judged.verdict,
        place=check.placement.verdict,
        away=_span(check, Bound.INWARD),
        begin=_span(check, Bound.START),
        ends=check.placement.ends,
        move=move_of(check),
        fit=fit_told(fit, through.readings),
        against=share(against) if like else None,
        group=by_group(like) if like else None,
        shown=tuple(_shown(query, fit)),
        alarms=uv_alarms(believed, query.animal, wanted.high, context),
        extra=tuple(_extra(fit, through, check, tube, against)),
    )


def _screen_told(query: MeterQuery) -> typed.Screen:
    assert not isinstance(query.screen, typed.Pane)
    return query.screen


def _named_lamp(query: MeterQuery) -> Lamp:
    """Return the lamp as named; only its length and the comparison depend on the name."""
    lamp = Lamp(
        query.tube.percent if isinstance(query.tube, TubeStrength) else CLASS_STRENGTH_PERCENT,
        fixture_of(query.reflector) if query.reflector else Fixture.POLISHED,
    )
    kept_m = query.tube.lamp.lit_length_m if isinstance(query.tube, OwnTube) else None
    if kept_m is not None and query.length is None:
        return all_together(replace(lamp, lit_length_m=kept_m), query)
    return all_together(of_length(lamp, length_asked(query.length)), query)


def _read(
    through: Through, fit: MeterFit, named: Lamp, kind: UvLamp, like: Lamp | None
) -> LampRead:
    lamp = lamp_by_readings(through.given, named, fit)
    off = off_of(fit, through.given, through.readings, (named, lamp, named if like else None), kind)
    return LampRead(lamp, fit, through.readings, off).with_class(like)


def _shown(query: MeterQuery, fit: MeterFit) -> Iterator[ReadingMade]:
    """Yield what was read where the animal gets it, through the screen."""
    for i, one in enumerate(query.readings):
        read = uvi(one.value)
        used = bool(query.without) or i != fit.set_aside
        yield ReadingMade(metres(one.distance.low), read, read, used)


def _span(check: PlaceCheck, bound: Bound) -> Length | None:
    if check.placement.ends is None:
        return None
    near, start, far = (each.distance_m for each in check.placement.ends)
    return metres(start, (near, far), bound)


def _extra(
    fit: MeterFit, through: Through, check: PlaceCheck, tube: Tube, against: float
) -> Iterator[tuple[str, Figure | None]]:
    """Yield the figures of JSON that no message tells in this form."""
    if check.placement.ends:
        near, start, far = (each.distance_m for each in check.placement.ends)
        yield "distance", metres(Estimate(near, start, far))
    name = "lamp_strength_uvi_m2" if fit.shape is Shape.POINT else "lamp_constant_uvi_m"
    yield name, plain_number(fit.estimate)
    yield length_value(tube)
    factor = fit.estimate.high / fit.estimate.best
    yield "against_class", plain_number(against, (against / factor, against * factor))
    if through.passes is not None:
        yield "screen_transmission", share(through.passes)
