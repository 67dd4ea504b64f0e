"""What UV index to expect at a distance, and which way to move."""

from collections.abc import Iterator

from bot.answers.curves import uvi_picture
from bot.answers.figures import length, length_away, uvi, uvi_estimate, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.past_limit import told_before
from bot.answers.placed import start_told
from bot.answers.readings import LampRead, read_lamp, shape_rows
from bot.answers.readings_off import warning_told
from bot.answers.tube_length import length_sources, length_steps, length_values
from bot.answers.unsure import answer_unsure, told_surely
from bot.answers.uv_asked import lamp_asked, screen_asked
from bot.answers.uv_danger import wish_under
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    doubt_row,
    lamp_name,
    lamp_row,
    screen_phrase,
    screen_row_asked,
    set_up_phrase,
)
from bot.answers.verdicts import move_step, verdict_word
from bot.drawing import PointKind
from bot.language import screens as typed
from bot.language.quantities import Units
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.uv import UviQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.shared import passing_estimate
from bot.questions.uv.tubes import all_together
from bot.reply import Picture, Reply, Row, Value
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    SAFE_MINIMUM_M,
    PlaceCheck,
    Placement,
    Verdict,
    check_place,
    spot,
)
from calc.uv.screen import Screen

__all__ = ["answer_uvi"]

_GUIDE = ("reading-a-uv-meter", "measuring-the-distance", "screens")
_SOURCES = ("cie_17_26_073", "keitz1971", "uv_distance_rows")

_NEAR = " That is too near for any tube, whatever the UVI: switch it off first."


def answer_uvi(query: UviQuery, context: Context) -> Reply:
    """Answer with the UVI at a distance, against the wanted range."""
    if none := answer_without_figures("uvi", query, query.kind, context, query.readings):
        return none
    told = told_surely(query)
    if told is None:
        return answer_unsure(query, context)
    screen = screen_asked(told.screen)
    one = lamp_asked(query.tube, told.reflector, query.length, query.age, query.enclosure)
    named = all_together(one, query)
    is_named = bool(query.tube and told.reflector) and query.kind is UvLamp.T5_HO
    read = read_lamp(named, query.readings, screen, query.kind, is_named=is_named)
    lamp = read.lamp
    there = spot(lamp, query.distance.low, screen).uvi
    with told_before(warning_told(read.off)):
        wish = wish_under(query.animal, query.uvi, there, context)
    limits = None if read.cannot_be else limits_for(query.animal, context)
    check = check_place(lamp, screen, query.distance.low, wish.low, wish.high, limits)
    here, units = check.here, context.units
    whole = unknowns_of(lamp, here.distance_m, screen)
    # Too near, and readings that cannot be, are told by themselves, with what to do first.
    told_itself = here.distance_m < SAFE_MINIMUM_M or read.cannot_be
    believed = None if told_itself else here.uvi
    return Reply(
        command="uvi",
        status="ok",
        title=f"UV index at {length(here.distance_m, units)}",
        answer=read.told(_expected(check, wish, units)),
        values=(*_values(check, told.screen, screen), *length_values(lamp)),
        rows=(
            Row(label="Set-up", text=set_up_phrase(lamp, screen, told.screen)),
            wish.row,
            lamp_row(lamp, query.tube, units, query.lamp),
            screen_row_asked(told.screen, screen, here.screen_transmission),
            *shape_rows(read.fit, units),
            *read.set_aside_rows(units),
            doubt_row(whole, contradict=read.contradicts),
        ),
        steps=(*_first(read, check, wish, units), *_afterwards(read, wish, units)),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *length_sources(lamp), *whole.sources)),
        picture=Picture.later(_picture, lamp, screen, told.screen is None, check, wish, units),
        alarms=uv_alarms(believed, query.animal, wish.high, context),
    )


def _expected(check: PlaceCheck, wish: Wish, units: Units) -> str:
    here = check.here
    more = _NEAR if here.distance_m < SAFE_MINIMUM_M else ""
    more += _if_longer(check)
    more += (
        "" if check.judged.is_sure else " The doubt is wide enough that only a meter can be sure."
    )
    return (
        f"Expect about UVI {uvi_estimate(here.uvi)} at {length(here.distance_m, units)}: "
        f"{verdict_word(check.judged)}, wanted {uvi_range(wish.low, wish.high)}.{more}"
    )


def _if_longer(check: PlaceCheck) -> str:
    """Return what a longer tube would give, where that is more than is wanted."""
    if not check.may_be_above:
        return ""
    most = uvi(check.by_length.high)
    return f" But how long the tube is was not told: a long one gives UVI {most}, above that range."


def _values(check: PlaceCheck, screen: typed.Screen | None, asked: Screen) -> Iterator[Value]:
    here, placement = check.here, check.placement
    yield Value.of("uvi", here.uvi, "1")
    yield Value.of("distance", Estimate.exact(here.distance_m), "m")
    if screen:
        yield Value.of("screen_transmission", passing_estimate(here, asked), "1")
    near, start, far = placement.near, placement.start, placement.far
    if near and start and far:
        spots = Estimate(near.distance_m, start.distance_m, far.distance_m)
        yield Value.of("distance_wanted", spots, "m")


def _picture(
    lamp: Lamp, screen: Screen, as_read: bool, check: PlaceCheck, wish: Wish, units: Units
) -> Picture:
    here, placement = check.here, check.placement
    near, start, far = placement.near, placement.start, placement.far
    fits = placement.verdict is Verdict.FITS
    spots = [(f"you: UVI {uvi_estimate(here.uvi)}", here, PointKind.HERE)]
    if fits and start:
        spots.append((f"middle: {start_told(placement, units)}", start, PointKind.START))
    return uvi_picture(
        title=f"UV index at {length(here.distance_m, units)}",
        subtitle=lamp_name(lamp) if as_read else f"{lamp_name(lamp)}, {screen_phrase(screen)}",
        lamp=lamp,
        screen=screen,
        wanted=(wish.low, wish.high),
        units=units,
        advised_m=(near.distance_m, far.distance_m) if fits and near and far else None,
        spots=spots,
    )


def _first(read: LampRead, check: PlaceCheck, wish: Wish, units: Units) -> tuple[str, ...]:
    moves = _moves(check, wish, units)
    if check.here.distance_m < SAFE_MINIMUM_M:
        return (*moves, *read.first_steps)
    return (*read.first_steps, *read.moves(moves))


def _moves(check: PlaceCheck, wish: Wish, units: Units) -> tuple[str, ...]:
    placement = check.placement
    if check.here.distance_m < SAFE_MINIMUM_M:
        return (_too_near(placement, length(check.here.distance_m, units), units),)
    if placement.verdict is Verdict.BY_LENGTH:
        return (move_step(check, units),)
    if placement.verdict is not Verdict.FITS or not (placement.start and placement.near):
        return (
            (
                f"No sensible distance gives {uvi_range(wish.low, wish.high)} with this set-up: "
                "ask distance with the same words to see why and what to use instead."
            ),
        )
    return (move_step(check, units),)


def _too_near(placement: Placement, here: str, units: Units) -> str:
    told = f"Whatever the UVI, {here} is too near to be safe. Switch the tube off"
    ends = placement.ends
    start_m = ends[1].distance_m if ends else placement.mild_m
    if start_m is None:
        return f"{told}, and ask distance with the same words to see what to use instead."
    away = length_away(max(start_m, COMFORTABLE_MINIMUM_M), units)
    return f"{told} and hang it {away} from the animal's back."


def _afterwards(read: LampRead, wish: Wish, units: Units) -> tuple[str, ...]:
    return (
        *(() if read.cannot_be else length_steps(read.lamp, units)),
        "Measure from the underside of the lit tube to the animal's back where it basks.",
        (
            "With a UV index meter at back height, trust the meter: "
            f"{uvi_range(wish.low, wish.high)} is right. Measure again after every change."
        ),
    )
