"""How far from the animal's back the tube should hang, or why it cannot."""

from dataclasses import dataclass

from bot.answers.distance_picture import distance_picture
from bot.answers.distance_refused import why_no_place
from bot.answers.figures import (
    length,
    length_away,
    length_range_away,
    length_start,
    length_within,
    uvi_estimate,
    uvi_range,
)
from bot.answers.instead import instead, weak_over_screen, weaker
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.past_limit import told_before
from bot.answers.placed import by_length, start_told
from bot.answers.readings import LampRead, read_lamp, shape_rows
from bot.answers.readings_off import warning_told
from bot.answers.tube_length import length_sources, length_steps, length_values
from bot.answers.unsure import Told, answer_unsure, told_surely
from bot.answers.uv_asked import lamp_asked, screen_asked
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    doubt_row,
    lamp_row,
    screen_row_asked,
    set_up_phrase,
    wish_asked,
)
from bot.language.quantities import Units
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.uv import DistanceQuery
from bot.questions.uv.shared import passing_estimate
from bot.questions.uv.tubes import all_together
from bot.reply import Picture, Reply, Row, Value
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    FARTHEST_PLACE_M,
    Placement,
    Reason,
    Spot,
    Verdict,
    place,
)
from calc.uv.screen import Screen
from calc.uv.start import Advice

__all__ = ["answer_distance"]

_GUIDE = ("measuring-the-distance", "screens", "reflectors", "reading-a-uv-meter")
_SOURCES = ("keitz1971", "uv_distance_rows")
_BORROWED = "If you can borrow a UV index meter, hold it"
_MEASURE = " That is a place to start from: only a UV index meter tells whether it is right."


def answer_distance(query: DistanceQuery, context: Context) -> Reply:
    """Answer with a range of distances, or refuse and say what would work."""
    if none := answer_without_figures("distance", query, query.kind, context, query.readings):
        return none
    told = told_surely(query)
    if told is None:
        return answer_unsure(query, context)
    screen = screen_asked(told.screen)
    one = lamp_asked(query.tube, told.reflector, query.length, query.age, query.enclosure)
    named = all_together(one, query)
    is_named = bool(query.tube and told.reflector) and query.kind is UvLamp.T5_HO
    read = read_lamp(named, query.readings, screen, query.kind, is_named=is_named)
    with told_before(warning_told(read.off)):
        wish = wish_asked(query.animal, query.uvi, context)
    placement = place(read.lamp, screen, wish.low, wish.high)
    what = _Asked(query, told, read, screen, wish, placement, context.units)
    if placement.ends:
        return _answered(what, *placement.ends, context)
    if placement.verdict is Verdict.BY_LENGTH:
        return _by_length(what, context)
    return _refusal(what, context)


@dataclass(frozen=True, slots=True)
class _Asked:
    """What was asked, and where the tube can go."""

    query: DistanceQuery
    told: Told
    read: LampRead
    screen: Screen
    wish: Wish
    placement: Placement
    units: Units

    @property
    def lamp(self) -> Lamp:
        return self.read.lamp

    @property
    def set_up(self) -> str:
        told = set_up_phrase(self.lamp, self.screen, self.told.screen)
        return told if self.lamp.own or self.lamp.count > 1 else f"a {told}"

    @property
    def picture(self) -> Picture:
        surely = self.told.screen is not None
        return Picture.later(
            distance_picture, self.lamp, self.screen, surely, self.wish, self.placement, self.units
        )

    def rows(self, transmission: float) -> tuple[Row, ...]:
        """Return how the question was taken."""
        return (
            self.wish.row,
            lamp_row(self.lamp, self.query.tube, self.units, self.query.lamp),
            screen_row_asked(self.told.screen, self.screen, transmission),
            *shape_rows(self.read.fit, self.units),
            *self.read.set_aside_rows(self.units),
        )


def _answered(what: _Asked, near: Spot, start: Spot, far: Spot, context: Context) -> Reply:
    units, wish = what.units, what.wish
    whole = unknowns_of(what.lamp, start.distance_m, what.screen)
    passes = Value.of("screen_transmission", passing_estimate(start, what.screen), "1")
    return Reply(
        command="distance",
        status="ok",
        title=f"Distance from tube to back for {wish.whom}",
        answer=what.read.told(
            f"{_weaker_first(what)}"
            f"Keep {length_range_away(near.distance_m, far.distance_m, units)} from the tube to "
            f"the animal's back; start at {start_told(what.placement, units)}"
            f"{_because(what.placement)}."
            f"{_MEASURE if _is_unsure(what) else ''}"
        ),
        values=(
            Value.of("distance", Estimate(near.distance_m, start.distance_m, far.distance_m), "m"),
            *(Value.of(f"uvi_{name}", s.uvi, "1") for name, s in _ends(near, start, far)),
            *((passes,) if what.told.screen else ()),
            *length_values(what.lamp),
        ),
        rows=(
            Row(label="UVI to expect", text=_expected(near, start, far, units)),
            *what.rows(start.screen_transmission),
            *_held_rows(what.placement, units),
            doubt_row(whole, contradict=what.read.contradicts),
        ),
        steps=(
            *what.read.first_steps,
            *(weaker(what.lamp, what.screen, wish, units) if _is_far(what) else ()),
            *(() if what.read.cannot_be else length_steps(what.lamp, units)),
            *weak_over_screen(what.lamp, what.screen, what.placement, wish, units),
            *_steps(what, units),
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(
            (*wish.sources, *_SOURCES, *length_sources(what.lamp), *whole.sources)
        ),
        picture=what.picture,
    )


def _weaker_first(what: _Asked) -> str:
    """Return what to do about a tube that would have to hang very far away."""
    return "Choose a weaker tube. " if _is_far(what) else ""


def _is_far(what: _Asked) -> bool:
    doubtful = what.read.contradicts or what.read.cannot_be
    return what.placement.advice is Advice.WEAKER_TUBE and not doubtful


def _is_unsure(what: _Asked) -> bool:
    told = what.read.contradicts or what.read.cannot_be
    return what.placement.advice is Advice.MEASURE and not told


def _because(placement: Placement) -> str:
    """Return why the start lies beyond the middle of the range."""
    if Reason.START_HELD_FOR_LENGTH not in placement.reasons:
        return ""
    return ", because how long the tube is was not told and a long one gives more"


def _ends(near: Spot, start: Spot, far: Spot) -> tuple[tuple[str, Spot], ...]:
    return ("near", near), ("start", start), ("far", far)


def _expected(near: Spot, start: Spot, far: Spot, units: Units) -> str:
    ends = near.distance_m, far.distance_m
    told = (
        (near, length_away(near.distance_m, units)),
        (start, length_start(start.distance_m, ends, units)),
        (far, length_within(far.distance_m, units)),
    )
    return "; ".join(f"{uvi_estimate(spot.uvi)} at {at}" for spot, at in told)


def _held_rows(placement: Placement, units: Units) -> tuple[Row, ...]:
    told = {
        Reason.NEAR_END_HELD_FOR_COMFORT: "the near end is held at "
        f"{length(COMFORTABLE_MINIMUM_M, units)}: nearer than that no tube should hang",
        Reason.FAR_END_HELD_AT_LIMIT: "the far end is held at "
        f"{length(FARTHEST_PLACE_M, units)}, the farthest I answer for",
    }
    return tuple(Row(label="Held", text=told[r]) for r in placement.reasons if r in told)


def _steps(what: _Asked, units: Units) -> tuple[str, ...]:
    read, wish = what.read, what.wish
    hang = f"Hang the tube at {start_told(what.placement, units)}. In doubt, a little farther."
    doubted = read.moves(())
    meter = "With your UV index meter, read" if read.lamp.own else _BORROWED
    return (
        *doubted,
        (
            "Measure from the underside of the lit tube straight down to the animal's back "
            "where it basks, not to the platform or the floor."
        ),
        *(() if doubted else (hang,)),
        (
            f"{meter} at back height facing the tube, and move the tube until it shows "
            f"{uvi_range(wish.low, wish.high)}."
        ),
        "Measure again whenever tube, fixture, screen or platform change.",
    )


def _by_length(what: _Asked, context: Context) -> Reply:
    """Answer with a range for every length that the tube may have, as no one is right for all."""
    lamp, screen, wish, units = what.lamp, what.screen, what.wish, what.units
    found = by_length(lamp, screen, wish.low, wish.high)
    return Reply(
        command="distance",
        status="ok" if found.good else "problem",
        title=f"It depends on the length of the tube for {wish.whom}",
        answer=what.read.told(found.answer(units)),
        values=(*found.values(), *length_values(lamp)),
        rows=what.rows(what.placement.at_safe_minimum.screen_transmission),
        table=found.table(units),
        steps=(
            *what.read.first_steps,
            *what.read.moves(()),
            *(() if found.good else weaker(lamp, screen, wish, units)),
            *(() if what.read.cannot_be else length_steps(lamp, units)),
            "Then hang it, and measure with a UV index meter if you can.",
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *length_sources(lamp))),
        picture=what.picture,
    )


def _refusal(asked: _Asked, context: Context) -> Reply:
    lamp, screen, wish, placement = asked.lamp, asked.screen, asked.wish, asked.placement
    units, wanted = asked.units, f"UVI {uvi_range(wish.low, wish.high)}"
    why = why_no_place(asked.set_up, wanted, lamp, screen, placement, units)
    return Reply(
        command="distance",
        status="problem",
        title=f"This tube will not do for {wish.whom}",
        answer=asked.read.told(why),
        values=(
            Value.of("uvi_at_safe_minimum", placement.at_safe_minimum.uvi, "1"),
            *length_values(lamp),
        ),
        rows=asked.rows(placement.at_safe_minimum.screen_transmission),
        steps=(
            *asked.read.first_steps,
            *asked.read.moves(()),
            *instead(lamp, screen, wish, units),
            *(() if asked.read.cannot_be else length_steps(lamp, units)),
            "Then measure again, with a UV index meter if you can.",
        ),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, "nearest_distance")),
        picture=asked.picture,
    )
