"""What an animal needs, as facts: every target of it, and how it lives."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot import guide
from bot.facts import Hours, Length, Name, Say, Temp, Uvi, degrees, metres
from bot.preferences import Context
from bot.queries.needs import NeedsQuery
from bot.questions.animals import animal_asked
from bot.questions.general.needs_asked import About, Fits, WantsUv, about_told, fits, wants_uv
from bot.questions.general.needs_targets import (
    Need,
    OneNeed,
    has_air,
    known_targets,
    targets_of,
    uvi_wanted,
)
from bot.questions.heat.gauges import GaugesTold, gauges_told
from bot.questions.shared import (
    BodyTold,
    animal_name,
    authorities_say,
    bodies_told,
    known_by,
    others_say,
)
from bot.questions.water import water_deep
from bot.saved.group import Own
from calc.animal import Animal, Awake, Group, Particular, Subject
from calc.limits import limits_of
from calc.setup.bodies import body_for
from calc.setup.lives import Life, lives_of
from calc.setup.measured import measured_set_up
from calc.setup.set_up import SetUp
from calc.setup.space import smallest_floor
from calc.sources import source

__all__ = ["Needs", "Start", "needs", "needs_of"]

# What the questions beside the answer are asked with: a shelf's height, a common box and home.
_SHELF_M = 0.3048
_BOX_M = (1.2192, 0.6096, 0.6096)
_ROOM_C, _NIGHT_C = 21.0, 17.0


class Start(Enum):
    """What of UV can be asked next: nothing, the tube, or a whole plan too."""

    NOTHING = auto()
    TUBE = auto()
    PLAN = auto()


@dataclass(frozen=True, slots=True)
class Needs:
    """What one animal needs; None: not known. The last ones are for the next questions."""

    animal: Name
    called: str
    needs: tuple[OneNeed, ...]
    uvi: Uvi | None
    zone: int | None
    awake: Awake | None
    group: Group | None
    adult: Length | None
    floor_long: Length | None
    floor_deep: Length | None
    floor_citation: str | None
    water_deep: Length | None
    deep_known: Say | None
    lives: tuple[Life, ...]
    particular: tuple[Say, ...]
    others: tuple[Say, ...]
    bodies: tuple[BodyTold, ...]
    sources: tuple[str, ...]
    start: Start
    basking: Temp | None
    cool: Temp | None
    water: Temp | None
    may_bask: bool
    has_air: bool
    is_unchecked: bool
    too_hot: Temp | None
    shelf: Length
    length: Length
    depth: Length
    height: Length
    room: Temp
    night: Temp
    pages: tuple[str, ...]
    set_up: SetUp
    gauges: GaugesTold
    about: About | None
    wants_uv: WantsUv
    heard: Temp | None
    fits: Fits | None

    @property
    def asked(self) -> OneNeed | None:
        """Return the one need that was asked about, if its figure is known."""
        need = None if self.about is None else _ASKED[self.about]
        found = (one for one in self.needs if one.need is need and one.figure is not None)
        return next(found, None)

    @property
    def warmth(self) -> Temp | None:
        """Return the temperature that was asked about."""
        return self.asked.warmth if self.asked else None

    @property
    def warmth_is_range(self) -> bool:
        """Say whether what was asked about is more than one temperature."""
        return self.warmth is not None and self.warmth.low < self.warmth.high

    @property
    def light(self) -> Hours | None:
        """Return the hours that were asked about."""
        return self.asked.light if self.asked else None

    @property
    def zone_is(self) -> Say | None:
        """Return what the zone of the animal means."""
        return None if self.zone is None else Say.of("needs-zone", str(self.zone))


_ASKED = {
    About.UV: Need.UVI,
    About.UVI: Need.UVI,
    About.BASKING: Need.BASKING_SURFACE,
    About.COOL: Need.COOL_AIR,
    About.NIGHT: Need.NIGHT_FLOOR,
    About.WATER: Need.WATER,
    About.HOURS: Need.LIGHT_HOURS,
}


def needs(query: NeedsQuery, context: Context) -> Needs:
    """Gather every target of the animal; what is not known is named as such."""
    animal = animal_asked(query.animal, context)
    about, heard_c = _asked(query, animal)
    return needs_of(animal, context.own, about, heard_c)


def needs_of(
    animal: Animal, own: Own, about: About | None = None, heard_c: float | None = None
) -> Needs:
    """Gather every target of an animal as a group has it; ``heard_c`` [°C] was told of one."""
    set_up = measured_set_up((), animal)
    length, depth, height = map(metres, _BOX_M)
    surface, cool, floor = animal.basking_surface_c, animal.cool_air_c, smallest_floor(animal.slug)
    return Needs(
        animal=animal_name(animal),
        called=animal.name,
        needs=tuple(targets_of(animal, own)),
        uvi=uvi_wanted(animal),
        zone=animal.zone.number if animal.zone else None,
        awake=animal.awake,
        group=animal.group,
        adult=_adult(animal),
        floor_long=None if floor is None else metres(floor.sides_m[0]),
        floor_deep=None if floor is None else metres(floor.sides_m[1]),
        floor_citation=None if floor is None else source(floor.source).citation,
        water_deep=water_deep(animal),
        deep_known=_deep_known(animal, own),
        lives=lives_of(animal),
        particular=tuple(_particular(animal)),
        others=(*others_say(animal, *Subject), *authorities_say(animal, *Subject)),
        bodies=bodies_told(animal),
        sources=tuple(_sources(animal)),
        start=_start(animal),
        basking=None if surface is None else degrees(surface.aim),
        cool=None if cool is None else degrees(cool.aim),
        water=None if animal.water_c is None else degrees(animal.water_c.aim),
        may_bask=animal.group is None or animal.basking or surface is not None,
        has_air=has_air(animal),
        is_unchecked=_is_unchecked(animal),
        too_hot=_too_hot(animal),
        shelf=metres(_SHELF_M),
        length=length,
        depth=depth,
        height=height,
        room=degrees(_ROOM_C),
        night=degrees(_NIGHT_C),
        pages=tuple(page.slug for page in guide.pages() if page.animal == animal.slug),
        set_up=set_up,
        gauges=gauges_told(set_up, animal),
        about=about,
        wants_uv=wants_uv(animal, has_air=has_air(animal)),
        heard=None if heard_c is None else degrees(heard_c),
        fits=None if heard_c is None else fits(animal, heard_c, about),
    )


def _adult(animal: Animal) -> Length | None:
    grown = animal.adult_length_m
    return None if grown is None else metres(grown.aim, (grown.low, grown.high))


def _deep_known(animal: Animal, own: Own) -> Say | None:
    """Return that the group set how deep its water is, where it did."""
    deep = animal.water_depth_m
    return None if deep is None else known_by(animal, Subject.WATER_DEPTH, deep, own)


def _asked(query: NeedsQuery, animal: Animal) -> tuple[About | None, float | None]:
    """Return the one need that was asked for, and the temperature [°C] that was told."""
    about = About(query.about) if query.about else None
    if query.heard is None:
        return about, None
    heard_c = query.heard.middle
    return about_told(animal, heard_c, about), heard_c


def _is_unchecked(animal: Animal) -> bool:
    targets = (animal.uvi, animal.basking_surface_c, animal.night_floor_c)
    return any(target is not None and target.is_unchecked for target in targets)


def _too_hot(animal: Animal) -> Temp | None:
    limits = limits_of(animal)
    hottest = limits.coolest_air_c if has_air(animal) else limits.water_c
    return None if hottest is None else degrees(hottest.value)


def _particular(animal: Animal) -> Iterator[Say]:
    if Particular.KIND in animal.particular:
        yield Say.of("kind", animal.slug)
    if animal.group is not None:
        yield Say.of("kind-young", animal.group.value)
    if Particular.BROOD in animal.particular:
        yield Say.of("kind-brood", animal.slug)


def _start(animal: Animal) -> Start:
    # Of an animal that a group added neither may be known, and a plan needs its body.
    if animal.uvi is None:
        return Start.NOTHING
    return Start.PLAN if body_for(animal) else Start.TUBE


def _sources(animal: Animal) -> Iterator[str]:
    yield from (target.source for target in known_targets(animal))
    if animal.zone is not None:
        yield animal.zone.source
    yield from (other.source for other in animal.disagreements)
    yield from (reading.source for reading in animal.readings)
    floor = smallest_floor(animal.slug)
    if floor is not None:
        yield floor.source
    if animal.adult_length_m is not None:
        yield animal.adult_length_m.source
    yield from (body.source for body in animal.bodies)
