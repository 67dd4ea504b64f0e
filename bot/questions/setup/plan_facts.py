"""A set-up that can be done, as facts: what to buy, where it goes, what is met there."""

from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import (
    Bound,
    Hours,
    Length,
    Name,
    Power,
    Say,
    Share,
    Temp,
    Uvi,
    hours,
    metres,
    share,
    uvi,
    watts,
)
from bot.language import screens as typed
from bot.questions.general.care_for import CareFor
from bot.questions.heat.shared import aimed
from bot.questions.setup.plan_asked import Floor, PlanAsked, PlanAssumed
from bot.questions.setup.plan_found import Found
from bot.questions.setup.plan_heat import DayHeat, PlanHeat, heat_planned
from bot.questions.setup.plan_level import LevelTold, level_told
from bot.questions.setup.sun import SunTold, sun_told
from bot.questions.setup.ways import WAYS_SOURCES, Ways
from bot.questions.setup.white import (
    WHITE_SOURCES,
    WhiteTold,
    white_told,
    white_warms,
)
from bot.questions.shared import animal_name, known_by
from bot.questions.uv.shared import Between, Through, Wish, Wished, between_told
from bot.questions.uv.tubes import NamedByTube, Tube, Whose, tube_told
from bot.saved.group import Own
from calc.animal import Animal, Subject
from calc.heat.enclosure import LampPlace
from calc.setup.along import Lies
from calc.setup.arrangement import Arrangement
from calc.setup.light import Held, Obstacle
from calc.setup.plan import Plan
from calc.setup.set_up import SetUp, StandKind
from calc.uv.lamp import CLASS_STRENGTH_PERCENT
from calc.uv.patches import SHADE_UVI, Shade

__all__ = ["PlanAim", "Planned", "Shading", "planned"]


class Shading(Enum):
    """Whether the set-up has shade, and what to add."""

    THERE = auto()
    HARDLY = auto()
    COVERED = auto()


@dataclass(frozen=True, slots=True)
class PlanAim:
    """A temperature to aim for, and how it is known; None where it is not."""

    about: Subject
    range: Temp | None
    known: Say | None


@dataclass(frozen=True, slots=True)
class Planned(Wished, Through, NamedByTube):
    """A set-up to buy and build; lengths are in place, ``away`` from the tube to the back."""

    animal: Name
    wish: Wish
    stand: StandKind
    in_water: bool
    upright: bool
    floor: Floor | None
    water_deep: Length | None
    deep_is_own: bool
    tube: Tube
    new_tube: bool
    has_tube: bool
    has_fixture: bool
    place: LampPlace
    under_lid: Length
    long: Length
    power: Power | None
    away: Length
    uvi: Uvi
    held_by: Held
    between: Between
    tried: Obstacle | None
    top: Length
    stand_long: Length
    stand_deep: Length
    along: Length
    weakest: Uvi
    shading: Shading
    shade_uvi: Uvi
    heat: PlanHeat
    aims: tuple[PlanAim, ...]
    light: Hours | None
    back: Length
    assumed: PlanAssumed
    in_range: Share
    ways: Ways
    level: LevelTold | None
    white: WhiteTold | None
    sure: bool
    set_up: SetUp
    care: CareFor
    sources: tuple[str, ...]

    @property
    def sun(self) -> SunTold | None:
        """Return where UV, heat and light meet."""
        return sun_told(self.set_up.sun, self.set_up.light)

    @property
    def way(self) -> Arrangement:
        """Return the way to hang the lamps that is picked."""
        return self.ways.picked.way

    @property
    def patch(self) -> Share | None:
        """Return the share of the warm patch in the UV range, where a heat lamp hangs."""
        return self.ways.picked.heat

    @property
    def strength(self) -> Share:
        """Return the strength on the label."""
        return self.tube.strength

    @property
    def fixture(self) -> Say:
        """Return the fixture by name."""
        return Say("tubes-fixture", self.tube)

    @property
    def whose(self) -> Whose:
        """Return whose readings the tube answers by, if any."""
        return self.tube.whose

    @property
    def count(self) -> int:
        """Return how many tubes there are."""
        return self.tube.count

    @property
    def heat_span(self) -> Power | None:
        """Return what a lamp to buy may take."""
        return self.heat.span

    @property
    def year(self) -> Hours | None:
        """Return the hours of light over the year, where they differ."""
        return self.light if self.light_varies else None

    @property
    def floor_long(self) -> Length | None:
        """Return the length of the floor that it needs, where this one is too small."""
        return self.floor.long if self.floor else None

    @property
    def light_varies(self) -> bool:
        """Say whether the hours of light may differ with the season."""
        return self.light is not None and self.light.low < self.light.high

    @property
    def floor_deep(self) -> Length | None:
        """Return the depth of that floor."""
        return self.floor.deep if self.floor else None

    @property
    def code(self) -> Say | None:
        """Return which code says so."""
        return self.floor.code if self.floor else None

    @property
    def surface(self) -> Temp | None:
        """Return what the basking surface should be."""
        return self.aim(Subject.BASKING_SURFACE)

    @property
    def in_shade(self) -> Temp | None:
        """Return what the air in the shade should be."""
        return self.aim(Subject.COOL_AIR) or self.aim(Subject.WARM_AIR)

    @property
    def lit_by_lamp(self) -> bool:
        """Say whether a heat lamp hangs there."""
        return self.heat.sizes is not None

    @property
    def larger_too(self) -> bool:
        """Say whether two sizes of lamp are bought."""
        return self.heat.day is DayHeat.TWO_SIZES

    @property
    def all_assumed(self) -> tuple[Say, ...]:
        """Return all that was assumed."""
        return self.assumed.told

    def aim(self, subject: Subject) -> Temp | None:
        """Return a temperature to aim for."""
        return next((aim.range for aim in self.aims if aim.about is subject), None)


def planned(made: Found, screen: typed.Screen | None, own: Own, day: date) -> Planned:
    """Return a set-up as facts; ``screen`` is what was told of it, ``day`` the one on a sheet."""
    found, what, request = made.plan, made.what, made.what.request
    light, places, animal, year = found.light, found.places, what.animal, what.animal.light_hours
    return Planned(
        animal=animal_name(animal),
        wish=what.wish,
        stand=what.stand,
        in_water=what.in_water,
        upright=request.upright,
        floor=what.floor,
        water_deep=what.water_deep,
        deep_is_own=animal.water_depth_m is not None,
        tube=tube_told(light.lamp, None, to_buy=what.new_tube),
        new_tube=what.new_tube,
        has_tube=request.owned.strength_percent is not None,
        has_fixture=request.owned.fixture is not None,
        place=light.hanging.place,
        under_lid=metres(request.box.height_m - light.tube_z_m),
        long=metres(found.fit.length_m),
        power=watts(found.fit.power_w) if found.fit.power_w else None,
        away=metres(light.distance_m, (light.near_m, light.far_m), Bound.INWARD),
        uvi=uvi(light.uvi),
        held_by=light.held,
        between=between_told(screen or typed.NoScreen(""), light.hanging.screen),
        tried=None if found.tried is None else found.tried.obstacle,
        top=metres(light.platform_top_m, (light.low_m, light.high_m)),
        stand_long=metres(places.platform.x1_m - places.platform.x0_m),
        stand_deep=metres(places.platform.y1_m - places.platform.y0_m),
        along=metres(places.platform.middle_m[1 if found.lies is Lies.ACROSS else 0]),
        weakest=uvi(places.met.weakest.uvi),
        shading=_shading(found),
        shade_uvi=uvi(SHADE_UVI),
        heat=heat_planned(found.warmth, what, own),
        aims=tuple(_aims(animal, own)),
        light=None if year is None else hours(year.aim, (year.low, year.high)),
        back=metres(what.back),
        assumed=what.assumed,
        in_range=share(places.met.in_range),
        level=level_told(what.level, request, owned=what.has_light),
        white=_white(made),
        ways=made.ways,
        sure=what.new_tube and light.lamp.strength_percent <= CLASS_STRENGTH_PERCENT,
        set_up=made.set_up,
        care=CareFor(animal, own, day, is_read=False),
        sources=_sources(found, what),
    )


def _white(made: Found) -> WhiteTold | None:
    request, held_c = made.what.request, made.plan.warmth.held_c
    around = request.box, request.room_c, held_c, request.animal
    warms = white_warms(request.lights, *around)
    return white_told(made.set_up.light, request.bands, request.animal, warms)


def _shading(found: Plan) -> Shading:
    if found.covers_most:
        return Shading.COVERED
    return Shading.THERE if found.places.met.shade is Shade.THERE else Shading.HARDLY


def _aims(animal: Animal, own: Own) -> list[PlanAim]:
    """Return what to aim for; the warm air is not missed where it is not known."""
    named = (
        (Subject.BASKING_SURFACE, animal.basking_surface_c),
        (Subject.WARM_AIR, animal.warm_air_c),
        (Subject.COOL_AIR, animal.cool_air_c),
        *(((Subject.WATER, animal.water_c),) if animal.water_c else ()),
    )
    return [
        PlanAim(
            about,
            None if target is None else aimed(target),
            None if target is None else known_by(animal, about, target, own),
        )
        for about, target in named
        if target is not None or about is not Subject.WARM_AIR
    ]


_SOURCES = (
    *("plan_judgement", "uv_distance_rows", "keitz1971", "uv_lamp_judgement"),
    *("half_to_two_thirds", "t5_lengths", "lamp_beams", "lamp_steps", "enclosure_model"),
)


def _sources(found: Plan, what: PlanAsked) -> tuple[str, ...]:
    animal, night, floor = what.animal, found.warmth.night, what.floor
    targets = (
        animal.basking_surface_c,
        animal.warm_air_c,
        animal.cool_air_c,
        animal.night_floor_c,
        animal.light_hours,
    )
    return (
        *((floor.source,) if floor else ()),
        *what.wish.sources,
        *(target.source for target in targets if target),
        *what.sources,
        *_SOURCES,
        *WAYS_SOURCES,
        *(WHITE_SOURCES if what.request.lights else ()),
        *((night.heat_off_source,) if night and night.heat_off_source else ()),
    )
