"""The map of the UV in an enclosure as facts: verdict, places, shade, and every mend tried."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import Enum, auto
from math import inf

import numpy as np

from bot.dangers.first_change import first_change
from bot.facts import Length, Say, Share, Uvi, metres, share, uvi
from bot.language.screens import Screen
from bot.language.uv_lamps import WARM
from bot.preferences import Context
from bot.queries.uv_depth import SectionQuery
from bot.questions.animals import animal_asked
from bot.questions.setup.section_layout import SectionTaken, layout
from bot.questions.setup.section_lives import SectionLife, lives_told
from bot.questions.setup.section_mends import SectionMend, mends_told
from bot.questions.setup.sun import SunTold, sun_told
from bot.questions.setup.white import WHITE_SOURCES, WhiteTold, white_lights, white_told
from bot.questions.uv.asked_uv import At
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.lamp_asked import wanted_asked
from bot.questions.uv.readings import LampRead, off_told
from bot.questions.uv.shared import (
    Between,
    Through,
    Wish,
    WishedFor,
    between_told,
    doubts_told,
    settled_by,
    wish_told,
)
from bot.questions.uv.tubes import Assumed, NamedByTube, Tube, length_sources, tube_told
from bot.reply import Alarm
from calc.animal import Animal
from calc.judgement import Verdict
from calc.light.bands import Bands, bands_of, life_of
from calc.setup.bodies import body_for
from calc.setup.lit import lit_set_up
from calc.setup.lives import stand_for
from calc.setup.mends import Mend, is_served, mends_for
from calc.setup.room import Room
from calc.setup.set_up import SetUp, StandKind
from calc.unknowns import Whole
from calc.uv.field_unknowns import field_unknowns
from calc.uv.patches import SHADE_UVI, Overlap, Patches, Place, Shade
from calc.uv.placement import COMFORTABLE_MINIMUM_M, spot
from calc.uv.section import uvi_field

__all__ = ["Lit", "Section", "SectionLong", "SectionPlace", "SectionView", "section_of"]

_SOURCES = (
    *("line_source", "line_through_weave", "uv_distance_rows", "uv_shade", "shade_judgement"),
    "sun_patch_judgement",
)
_COLUMNS, _HEIGHTS, _ACROSS = 6, 5, 5
_ENOUGH, _HARDLY = 0.5, 0.05


class Lit(Enum):
    """How the platform is lit, by its strongest place and by how much of it is in the range."""

    TOO_CLOSE = auto()
    TOO_STRONG = auto()
    MAYBE_STRONG = auto()
    TOO_WEAK = auto()
    MAYBE_WEAK = auto()
    HARDLY = auto()
    UNEVEN = auto()
    CANNOT_TELL = auto()
    FINE = auto()


@dataclass(frozen=True, slots=True)
class SectionPlace:
    """A place that a back can reach, and its UVI."""

    uvi: Uvi
    along: Length
    across: Length
    high: Length


@dataclass(frozen=True, slots=True)
class SectionLong:
    """A length of the map or of its picture."""

    long: Length


@dataclass(frozen=True, slots=True)
class SectionView:
    """The map seen from the front: its columns from the warm end, and a row for each height."""

    along: tuple[SectionLong, ...]
    rows: tuple[tuple[At, ...], ...]


@dataclass(frozen=True, slots=True)
class Section(WishedFor, Through, NamedByTube):
    """Where the UV goes in an enclosure; ``long`` is the tube as it was drawn."""

    wish: Wish
    tube: Tube
    by_readings: LampRead
    long: Length
    tube_across: Length
    between: Between
    top: Length
    lit: Lit
    in_range: Share
    strongest: SectionPlace
    weakest: SectionPlace
    shade: Shade
    shade_share: Share
    shade_uvi: Uvi
    overlap: Overlap | None
    heat_in_range: Share | None
    sun: SunTold | None
    white: WhiteTold | None
    view: SectionView
    end_view: tuple[Say, ...]
    middle: Length
    taken: tuple[SectionTaken, ...]
    mends: tuple[SectionMend, ...]
    lives: tuple[SectionLife, ...]
    stand: StandKind
    is_hopeless: bool
    may_be_longer: bool
    why: tuple[Say, ...]
    alarms: tuple[Alarm, ...]
    set_up: SetUp
    sources: tuple[str, ...]

    @property
    def most(self) -> Uvi:
        """Return the UVI of the strongest place."""
        return self.strongest.uvi

    @property
    def least(self) -> Uvi:
        """Return the UVI of the weakest place."""
        return self.weakest.uvi

    @property
    def count(self) -> int:
        """Return how many tubes there are; the readings of small lamps hold all of them."""
        return len(self.set_up.tubes)

    @property
    def point(self) -> bool:
        """Say whether it is a small lamp, by its readings."""
        return self.tube.point

    @property
    def assumed(self) -> Assumed:
        """Return what was assumed of the tube that changes the answer."""
        kind = self.tube.assumed in (Assumed.KIND, Assumed.BOTH)
        if self.may_be_longer:
            return Assumed.BOTH if kind else Assumed.LENGTH
        return Assumed.KIND if kind else Assumed.NOTHING

    @property
    def all_taken(self) -> tuple[Say, ...]:
        """Return all that was assumed of the enclosure."""
        return tuple(Say.by("section-taken", one.what, one) for one in self.taken)


def section_of(query: SectionQuery, context: Context) -> Section:
    """Work out where the UV goes, and what would mend it."""
    wanted = wanted_asked(query.animal, query.uvi, context)
    animal = _animal(query, context)
    basks = animal is None or animal.basking_surface_c is not None
    laid = layout(query, (wanted.low, wanted.high), context, basks=basks)
    room = replace(laid.room, unchecked=wanted.unchecked)
    met = room.met()
    mends = _mends(room, met, query, context)
    alarms = uv_alarms(met.strongest.uvi, query.animal, wanted.high, context)
    stand = StandKind.PLATFORM if animal is None else stand_for(animal)
    lit = _set_up(query, room, met, mends, stand, animal)
    tube = tube_told(room.lamp, query.tube, query.lamp)
    wish, whole = wish_told(wanted, context), field_unknowns(room.tubes, room.back_z_m)
    return Section(
        wish=wish,
        tube=tube,
        by_readings=laid.read,
        long=metres(room.tube_length_m),
        tube_across=metres(room.tube_y_m),
        between=_between(query, room),
        top=metres(room.platform.top_m),
        lit=_lit(met),
        in_range=share(met.in_range),
        strongest=_place(met.strongest),
        weakest=_place(met.weakest),
        shade=met.shade,
        shade_share=share(met.shade_share),
        shade_uvi=uvi(SHADE_UVI),
        overlap=met.overlap,
        heat_in_range=None if met.heat_in_range is None else share(met.heat_in_range),
        sun=sun_told(lit.sun, lit.light),
        white=white_told(lit.light, _bands(animal), animal),
        view=_view(room),
        end_view=tuple(Say("section-end-at", at) for at in _end_view(room)),
        middle=metres(room.platform.middle_m[0]),
        taken=laid.taken,
        mends=mends_told(room, mends),
        lives=lives_told(animal, room),
        stand=stand,
        is_hopeless=not is_served(met) and all(mend.hide for mend in mends[:1]),
        may_be_longer=bool(room.lamp.may_be),
        why=(*off_told(laid.read.off), *doubts_told(whole, settled_by(whole, contradict=False))),
        alarms=alarms,
        set_up=replace(lit, first=first_change(alarms, lit.first)),
        sources=_sources(wish, tube, whole, query),
    )


def _sources(wish: Wish, tube: Tube, whole: Whole, query: SectionQuery) -> tuple[str, ...]:
    white = WHITE_SOURCES if query.light else ()
    return (*wish.sources, *_SOURCES, *white, *length_sources(tube), *whole.sources)


def _bands(animal: Animal | None) -> Bands | None:
    life = None if animal is None else life_of(animal)
    return None if life is None else bands_of(life)


def _set_up(
    query: SectionQuery,
    room: Room,
    met: Patches,
    mends: tuple[Mend, ...],
    stand: StandKind,
    animal: Animal | None,
) -> SetUp:
    lights = white_lights(query.light, room.box.length_m)
    lit = lit_set_up(room, met, mends, stand, lights, _bands(animal))
    lit = replace(lit, animal="" if animal is None else animal.slug)
    # The heat of such a UV lamp comes out of itself.
    return replace(lit, lamps=()) if query.kind in WARM else lit


def _between(query: SectionQuery, room: Room) -> Between:
    told, screen = query.screen, room.tubes[0].screen
    passed = spot(room.lamp, query.distance.low, screen).screen_transmission
    return between_told(told if isinstance(told, Screen) else None, screen, passed)


def _animal(query: SectionQuery, context: Context) -> Animal | None:
    named = query.animal.strip() or context.default_animal
    return animal_asked(query.animal, context) if named else None


def _mends(room: Room, met: Patches, query: SectionQuery, context: Context) -> tuple[Mend, ...]:
    animal = _animal(query, context)
    body = None if animal is None else body_for(animal)
    highest_m = body.highest_platform_m if body else inf
    return mends_for(room, met, highest_m, nothing_owned=room.tubes[0].lamp.own is None)


_BY_VERDICT = {
    Verdict.FAR_TOO_LOW: Lit.TOO_WEAK,
    Verdict.LOW: Lit.TOO_WEAK,
    Verdict.PROBABLY_LOW: Lit.MAYBE_WEAK,
    Verdict.PROBABLY_HIGH: Lit.MAYBE_STRONG,
    Verdict.HIGH: Lit.TOO_STRONG,
    Verdict.DANGEROUS: Lit.TOO_STRONG,
}


def _lit(met: Patches) -> Lit:
    if met.too_near:
        return Lit.TOO_CLOSE
    judged = met.judged
    found = _BY_VERDICT.get(judged.verdict)
    if found is not None:
        return found
    if judged.is_likely_above:
        return Lit.MAYBE_STRONG
    if met.in_range.best < _ENOUGH:
        return Lit.HARDLY if met.in_range.best < _HARDLY else Lit.UNEVEN
    return Lit.FINE if judged.is_fine else Lit.CANNOT_TELL


def _place(place: Place) -> SectionPlace:
    where = metres(place.x_m), metres(place.y_m), metres(place.z_m)
    return SectionPlace(uvi(place.uvi), *where)


def _view(room: Room) -> SectionView:
    """Return the map along the enclosure, under the middle of the depth."""
    box = room.box
    along = np.linspace(0.0, box.length_m, _COLUMNS)
    highest = max(room.tubes[0].z_m - COMFORTABLE_MINIMUM_M, room.back_z_m)
    heights = np.linspace(highest, room.back_m, _HEIGHTS)
    heights[np.argmin(np.abs(heights - room.back_z_m))] = room.back_z_m
    grid = uvi_field(room.tubes, along, box.depth_m / 2.0, heights[:, None])
    return SectionView(
        along=tuple(SectionLong(metres(float(x))) for x in along),
        rows=tuple(
            _ats(line, [float(z)] * _COLUMNS) for z, line in zip(heights, grid, strict=True)
        ),
    )


def _end_view(room: Room) -> tuple[At, ...]:
    """Return the UVI across the middle of the platform, at the height of the back."""
    across = np.linspace(0.0, room.box.depth_m, _ACROSS)
    line = uvi_field(room.tubes, room.platform.middle_m[0], across, room.back_z_m)
    return _ats(line, across)


def _ats(values: Iterable[float], places_m: Iterable[float]) -> tuple[At, ...]:
    pairs = zip(values, places_m, strict=True)
    return tuple(At(uvi(float(value)), metres(float(place))) for value, place in pairs)
