"""What an animal needs, every figure with who says so. Words: ``words/<language>/needs.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.answers.animals import animal_asked, wanted_of
from bot.command import Command
from bot.facts import Figure, Hours, Length, Name, Say, Says, Temp, Uvi, degrees, hours, metres, uvi
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.needs import NeedsQuery
from bot.questions.heat.gauges import GaugesTold, gauges_picture, gauges_told
from bot.questions.heat.shared import HEAT_CARE, aimed, has_best
from bot.questions.shared import (
    BodyTold,
    animal_name,
    bodies_told,
    body_rows,
    known_by,
    others_say,
)
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE
from bot.reply import Picture
from calc.animals import Animal, Subject, Target
from calc.setup.bodies import body_of
from calc.setup.measured import measured_set_up
from calc.setup.set_up import SetUp

__all__ = ["NEEDS", "needs", "tell"]

_GUIDE = ("planning-a-set-up", "measuring-temperatures", "reading-a-uv-meter", "nights")
# What the questions beside the answer are asked with: a shelf's height, a common box and home.
_SHELF_M = 0.3048
_BOX_M = (1.2192, 0.6096, 0.6096)
_ROOM_C, _NIGHT_C = 21.0, 17.0


class Need(Enum):
    """A target of an animal, in the order of the answer; the value is its name in JSON."""

    UVI = "uvi"
    BASKING_SURFACE = "basking_surface"
    WARM_AIR = "warm_air"
    COOL_AIR = "cool_air"
    NIGHT_FLOOR = "night_floor"
    NIGHT_HEAT_OFF = "night_heat_off"
    LIGHT_HOURS = "light"


class Start(Enum):
    """What of UV can be asked next: nothing, the tube, or a whole plan too."""

    NOTHING = auto()
    TUBE = auto()
    PLAN = auto()


@dataclass(frozen=True, slots=True)
class OneNeed:
    """One target; the figure of its kind is there where it is known, and none where it is not."""

    need: Need
    basks: bool
    uvi: Uvi | None
    warmth: Temp | None
    light: Hours | None
    has_best: bool
    known: Say | None
    source: str | None

    @property
    def figure(self) -> Figure | None:
        """Return the target, of whatever kind."""
        return self.uvi or self.warmth or self.light


@dataclass(frozen=True, slots=True)
class Needs:
    """What one animal needs; None: not known. The last ones are for the next questions."""

    animal: Name
    called: str
    needs: tuple[OneNeed, ...]
    uvi: Uvi | None
    zone: int | None
    others: tuple[Say, ...]
    bodies: tuple[BodyTold, ...]
    sources: tuple[str, ...]
    start: Start
    basking: Temp | None
    cool: Temp | None
    shelf: Length
    length: Length
    depth: Length
    height: Length
    room: Temp
    night: Temp
    set_up: SetUp
    gauges: GaugesTold

    @property
    def zone_is(self) -> Say | None:
        """Return what the zone of the animal means."""
        return None if self.zone is None else Say.of("needs-zone", str(self.zone))


def needs(query: NeedsQuery, context: Context) -> Needs:
    """Gather every target of the animal; what is not known is named as such."""
    animal = animal_asked(query.animal, context)
    set_up = measured_set_up((), animal)
    length, depth, height = map(metres, _BOX_M)
    surface, cool = animal.basking_surface_c, animal.cool_air_c
    return Needs(
        animal=animal_name(animal),
        called=animal.name,
        needs=tuple(_needs(animal, context)),
        uvi=_uvi(animal),
        zone=animal.zone.number if animal.zone else None,
        others=others_say(animal, *Subject),
        bodies=bodies_told(animal),
        sources=tuple(_sources(animal)),
        start=_start(animal),
        basking=None if surface is None else degrees(surface.aim),
        cool=None if cool is None else degrees(cool.aim),
        shelf=metres(_SHELF_M),
        length=length,
        depth=depth,
        height=height,
        room=degrees(_ROOM_C),
        night=degrees(_NIGHT_C),
        set_up=set_up,
        gauges=gauges_told(set_up, animal),
    )


def _uvi(animal: Animal) -> Uvi | None:
    target = animal.uvi
    return None if target is None else uvi(target.aim, (target.low, target.high))


def _start(animal: Animal) -> Start:
    # Of an animal that a group added neither may be known, and a plan needs its body.
    if animal.uvi is None:
        return Start.NOTHING
    return Start.PLAN if body_of(animal.slug) else Start.TUBE


def _needs(animal: Animal, context: Context) -> Iterator[OneNeed]:
    for need in Need:
        target = wanted_of(animal, Subject[need.name])
        if target is None and need is Need.NIGHT_HEAT_OFF:
            continue
        known = None
        if target is not None:
            known = known_by(animal, Subject[need.name], target, context.own)
        ends = None if target is None else (target.low, target.high)
        yield OneNeed(
            need=need,
            basks=bool(animal.basking),
            uvi=_uvi(animal) if need is Need.UVI else None,
            warmth=aimed(target) if target and need not in (Need.UVI, Need.LIGHT_HOURS) else None,
            light=hours(target.aim, ends) if target and need is Need.LIGHT_HOURS else None,
            has_best=target is not None and has_best(target),
            known=known,
            source=None if target is None else target.source,
        )


def _targets(animal: Animal) -> Iterator[Target]:
    for need in Need:
        target = wanted_of(animal, Subject[need.name])
        if target is not None:
            yield target


def _sources(animal: Animal) -> Iterator[str]:
    yield from (target.source for target in _targets(animal))
    if animal.zone is not None:
        yield animal.zone.source
    yield from (other.source for other in animal.disagreements)
    yield from (body.source for body in animal.bodies)


def tell(facts: Needs) -> Layered:
    """Tell what a newcomer needs first, then every target with who says so."""
    say = Says("needs", facts)
    return Layered(
        command="needs",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        why=facts.others,
        care=(EYES_CARE, SHADE_CARE, *HEAT_CARE),
        values=tuple((one.need.value, one.figure) for one in facts.needs),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(gauges_picture, facts.gauges, teller),
        set_up=facts.set_up,
    )


_FIRST = (Need.UVI, Need.BASKING_SURFACE, Need.COOL_AIR, Need.NIGHT_FLOOR, Need.LIGHT_HOURS)


def _brief(facts: Needs, say: Says) -> Brief:
    known = [one for one in facts.needs if one.figure is not None and one.need in _FIRST]
    if not known:
        return Brief(head=say("nothing"), steps=(say("do-ask"),))
    lines = tuple(_line(one) for one in known if one.need is not Need.UVI)
    return Brief(head=say("head"), range=lines, steps=(say("do"),))


def _steps(facts: Needs, say: Says) -> Iterator[Say]:
    yield say("step-measure")
    if facts.start is not Start.NOTHING:
        yield say("step-tube")
    if facts.start is Start.PLAN:
        yield say("step-plan")
    yield say("step-again")


def _numbers(facts: Needs, say: Says) -> Iterator[Row]:
    for one in facts.needs:
        yield Row(_label(one), _known(one))
    if facts.zone is not None:
        yield Row(say("label-zone"), say("zone"))
    yield from body_rows(facts.bodies)


def _line(one: OneNeed) -> Say:
    if one.light is not None:
        return Say("needs-line-light", one)
    return Say("needs-line-warmth", one)


def _known(one: OneNeed) -> Say:
    if one.uvi is not None:
        return Say("needs-known-uvi", one)
    if one.warmth is not None:
        return Say("needs-known-warmth", one)
    return Say("needs-unknown", one) if one.light is None else Say("needs-known-light", one)


def _label(one: OneNeed) -> Say:
    return Say.by("needs-label", one.need, one)


NEEDS = Command(
    name="needs",
    summary="What an animal needs: UV, basking spot, cool end, night, hours, and who says so",
    query=NeedsQuery,
    facts=needs,
    tell=tell,
    examples=("needs bearded dragon", "needs animal:leopard gecko"),
    guide=_GUIDE,
    positional="animal",
)
