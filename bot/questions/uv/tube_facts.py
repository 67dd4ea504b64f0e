"""Which tube suits a place that is fixed, as facts: what every class gives there.

Words: ``tube.ftl``.
"""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Length, Say, Share, Uvi, metres, share, uvi
from bot.language.screens import Pane
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.uv import TubeQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.lamp_asked import Wanted, classes_of, screen_asked, told_under, wanted_asked
from bot.questions.uv.length_asked import length_asked
from bot.questions.uv.readings import LampRead, enough_read, off_before, read_lamp
from bot.questions.uv.shared import Between, Through, Wish, WishedFor, between_told, wish_told
from bot.questions.uv.tube_box import BoxFit, ForBox, check_fits, for_box, length_to_buy
from bot.questions.uv.tubes import Tube, all_together, tube_told
from bot.reply import Alarm
from calc.judgement import Verdict
from calc.limits import Limits
from calc.uncertainty import Estimate
from calc.uv.choice import STRENGTHS_PERCENT, SuitRow, TubeChoice, suits
from calc.uv.danger import judge_uvi
from calc.uv.lamp import Fixture, Lamp, is_between_fitted, of_length
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import LengthKnown, TubeLength
from calc.uv.placement import COMFORTABLE_MINIMUM_M, SAFE_MINIMUM_M, spot
from calc.uv.screen import Screen

__all__ = ["OwnThere", "Pick", "Suit", "TubeChosen", "tube_chosen"]

_SOURCES = ("keitz1971", "uv_distance_rows", "uv_class_strengths")
_OF_BOX = ("half_to_two_thirds", "t5_lengths")
_OF_READINGS = ("student_posterior", "uv_meter_judgement")
_CLASS = Lamp(12.0, Fixture.POLISHED)
_EXAMPLE_BOX_M = 1.2192
_DRAWN_STEP = 4


class Pick(Enum):
    """What is taken for the place, or why nothing is."""

    TOO_NEAR = auto()
    NO_TUBE = auto()
    KEEP_OWN = auto()
    TAKE = auto()
    ALL_WEAK = auto()
    ALL_STRONG = auto()
    NONE = auto()


@dataclass(frozen=True, slots=True)
class Suit:
    """A class of tube in a fixture at the place; ``longest``: a longer one is too strong."""

    strength: Share
    fixture: Fixture
    there: Uvi
    judgement: Verdict
    longest: Length | None
    near: bool
    key: str

    @property
    def is_drawn(self) -> bool:
        """Say whether it has a line in the picture: every second strength, so that all fit."""
        return round(self.strength.best * 100.0) % _DRAWN_STEP == STRENGTHS_PERCENT[0]

    @property
    def judged(self) -> Say:
        """Return how it is judged, in a word or two."""
        return Say("tube-too-near") if self.near else Say.by("verdict", self.judgement)

    @property
    def limit(self) -> Length | None:
        """Return how long it may be, where a longer one does not do."""
        return None if self.near or self.judgement is not Verdict.FINE else self.longest


@dataclass(frozen=True, slots=True)
class OwnThere:
    """What the asker's own lamp gives at the place, and how that is judged; ``believed`` or not."""

    there: Uvi
    judgement: Verdict
    near: bool
    believed: bool

    @property
    def judged(self) -> Say:
        """Return how it is judged, in a word or two."""
        if self.near or not self.believed:
            return Say("tube-too-near" if self.near else "tube-read-again")
        return Say.by("verdict", self.judgement)


@dataclass(frozen=True, slots=True)
class TubeChosen(WishedFor, Through):
    """What suits a place; ``best`` is the class to take, ``other`` a kind without figures."""

    wish: Wish
    at: Length
    nearest: Length
    between: Between
    tube: Tube
    read: LampRead
    suits: tuple[Suit, ...]
    best: Suit | None
    own: OwnThere | None
    pick: Pick
    box: ForBox | None
    fixed: bool
    other: UvLamp | None
    example_box: Length
    rows: tuple[SuitRow, ...]
    lamp: Lamp
    screen: Screen
    sources: tuple[str, ...]
    alarms: tuple[Alarm, ...]

    @property
    def named(self) -> Say | None:
        """Return the class to take by name."""
        return Say("tube-named", self.best) if self.best else None

    @property
    def best_there(self) -> Uvi | None:
        """Return what the class to take gives there."""
        return self.best.there if self.best else None

    @property
    def own_there(self) -> Uvi | None:
        """Return what the asker's own lamp gives there."""
        return self.own.there if self.own else None

    @property
    def many(self) -> int:
        """Return how many tubes are side by side."""
        return self.tube.count

    @property
    def shortest(self) -> Length:
        """Return how long the shortest standard tube is."""
        return self.tube.shortest

    @property
    def box_long(self) -> Length | None:
        """Return how long the enclosure is."""
        return self.box.length if self.box else None


def tube_chosen(query: TubeQuery, context: Context) -> TubeChosen:
    """Work out what every class gives at the place, what to take, and how long."""
    assert query.distance is not None
    assert not isinstance(query.screen, Pane)
    screen, at_m = screen_asked(query.screen), query.distance.low
    check_fits(query.length, query.enclosure)
    choice = length_to_buy(query.enclosure)
    long = _length(query, choice)
    lamp = all_together(of_length(_CLASS, long), query)
    kind = query.lamp or UvLamp.T5_HO
    readings = query.readings if enough_read(query.readings, kind) else None
    read = read_lamp(lamp, readings, screen, kind, is_named=False)
    there = uvi_estimate(read.lamp, at_m, screen) if read.fit else None
    believed = None if read.cannot_be or at_m < SAFE_MINIMUM_M else there
    with told_under(believed or Estimate.exact(0.0), query.animal, context):
        wanted = wanted_asked(query.animal, query.uvi, context, *off_before(read.off))
    ends, limits = (wanted.low, wanted.high), limits_for(query.animal, context)
    many = lamp.count, lamp.gap_m
    groups, only = classes_of(context.own), wanted.unchecked
    rows = suits(at_m, screen, *ends, long, *many, limits, unchecked=only, groups=groups)
    near, box = at_m < COMFORTABLE_MINIMUM_M, for_box(query.enclosure, choice, at_m)
    own = None if there is None else _own(there, at_m, wanted, limits, read)
    best = None if near else _best(rows, ends)
    wish = wish_told(wanted, context)
    return TubeChosen(
        wish=wish,
        at=metres(at_m),
        nearest=metres(COMFORTABLE_MINIMUM_M),
        between=between_told(query.screen, screen, spot(lamp, at_m, screen).screen_transmission),
        tube=tube_told(lamp, None, UvLamp.T5_HO),
        read=read,
        suits=tuple(_suit(row, near=near) for row in rows),
        best=None if best is None else _suit(best, near=near),
        own=own,
        pick=_pick(own, best, rows, ends, box, near=near, fixed=query.length is not None),
        box=box,
        fixed=query.length is not None,
        other=None if kind is UvLamp.T5_HO or read.fit else kind,
        example_box=metres(_EXAMPLE_BOX_M),
        rows=rows,
        lamp=lamp,
        screen=screen,
        sources=(*wish.sources, *_sources(query)),
        alarms=uv_alarms(believed, query.animal, wanted.high, context),
    )


def _sources(query: TubeQuery) -> tuple[str, ...]:
    of_box = _OF_BOX if query.enclosure else ()
    return (*_SOURCES, *of_box, *(_OF_READINGS if query.readings else ()))


def _length(query: TubeQuery, choice: TubeChoice | None) -> TubeLength:
    """Return the length that was told; else the one to buy for the enclosure; else any."""
    if query.length is None and choice and choice.tube:
        return TubeLength(choice.tube.lit_length_m, LengthKnown.FROM_BOX)
    return length_asked(query.length, query.enclosure)


def _own(there: Estimate, at_m: float, wanted: Wanted, limits: Limits, read: LampRead) -> OwnThere:
    judged = judge_uvi(there, wanted.low, wanted.high, limits, at_m, unchecked=wanted.unchecked)
    near = at_m < COMFORTABLE_MINIMUM_M
    return OwnThere(uvi(there), judged.verdict, near=near, believed=not read.cannot_be)


def _best(rows: tuple[SuitRow, ...], ends: tuple[float, float]) -> SuitRow | None:
    """Return what suits best: within the fit, of any length, nearest to the middle."""
    middle = (ends[0] + ends[1]) / 2.0
    return min(
        (row for row in rows if row.judged.is_fine),
        key=lambda row: (
            not is_between_fitted(row.strength_percent),
            row.longest is not None,
            abs(row.uvi.best - middle),
        ),
        default=None,
    )


def _pick(
    own: OwnThere | None,
    best: SuitRow | None,
    rows: tuple[SuitRow, ...],
    ends: tuple[float, float],
    box: ForBox | None,
    *,
    near: bool,
    fixed: bool,
) -> Pick:
    if near:
        return Pick.TOO_NEAR
    if box and box.fit is BoxFit.NO_TUBE and not fixed:
        return Pick.NO_TUBE
    if own and own.believed and own.judgement is Verdict.FINE:
        return Pick.KEEP_OWN
    if best is not None:
        return Pick.TAKE
    if all(row.uvi.best < ends[0] for row in rows):
        return Pick.ALL_WEAK
    return Pick.ALL_STRONG if all(row.uvi.best > ends[1] for row in rows) else Pick.NONE


def _suit(row: SuitRow, *, near: bool) -> Suit:
    return Suit(
        strength=share(row.strength_percent / 100.0),
        fixture=row.fixture,
        there=uvi(row.uvi),
        judgement=row.judged.verdict,
        longest=metres(row.longest.face_to_face_m) if row.longest else None,
        near=near,
        key=f"uvi_{row.strength_percent:.0f}_{row.fixture.name.lower()}",
    )
