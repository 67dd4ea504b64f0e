"""What a plan is made from: what was told, and what was assumed where nothing was."""

from dataclasses import dataclass

from bot.facts import Length, Name, Say, Says, Share, Temp, degrees, metres, share
from bot.language.lamps import TubeStrength
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.queries.plan import PlanQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.shared import LAMP_PLACES, LAMP_SHAPES, box_asked
from bot.questions.setup.white import white_lights
from bot.questions.shared import animal_name
from bot.questions.uv.lamp_asked import (
    classes_of,
    fixture_of,
    own_lamp,
    screen_asked,
    wanted_asked,
)
from bot.questions.uv.shared import Wish, wish_told
from bot.questions.water import water_deep
from bot.refusal import RefusedError
from calc.animal import Animal
from calc.heat.enclosure import LampPlace, Lid
from calc.setup.along import DARK_ENDS_M
from calc.setup.bodies import body_for
from calc.setup.lives import stand_for
from calc.setup.plan import USUAL_SCREEN, OwnedTube, Plan, Request
from calc.setup.planned import planned_set_up
from calc.setup.set_up import SetUp, StandKind
from calc.setup.space import too_small_by
from calc.uncertainty import Estimate

__all__ = ["Floor", "NoBack", "PlanAsked", "PlanAssumed", "asked"]

_ROOM_C = 21.0
_UNKNOWN_PLATFORM_M = 0.40


@dataclass(frozen=True, slots=True)
class PlanAssumed:
    """What was assumed; None where it was told or does not count.

    ``fits``: a tube of unknown length is one of the length for this box.
    """

    room_taken: Temp | None
    back_taken: Length | None
    mesh_blocks: Share | None
    fits: bool

    @property
    def told(self) -> tuple[Say, ...]:
        """Return all of it as messages."""
        found = (
            ("back", self.back_taken),
            ("room", self.room_taken),
            ("mesh", self.mesh_blocks),
            ("fits", self.fits or None),
        )
        return tuple(Say.of("plan-assumed", key, facts=self) for key, known in found if known)


@dataclass(frozen=True, slots=True)
class NoBack:
    """An animal whose back is at no known height."""

    animal: Name
    example: str = "back:2in"


@dataclass(frozen=True, slots=True)
class Floor:
    """The smallest floor for one adult, twice as long as it is deep, and where that is from."""

    long: Length
    deep: Length
    source: str

    @property
    def code(self) -> Say:
        """Return which public code says so, or that it is our own rule."""
        return Say.of("plan-code", self.source)


@dataclass(frozen=True, slots=True)
class PlanAsked:
    """The request, whose range it is, what was assumed, and the sources of that.

    ``has_light``: a white lamp was told; else the request may have the bar of its level.
    """

    request: Request
    animal: Animal
    wish: Wish
    back: Estimate
    in_water: bool
    assumed: PlanAssumed
    level: str | None
    has_light: bool
    sources: tuple[str, ...]

    @property
    def stand(self) -> StandKind:
        """What the animal basks on."""
        return stand_for(self.animal)

    def set_up(self, found: Plan) -> SetUp:
        """Return the set-up of what was found for this."""
        return planned_set_up(
            found,
            self.request,
            self.back,
            self.stand,
            in_water=self.in_water,
            unchecked=self.wish.unchecked,
        )

    @property
    def new_tube(self) -> bool:
        """Whether the tube is bought new."""
        return self.request.owned.strength_percent is None and self.request.owned.lamp is None

    @property
    def owns_tube(self) -> bool:
        """Whether tube or fixture were given."""
        return self.request.owned != OwnedTube()

    @property
    def floor(self) -> Floor | None:
        """The floor that the box falls short of, or None where it does not."""
        box = self.request.box
        found = too_small_by(self.animal.slug, box.length_m, box.depth_m)
        if found is None:
            return None
        long_m, deep_m = found.sides_m
        return Floor(metres(long_m), metres(deep_m), found.source)

    @property
    def water_deep(self) -> Length | None:
        """How deep its water is at least, where that is known."""
        return water_deep(self.animal)


def asked(query: PlanQuery, context: Context) -> PlanAsked:
    """Return what to plan from; what nobody gave is assumed and named."""
    animal = animal_asked(query.animal, context)
    wanted = wanted_asked(query.animal, query.uvi, context)
    body = body_for(animal)
    back = _back(query, animal)
    request = Request(
        animal=animal,
        box=box_asked(query.enclosure, query.material, query.lid),
        low_uvi=wanted.low,
        high_uvi=wanted.high,
        back_m=back.best,
        highest_platform_m=body.highest_platform_m if body else _UNKNOWN_PLATFORM_M,
        room_c=_ROOM_C if query.room is None else query.room.low,
        night_c=None if query.night is None else query.night.low,
        place=None if query.place is None else LAMP_PLACES[query.place],
        screen=None if query.screen is None else screen_asked(query.screen),
        owned=_owned(query),
        shape=LAMP_SHAPES[query.lamp],
        owned_w=None if query.watts is None else query.watts.low,
        lights=white_lights(query.light, query.enclosure.length_m),
        groups=classes_of(context.own),
    )
    assumed = _assumed(query, request, back)
    back_source = () if query.back else ("back_heights",)
    mesh_source = () if assumed.mesh_blocks is None else ("uv_distance_rows",)
    return PlanAsked(
        request=request,
        animal=animal,
        wish=wish_told(wanted, context),
        back=back,
        in_water=body is not None and body.in_water,
        assumed=assumed,
        level=query.level,
        has_light=bool(query.light),
        sources=(*back_source, *mesh_source),
    )


def _assumed(query: PlanQuery, request: Request, back: Estimate) -> PlanAssumed:
    over_mesh = request.hangings[0].place is LampPlace.ABOVE_MESH
    usual = over_mesh and query.screen is None and request.box.lid is not Lid.SOLID
    tube = query.tube
    return PlanAssumed(
        room_taken=degrees(_ROOM_C) if query.room is None else None,
        back_taken=metres(back) if query.back is None else None,
        mesh_blocks=share(1.0 - USUAL_SCREEN.transmission) if usual else None,
        fits=tube is not None and query.length is None and not isinstance(tube, OwnTube),
    )


def _back(query: PlanQuery, animal: Animal) -> Estimate:
    if query.back is not None:
        return Estimate.exact(query.back.low)
    body = body_for(animal)
    if body is None:
        raise RefusedError(NoBack(animal_name(animal)), _back_asked, "back")
    return body.back_m


def _back_asked(facts: NoBack) -> Layered:
    say = Says("plan", facts)
    return Layered(
        command="plan",
        status="problem",
        title=say("back-title"),
        brief=Brief(head=say("back-unknown"), steps=(say("do-back"),)),
        steps=(say("do-back"),),
    )


def _owned(query: PlanQuery) -> OwnedTube:
    tube = query.tube
    owned_m = None if query.length is None else query.length.low
    fixture = None if query.reflector is None else fixture_of(query.reflector)
    many = (query.tubes, query.gap.low if query.gap and query.tubes > 1 else 0.0)
    if isinstance(tube, OwnTube):
        kept = own_lamp(tube.lamp)
        return OwnedTube(None, None, owned_m or kept.lit_length_m + DARK_ENDS_M, kept, *many)
    strength = tube.percent if isinstance(tube, TubeStrength) else None
    return OwnedTube(strength, fixture, owned_m, None, *many)
