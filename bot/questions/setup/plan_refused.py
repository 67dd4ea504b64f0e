"""Why a set-up cannot be done in that box, and what would change that: each way was tried."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.facts import (
    Bound,
    Figure,
    Length,
    Name,
    Say,
    Says,
    Share,
    Temp,
    degrees,
    metres,
    share,
)
from bot.language import screens as typed
from bot.layered import Brief, Layered, Row, Weight
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.setup.plan_asked import Floor, PlanAsked, PlanAssumed
from bot.questions.setup.plan_heat import PlanHeat, heat_planned
from bot.questions.shared import animal_name
from bot.questions.uv.shared import UV_CARE, Between, Through, Wish, Wished, between_told, wish_rows
from bot.questions.uv.tubes import tube_told
from bot.saved.group import Own
from calc.heat.enclosure import LampPlace, Lid
from calc.judgement import Verdict
from calc.setup.changes import Change, ChangeKind, Refusal, Way
from calc.setup.light import Obstacle
from calc.setup.set_up import StandKind
from calc.setup.warmth import plan_warmth
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["NotPlanned", "PlanChange", "PlanWay", "not_planned", "tell_not_planned"]

_GUIDE = ("planning-a-set-up", "measuring-the-distance", "warm-end-and-cool-end")
_SOURCES = (
    *("plan_judgement", "uv_distance_rows", "nearest_distance", "half_to_two_thirds"),
    "enclosure_model",
)


# What leaves no cool place, or only wants a length to be measured.
_NO_COOL_PLACE = (Obstacle.ROOM_TOO_WARM, Obstacle.AIR_TOO_WARM, Obstacle.LENGTH_UNTOLD)
_LOW_SHELF_M = 0.1


@dataclass(frozen=True, slots=True)
class PlanChange:
    """One change, and how far it must go."""

    kind: ChangeKind
    least: Length | None
    passes: Share | None
    cooler: Temp | None
    fully: bool


@dataclass(frozen=True, slots=True)
class PlanWay:
    """One or two changes, and the set-up that they allow; ``small``: the floor still is."""

    small: bool
    changes: tuple[Say, ...]
    lamp: Say
    place: LampPlace
    away: Length
    top: Length
    stand: StandKind


@dataclass(frozen=True, slots=True)
class NotPlanned(Wished, Through):
    """A set-up that cannot be done, why, and what would help."""

    animal: Name
    wish: Wish
    obstacle: Obstacle
    floor: Floor | None
    long: Length
    deep: Length
    high: Length
    lid: Lid
    place: LampPlace
    between: Between
    owns: bool
    owned: Length | None
    shortest: Length
    nearest: Length
    room: Temp
    cool: Temp | None
    ways: tuple[PlanWay, ...]
    gentle: bool
    now: PlanHeat | None
    assumed: PlanAssumed
    needed: tuple[tuple[str, Figure], ...]
    sources: tuple[str, ...]

    @property
    def above(self) -> bool:
        """Say whether the tube was tried on the mesh."""
        return self.place is LampPlace.ABOVE_MESH

    @property
    def floor_long(self) -> Length | None:
        """Return the length of the floor that it needs, where this one is too small."""
        return self.floor.long if self.floor else None

    @property
    def floor_deep(self) -> Length | None:
        """Return the depth of that floor."""
        return self.floor.deep if self.floor else None

    @property
    def code(self) -> Say | None:
        """Return which code says so."""
        return self.floor.code if self.floor else None

    @property
    def all_assumed(self) -> tuple[Say, ...]:
        """Return all that was assumed."""
        return self.assumed.told


def not_planned(
    found: Refusal, what: PlanAsked, screen: typed.Screen | None, own: Own
) -> NotPlanned:
    """Return why a set-up cannot be done as facts; ``screen`` is what was told of it."""
    request, box = what.request, what.request.box
    between = between_told(screen or typed.NoScreen(""), found.hanging.screen)
    cool, owned_m = what.animal.cool_air_c, request.owned.length_m
    no_room = found.obstacle is Obstacle.NO_ROOM_FOR_HEAT
    return NotPlanned(
        animal=animal_name(what.animal),
        wish=what.wish,
        obstacle=found.obstacle,
        floor=what.floor,
        long=metres(box.length_m),
        deep=metres(box.depth_m),
        high=metres(box.height_m),
        lid=box.lid,
        place=found.hanging.place,
        between=between,
        owns=what.owns_tube,
        owned=None if owned_m is None else metres(owned_m),
        shortest=metres(STANDARD_T5_HO[0].face_to_face_m),
        nearest=metres(COMFORTABLE_MINIMUM_M),
        room=degrees(request.room_c),
        cool=None if cool is None else degrees(cool.aim, (cool.low, cool.high)),
        ways=tuple(_way(way, what) for way in found.ways),
        gentle=no_room and not what.animal.basking,
        now=_now(found, what, own),
        assumed=what.assumed,
        needed=tuple(_needed(found)),
        sources=(*what.wish.sources, *what.sources, *_SOURCES),
    )


def _now(found: Refusal, what: PlanAsked, own: Own) -> PlanHeat | None:
    """Return the heat for an animal that lives there already, or None without a cool place."""
    request = what.request
    if found.obstacle in _NO_COOL_PLACE:
        return None
    heat = plan_warmth(
        request.animal,
        request.box,
        min(_LOW_SHELF_M, request.box.height_m / 4.0),
        request.room_c,
        request.night_c,
        request.shape,
        request.owned_w,
    )
    if heat.air is not None and heat.air.verdict in (Verdict.HIGH, Verdict.DANGEROUS):
        return None
    return heat_planned(heat, what, own)


def _way(way: Way, what: PlanAsked) -> PlanWay:
    light = way.light
    return PlanWay(
        small=what.floor is not None,
        changes=tuple(
            Say.by("plan-change", change.kind, _change(change)) for change in way.changes
        ),
        lamp=Say("tubes-name", tube_told(light.lamp, None, to_buy=light.lamp.age_s == 0.0)),
        place=light.hanging.place,
        away=metres(light.distance_m, (light.near_m, light.far_m), Bound.INWARD),
        top=metres(light.platform_top_m),
        stand=what.stand,
    )


_SIZES = (ChangeKind.TALLER_BOX, ChangeKind.LONGER_BOX)


def _change(change: Change) -> PlanChange:
    least, kind = change.least, change.kind
    return PlanChange(
        kind=kind,
        least=metres(least, bound=Bound.AT_LEAST) if least and kind in _SIZES else None,
        passes=share(least) if least and kind is ChangeKind.OPENER_SCREEN else None,
        cooler=degrees(least) if least and kind is ChangeKind.COOLER_ROOM else None,
        fully=kind is ChangeKind.MESH_LID and least is not None and least >= Lid.FULL_MESH.value,
    )


def _needed(found: Refusal) -> Iterator[tuple[str, Figure]]:
    for way in found.ways:
        first = way.changes[0]
        if len(way.changes) > 1 or first.least is None:
            continue
        if first.kind is ChangeKind.TALLER_BOX:
            yield "height_needed", metres(first.least)
        elif first.kind is ChangeKind.LONGER_BOX:
            yield "length_needed", metres(first.least)
        elif first.kind is ChangeKind.COOLER_ROOM:
            yield "room_needed", degrees(first.least)


def tell_not_planned(facts: NotPlanned) -> Layered:
    """Tell why it cannot be done, and what would work."""
    say = Says("plan", facts)
    eyes, shade, *_ = UV_CARE
    return Layered(
        command="plan",
        status="problem",
        title=say("not-title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        why=(say.by("why", facts.obstacle),),
        care=(replace(eyes, weight=Weight.ALWAYS), shade, *HEAT_CARE[facts.now is None :]),
        values=facts.needed,
        guide=_GUIDE,
        sources=(*((facts.floor.source,) if facts.floor else ()), *facts.sources),
    )


def _brief(facts: NotPlanned, say: Says) -> Brief:
    not_so = say.by("not", facts.obstacle)
    ways = [Say("plan-do-way", way) for way in facts.ways[:2]]
    step = (say("do-measure") if facts.obstacle is Obstacle.LENGTH_UNTOLD else say("do-none"),)
    now = () if facts.now is None else (_for_now(facts.now),)
    if facts.floor is not None:
        return Brief(head=say("small"), range=(not_so,), steps=(*now, say("do-floor")))
    return Brief(head=not_so, steps=(*now, *(tuple(ways) or step)))


def _for_now(heat: PlanHeat) -> Say:
    say = Says("plan", heat)
    return say.by("now", heat.day)


def _steps(facts: NotPlanned, say: Says) -> Iterator[Say]:
    if facts.floor is not None:
        yield say("step-floor")
    if facts.now is not None:
        yield say("step-now")
    yield from (Say("plan-way", way) for way in facts.ways)
    if not facts.ways:
        untold = facts.obstacle is Obstacle.LENGTH_UNTOLD
        yield say("step-measure") if untold else say("step-none")
    if facts.obstacle is Obstacle.NO_TUBE_SHORT_ENOUGH:
        yield say("step-other-kinds")
    if facts.gentle:
        yield say("step-gentle")
    yield say("step-ask-again")


def _numbers(facts: NotPlanned, say: Says) -> Iterator[Row]:
    if facts.floor is not None:
        yield Row(say("label-floor"), say("floor"))
    yield from wish_rows(facts.wish)
    yield Row(Say("box-label"), say("box"))
    if facts.all_assumed:
        yield Row(say("label-assumed"), say("all-assumed"))
