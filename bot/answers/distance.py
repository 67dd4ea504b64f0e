"""How far from the animal's back the tube should hang, or why it cannot."""

from bot.answers.curves import uvi_picture
from bot.answers.figures import length, length_range, percent, uvi, uvi_estimate, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.readings import read_lamp
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    contradicted,
    doubt_row,
    fixture_name,
    lamp_asked,
    lamp_name,
    lamp_row,
    passing_estimate,
    screen_asked,
    screen_phrase,
    screen_row,
    wish_asked,
)
from bot.drawing import PointKind
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.uv import DistanceQuery
from bot.reply import Picture, Reply, Row, Value
from calc.uv.doubts import doubts_for
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    FARTHEST_PLACE_M,
    SAFE_MINIMUM_M,
    Placement,
    Reason,
    Spot,
    Verdict,
    place,
    spot,
)
from calc.uv.screen import NoScreen, Screen

__all__ = ["answer_distance"]

_GUIDE = ("measuring-the-distance", "screens", "reflectors", "reading-a-uv-meter")
_SOURCES = ("keitz1971", "uv_distance_rows")
# Classes a beginner can buy and the model was fitted to, the milder first.
_ALTERNATIVES = tuple(Lamp(s, f) for s in (6.0, 12.0) for f in (Fixture.PLAIN, Fixture.POLISHED))
_AN_INCH_M = 0.0254
_WEAK_PERCENT = 6.0


def answer_distance(query: DistanceQuery, context: Context) -> Reply:
    """Answer with a range of distances, or refuse and say what would work."""
    wish = wish_asked(query.animal, query.uvi, context)
    screen = screen_asked(query.screen)
    named = lamp_asked(query.tube, query.reflector, query.length, query.age)
    lamp = read_lamp(named, query.readings, screen)
    placement = place(lamp, screen, wish.low, wish.high)
    tube_row = lamp_row(lamp, query.tube, query.length, context.units)
    near, start, far = placement.near, placement.start, placement.far
    if placement.verdict is not Verdict.FITS or not (near and start and far):
        return _refusal(lamp, screen, wish, placement, tube_row, context)
    units = context.units
    doubts = doubts_for(lamp, start.distance_m, screen)
    return Reply(
        command="distance",
        status="ok",
        title=f"Distance from tube to back for {wish.whom}",
        answer=(
            f"{contradicted(lamp, query.readings)}"
            f"Keep {length_range(near.distance_m, far.distance_m, units)} from the tube to the "
            f"animal's back; start at {length(start.distance_m, units)}."
        ),
        values=(
            Value(
                name="distance",
                low=near.distance_m,
                best=start.distance_m,
                high=far.distance_m,
                unit="m",
            ),
            *(Value.of(f"uvi_{name}", s.uvi, "1") for name, s in _ends(near, start, far)),
            Value.of("screen_transmission", passing_estimate(start, doubts), "1"),
        ),
        rows=(
            Row(label="UVI to expect", text=_expected((near, start, far), units)),
            wish.row,
            tube_row,
            screen_row(screen, start.screen_transmission),
            *_held_rows(placement, units),
            doubt_row(doubts),
        ),
        steps=_weak_over_screen(lamp, screen, placement, wish, units) + _steps(wish, start, units),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *(d.source for d in doubts))),
        picture=Picture.later(_picture, lamp, screen, wish, placement, units),
    )


def _ends(near: Spot, start: Spot, far: Spot) -> tuple[tuple[str, Spot], ...]:
    return ("near", near), ("start", start), ("far", far)


def _expected(spots: tuple[Spot, ...], units: Units) -> str:
    return "; ".join(f"{uvi_estimate(s.uvi)} at {length(s.distance_m, units)}" for s in spots)


def _held_rows(placement: Placement, units: Units) -> tuple[Row, ...]:
    told = {
        Reason.NEAR_END_HELD_FOR_COMFORT: "the near end is held at "
        f"{length(COMFORTABLE_MINIMUM_M, units)}: nearer than that no tube should hang",
        Reason.FAR_END_HELD_AT_LIMIT: "the far end is held at "
        f"{length(FARTHEST_PLACE_M, units)}, the farthest I answer for",
    }
    return tuple(Row(label="Held", text=told[r]) for r in placement.reasons if r in told)


def _weak_over_screen(
    lamp: Lamp, screen: Screen, placement: Placement, wish: Wish, units: Units
) -> tuple[str, ...]:
    """Advise a stronger tube where a weak one over a screen has hardly any room to be wrong."""
    if not _is_tight(lamp, screen, placement):
        return ()
    stronger = [text for text in _alternatives(screen, wish, units) if " 6 %" not in text]
    if not stronger:
        return ()
    return (
        (
            f"Better for a beginner: {stronger[0]}. A weak tube over a screen has to hang so near "
            "that an inch more or less matters."
        ),
    )


def _is_tight(lamp: Lamp, screen: Screen, placement: Placement) -> bool:
    held = Reason.NEAR_END_HELD_FOR_COMFORT in placement.reasons
    weak = lamp.strength_percent <= _WEAK_PERCENT and lamp.own is None
    return weak and held and not isinstance(screen, NoScreen)


def _steps(wish: Wish, start: Spot, units: Units) -> tuple[str, ...]:
    return (
        (
            "Measure from the underside of the lit tube straight down to the animal's back "
            "where it basks, not to the platform or the floor."
        ),
        f"Hang the tube at {length(start.distance_m, units)}. In doubt, a little farther.",
        (
            "If you can borrow a UV index meter, hold it at back height facing the tube and move "
            f"the tube until it shows {uvi_range(wish.low, wish.high)}."
        ),
        "Measure again whenever tube, fixture, screen or platform change.",
    )


def _refusal(
    lamp: Lamp, screen: Screen, wish: Wish, placement: Placement, tube_row: Row, context: Context
) -> Reply:
    units = context.units
    what = f"a {lamp_name(lamp)} {screen_phrase(screen)}"
    range_told = f"UVI {uvi_range(wish.low, wish.high)}"
    match placement.verdict:
        case Verdict.TOO_WEAK:
            nearest = placement.at_safe_minimum
            answer = (
                f"Do not use {what}: even at {length(SAFE_MINIMUM_M, units)}, the nearest that is "
                f"safe, it gives about UVI {uvi_estimate(nearest.uvi)} and not {range_told}."
            )
        case Verdict.OUT_OF_RANGE:
            answer = (
                f"Do not use {what}: it is too strong for {range_told} even "
                f"{length(FARTHEST_PLACE_M, units)} away."
            )
        case _:
            answer = _too_close(what, range_told, lamp, screen, placement, units)
    better = _alternatives(screen, wish, units)
    if not isinstance(screen, NoScreen):
        better += _alternatives(NoScreen(), wish, units)[:2]
    steps = tuple(f"Use instead: {text}." for text in better[:3]) or (
        "Ask a keeper with a UV index meter: none of the usual 6 % and 12 % tubes fits here.",
    )
    return Reply(
        command="distance",
        status="problem",
        title=f"This tube will not do for {wish.whom}",
        answer=answer,
        values=(Value.of("uvi_at_safe_minimum", placement.at_safe_minimum.uvi, "1"),),
        rows=(
            wish.row,
            tube_row,
            screen_row(screen, placement.at_safe_minimum.screen_transmission),
        ),
        steps=(*steps, "Then measure again, with a UV index meter if you can."),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, "nearest_distance")),
        picture=Picture.later(_picture, lamp, screen, wish, placement, units),
    )


def _picture(lamp: Lamp, screen: Screen, wish: Wish, placement: Placement, units: Units) -> Picture:
    near, start, far = placement.near, placement.start, placement.far
    fits = placement.verdict is Verdict.FITS
    at, kind = start or placement.at_safe_minimum, PointKind.START if fits else PointKind.HERE
    if placement.verdict is Verdict.OUT_OF_RANGE:
        at = spot(lamp, FARTHEST_PLACE_M, screen)
    told = length(at.distance_m, units)
    if start:
        told = f"start at {told}" if fits else f"would hang at {told}"
    else:
        told = f"UVI {uvi_estimate(at.uvi)} at {told}"
    return uvi_picture(
        title=f"How far the tube hangs for {wish.whom}"
        if fits
        else f"Why this tube will not do for {wish.whom}",
        subtitle=f"{lamp_name(lamp)}, {screen_phrase(screen)}",
        lamp=lamp,
        screen=screen,
        wanted=(wish.low, wish.high),
        units=units,
        advised_m=(near.distance_m, far.distance_m) if fits and near and far else None,
        spots=((told, at, kind),),
    )


def _too_close(
    what: str,
    range_told: str,
    lamp: Lamp,
    screen: Screen,
    placement: Placement,
    units: Units,
) -> str:
    start_m = placement.start.distance_m if placement.start else SAFE_MINIMUM_M
    nearer = max(start_m - _AN_INCH_M, SAFE_MINIMUM_M / 2)
    more = uvi_at(lamp, nearer, screen) / uvi_at(lamp, start_m, screen) - 1.0
    return (
        f"Do not use {what}: for {range_told} it would have to hang about "
        f"{length(start_m, units)} from the animal's back. That is too close for comfort: "
        f"an animal that lifts itself by {length(_AN_INCH_M, units)} gets about "
        f"{percent(more)} more UV (UVI {uvi(uvi_at(lamp, nearer, screen))}, "
        "with the usual doubt of a third), and it can touch the fixture."
    )


def _alternatives(screen: Screen, wish: Wish, units: Units) -> tuple[str, ...]:
    found = []
    for lamp in _ALTERNATIVES:
        placement = place(lamp, screen, wish.low, wish.high)
        if _is_tight(lamp, screen, placement):
            continue
        if placement.verdict is Verdict.FITS and placement.near and placement.far:
            span = length_range(placement.near.distance_m, placement.far.distance_m, units)
            found.append(
                f"T5 HO, {lamp.strength_percent:.0f} %, {fixture_name(lamp.fixture)} "
                f"{screen_phrase(screen)}, {span} from the back"
            )
    return tuple(found)
