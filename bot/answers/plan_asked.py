"""What a plan is made from: what was given, and what was taken where nothing was."""

from dataclasses import dataclass

from bot.answers.animals import animal_asked, of_animal
from bot.answers.figures import length, length_range, percent, temperature
from bot.answers.uv_asked import fixture_of, own_lamp, screen_asked
from bot.answers.uv_parts import Wish, wish_asked
from bot.language.errors import NotUnderstoodError
from bot.language.lamps import TubeStrength
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.queries.plan import PlanQuery
from bot.questions.heat.shared import LAMP_PLACES, LAMP_SHAPES, box_asked
from calc.animals import Animal
from calc.heat.enclosure import LampPlace, Lid
from calc.setup.along import DARK_ENDS_M
from calc.setup.bodies import Body, body_of
from calc.setup.plan import USUAL_SCREEN, OwnedTube, Request
from calc.setup.set_up import StandKind
from calc.uncertainty import Estimate

__all__ = ["Asked", "asked"]

_ROOM_C = 21.0
_UNKNOWN_PLATFORM_M = 0.40
_BRANCHES_M = 1.0
_STANDS = {
    StandKind.DOCK: "dock",
    StandKind.BRANCH: "branch or shelf",
    StandKind.PLATFORM: "platform",
}


@dataclass(frozen=True, slots=True)
class Asked:
    """The request, whose range it is, what was assumed, and the sources of that."""

    request: Request
    animal: Animal
    wish: Wish
    back: Estimate
    in_water: bool
    assumed: tuple[str, ...]
    sources: tuple[str, ...]

    @property
    def whom(self) -> str:
        """The animal as a sentence needs it."""
        return of_animal(self.animal)

    @property
    def stand(self) -> StandKind:
        """What the animal basks on."""
        if self.in_water:
            return StandKind.DOCK
        climbs = self.request.highest_platform_m >= _BRANCHES_M
        return StandKind.BRANCH if climbs else StandKind.PLATFORM

    @property
    def place_name(self) -> str:
        """What the animal basks on, as a sentence needs it."""
        return _STANDS[self.stand]

    @property
    def new_tube(self) -> bool:
        """Whether the tube is bought new."""
        return self.request.owned.strength_percent is None and self.request.owned.lamp is None

    @property
    def owns_tube(self) -> bool:
        """Whether tube or fixture were given."""
        return self.request.owned != OwnedTube()


def asked(query: PlanQuery, context: Context) -> Asked:
    """Return what to plan from; what nobody gave is assumed and named."""
    animal = animal_asked(query.animal, context)
    wish = wish_asked(query.animal, query.uvi, context)
    body = body_of(animal.slug)
    back, assumed = _back(query, animal, body, context)
    sources = ["back_heights"] if query.back is None else []
    room_c = _ROOM_C
    if query.room is None:
        assumed.append(f"the room at {temperature(_ROOM_C, context.units)} by day")
    else:
        room_c = query.room.low
    request = Request(
        animal=animal,
        box=box_asked(query.enclosure, query.material, query.lid),
        low_uvi=wish.low,
        high_uvi=wish.high,
        back_m=back.best,
        highest_platform_m=body.highest_platform_m if body else _UNKNOWN_PLATFORM_M,
        room_c=room_c,
        night_c=None if query.night is None else query.night.low,
        place=None if query.place is None else LAMP_PLACES[query.place],
        screen=None if query.screen is None else screen_asked(query.screen),
        owned=_owned(query),
        shape=LAMP_SHAPES[query.lamp],
        owned_w=None if query.watts is None else query.watts.low,
    )
    over_mesh = request.hangings[0].place is LampPlace.ABOVE_MESH
    if over_mesh and query.screen is None and request.box.lid is not Lid.SOLID:
        takes = percent(1.0 - USUAL_SCREEN.transmission)
        assumed.append(f"the mesh takes {takes} of the UV, as a common one does")
        sources.append("uv_distance_rows")
    in_water = body is not None and body.in_water
    if query.tube is not None and query.length is None and not isinstance(query.tube, OwnTube):
        assumed.append("a tube of the length for this box; if yours is another, add length")
    return Asked(request, animal, wish, back, in_water, tuple(assumed), tuple(sources))


def _back(
    query: PlanQuery, animal: Animal, body: Body | None, context: Context
) -> tuple[Estimate, list[str]]:
    if query.back is not None:
        return Estimate.exact(query.back.low), []
    if body is None:
        raise NotUnderstoodError(
            animal.name,
            "the height of its back over what it lies on, because none is known here",
            "back:2in",
            "animal",
        )
    back, units = body.back_m, context.units
    told = (
        f"a back {length(back.best, units)} over what it lies on "
        f"({length_range(back.low, back.high, units)} in an adult, from memory)"
    )
    return back, [told]


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
