"""What UV index to expect at a distance, and which way to move. Words: ``uvi.ftl``."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bot.command import Command
from bot.drawing import PointKind, Tone
from bot.facts import Bound, Length, Say, Says, Share, Uvi, metres, share, uvi
from bot.layered import Brief, Layered, Row, Teller
from bot.preferences import Context
from bot.queries.options import names_a_class
from bot.queries.uv import UviQuery
from bot.questions.shared import limits_for
from bot.questions.tones import TONES
from bot.questions.uv.asked_uv import Asked, told_surely
from bot.questions.uv.curve_picture import Heading, Shown, curve_picture
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.lamp_asked import (
    classes_of,
    lamp_asked,
    screen_asked,
    told_under,
    wanted_asked,
)
from bot.questions.uv.move import Move, MoveWay, move_of
from bot.questions.uv.readings import (
    off_before,
    off_brief,
    off_briefly,
    off_told,
    read_again,
    read_lamp,
)
from bot.questions.uv.shared import (
    UV_CARE,
    doubts_told,
    passing_estimate,
    settled_by,
    wish_assumed,
    wish_told,
)
from bot.questions.uv.tubes import all_together, length_sources, length_steps, length_value
from bot.questions.uv.unsure import Unsurely, unsurely
from bot.questions.uv.unsure_told import tell_unsurely
from bot.questions.uv.without_figures import (
    OtherLamp,
    ThroughPane,
    tell_without,
    without_figures,
)
from bot.reply import Alarm, Picture
from calc.judgement import Verdict
from calc.setup.set_up import sign_of
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    SAFE_MINIMUM_M,
    PlaceCheck,
    Placement,
    check_place,
    spot,
)

__all__ = ["UVI", "Expected", "expected", "tell"]

_GUIDE = ("reading-a-uv-meter", "measuring-the-distance", "screens")
_SOURCES = ("cie_17_26_073", "keitz1971", "uv_distance_rows")


@dataclass(frozen=True, slots=True)
class Expected:
    """The UVI under a tube at a place, and how it stands to what is aimed at.

    ``longest`` is what the longest that the tube may be gives, where that is too much; ``away``
    is where one hangs that is too near, whatever its UVI.
    """

    asked: Asked
    check: PlaceCheck
    here: Uvi
    at: Length
    judgement: Verdict
    sure: bool
    too_near: bool
    longest: Uvi | None
    move: Move
    away: Length | None
    passes: Share | None
    span: Length | None
    why: tuple[Say, ...]
    sources: tuple[str, ...]
    alarms: tuple[Alarm, ...]

    @property
    def wanted(self) -> Uvi:
        """Return the UVI to aim at."""
        return self.asked.wish.wanted

    @property
    def judged(self) -> Say:
        """Return how the place is judged, in a word or two."""
        return Say.by("verdict", self.judgement)

    @property
    def start(self) -> Length | None:
        """Return where the tube starts by what is aimed at."""
        return self.move.begin


Facts = Expected | Unsurely | ThroughPane | OtherLamp


def expected(query: UviQuery, context: Context) -> Facts:
    """Work out the UVI at a place, against the range to aim at."""
    at_m = query.distance.low
    if none := without_figures(query, query.kind, context, query.readings, at_m):
        return none
    told = told_surely(query)
    if told is None:
        return unsurely(query, context)
    screen = screen_asked(told.screen)
    one = lamp_asked(
        query.tube, told.reflector, query.length, query.age, query.enclosure, own=context.own
    )
    named = all_together(one, query)
    is_named = bool(told.reflector) and names_a_class(query.tube, query.lamp)
    read = read_lamp(named, query.readings, screen, query.kind, is_named=is_named)
    with told_under(spot(read.lamp, at_m, screen).uvi, query.animal, context):
        wanted = wanted_asked(query.animal, query.uvi, context, *off_before(read.off))
    ends = wanted.low, wanted.high
    limits = None if read.cannot_be else limits_for(query.animal, context)
    check = check_place(read.lamp, screen, at_m, *ends, limits, unchecked=wanted.unchecked)
    wish, groups = wish_told(wanted, context), classes_of(context.own)
    asked = Asked.of(query, told, read, screen, wish, check.placement, groups)
    # Too near, and readings that cannot be, are told by themselves, with what to do first.
    too_near = at_m < SAFE_MINIMUM_M
    believed = None if too_near or read.cannot_be else check.feared
    return _facts(asked, check, uv_alarms(believed, query.animal, wanted.high, context))


def _facts(asked: Asked, check: PlaceCheck, alarms: tuple[Alarm, ...]) -> Expected:
    here = check.here
    whole = unknowns_of(asked.lamp, here.distance_m, asked.screen)
    settled = settled_by(whole, contradict=asked.read.contradicts)
    return Expected(
        asked=asked,
        check=check,
        here=uvi(here.uvi),
        at=metres(here.distance_m),
        judgement=check.judged.verdict,
        sure=check.judged.is_sure,
        too_near=here.distance_m < SAFE_MINIMUM_M,
        longest=uvi(check.by_length.high) if check.may_be_above else None,
        move=move_of(check),
        away=_away(check.placement),
        passes=share(passing_estimate(here, asked.screen)) if asked.screen_told else None,
        span=_span(check.placement),
        why=doubts_told(whole, settled),
        sources=(*asked.wish.sources, *_SOURCES, *length_sources(asked.tube), *whole.sources),
        alarms=alarms,
    )


def _away(placement: Placement) -> Length | None:
    start_m = placement.ends[1].distance_m if placement.ends else placement.mild_m
    if start_m is None:
        return None
    return metres(max(start_m, COMFORTABLE_MINIMUM_M), bound=Bound.AT_LEAST)


def _span(placement: Placement) -> Length | None:
    if placement.ends is None:
        return None
    near, start, far = (each.distance_m for each in placement.ends)
    return metres(start, (near, far))


def tell(facts: Facts) -> Layered:
    """Tell the UVI there and how it stands, then whether to move the tube."""
    match facts:
        case Expected():
            return _tell(facts)
        case Unsurely():
            return tell_unsurely("uvi", facts)
        case _:
            return tell_without("uvi", facts)


def _tell(facts: Expected) -> Layered:
    say = Says("uvi", facts)
    asked = facts.asked
    brief = _brief(facts, say)
    return Layered(
        command="uvi",
        title=say("title"),
        brief=brief,
        steps=tuple(_steps(facts, say)),
        numbers=(
            Row(say("label"), say("place-not-yet" if asked.read.cannot_be else "place")),
            *([Row(say("label-longest"), say("longest"))] if facts.longest else []),
            *asked.rows(facts.check.here.screen_transmission),
        ),
        why=(
            *off_told(asked.read.off),
            *([say("why-longest")] if facts.longest else []),
            *([] if facts.sure else [say("why-meter")]),
            *facts.why,
        ),
        care=UV_CARE,
        values=(
            ("uvi", facts.here),
            ("distance", facts.at),
            ("screen_transmission", facts.passes),
            ("distance_wanted", facts.span),
            length_value(asked.tube),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=_picture(facts, brief.head, say),
        alarms=facts.alarms,
        undecided=facts.judgement is Verdict.CANNOT_TELL,
    )


def _brief(facts: Expected, say: Says) -> Brief:
    asked = facts.asked
    assumed = (*wish_assumed(asked.wish), *asked.assumed)
    if facts.too_near:
        steps = (say("do-away" if facts.away else "do-distance"),)
        there = off_brief(asked.read) if asked.read.cannot_be else None
        told = (there.head, *there.range) if there else (say("there"),)
        return Brief(say("head-too-near"), told, assumed, steps)
    if asked.read.cannot_be:
        return off_brief(asked.read)
    moved = Say.by("move-do", facts.move.way, facts.move)
    # What moves it until the length is known asks for the length itself.
    waits = facts.move.way in (MoveWay.UNTIL_MILD, MoveWay.UNTIL_KNOWN)
    return Brief(
        head=say("head"),
        range=(
            say("there"),
            *([say("if-long")] if facts.longest else []),
            *off_briefly(asked.read.off),
            *([] if facts.sure else [say("only-meter")]),
        ),
        assumed=assumed,
        steps=(moved, say("do-length" if waits else "do-meter")),
    )


def _steps(facts: Expected, say: Says) -> Iterator[Say]:
    read = facts.asked.read
    if facts.too_near:
        yield say("step-away" if facts.away else "step-distance")
    yield from read_again(read)
    if not read.cannot_be:
        if not facts.too_near:
            yield Say.by("move-step", facts.move.way, facts.move)
        yield from length_steps(facts.asked.tube)
    yield say("step-measure")
    yield say("step-meter")


def _picture(facts: Expected, head: Say, say: Says) -> Callable[[Teller], Picture]:
    asked, ends = facts.asked, facts.asked.placement.ends
    fits = ends is not None and not asked.read.cannot_be
    shown = [Shown(say("point-here"), facts.check.here, PointKind.HERE, facts.at)]
    if ends is not None and fits and facts.start is not None:
        shown.append(Shown(say("point-start"), ends[1], PointKind.START, facts.start))
    advised = (ends[0].distance_m, ends[2].distance_m) if ends is not None and fits else None
    heading = Heading(say("title"), head, _tone(facts), asked.below_picture, asked.wish.animal)
    return lambda teller: Picture.later(
        curve_picture,
        heading,
        (asked.lamp, asked.screen),
        asked.wanted,
        advised,
        tuple(shown),
        teller,
    )


def _tone(facts: Expected) -> Tone:
    if facts.too_near:
        return Tone.BAD
    return Tone.DOUBTFUL if facts.asked.read.cannot_be else TONES[sign_of(facts.judgement)]


UVI = Command(
    name="uvi",
    query=UviQuery,
    facts=expected,
    tell=tell,
    examples=(
        "uvi distance:14in tube:12% reflector:polished screen:45% animal:bearded dragon",
        "uvi distance:35cm tube:6% reflector:plain screen:none animal:leopard gecko",
    ),
    guide=("reading-a-uv-meter", "measuring-the-distance"),
)
