"""What a plan stands on: what was told, and what was taken where nothing was told."""

from dataclasses import dataclass

from bot.answers.figures import length, temperature
from bot.answers.heat_parts import Kept, box_asked, kept_asked
from bot.answers.setup_told import Told, told_by
from bot.answers.uv_parts import screen_asked
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.language.lamps import Fixture, TubeStrength
from bot.language.screens import Blocks, NoScreen
from bot.language.shown import shown
from bot.language.sizes import Size
from bot.preferences import Context
from bot.queries.setup import PlanQuery
from bot.reply import Row
from calc.heat.enclosure import Enclosure
from calc.uv.screen import Screen

__all__ = ["Basis", "basis"]

_ROOM_C = 21.0
_BACK_M = 0.05
# The mesh of the trade's own distance rows.
_MESH = Blocks(0.45, "45%")
_LIDS = {"mesh": "full mesh", "glass": "solid"}
_EXAMPLE = "plan a beardie in a 4x2x2 wooden viv with a mesh lid, room 70F"


@dataclass(frozen=True, slots=True)
class Basis:
    """The animal, the box and the room of a plan; ``taken`` says what was not told."""

    told: Told
    kept: Kept
    size: Size
    material: str
    lid: str
    mesh: Screen | None
    room_c: float
    night_c: float | None
    back_m: float
    tube: TubeStrength | None
    fixture: Fixture | None
    taken: tuple[str, ...]

    @property
    def box(self) -> Enclosure:
        """The enclosure as the engine takes it."""
        return box_asked(self.size, self.material, self.lid)

    @property
    def rows(self) -> tuple[Row, ...]:
        """What was taken for granted, each to be corrected."""
        return tuple(Row(label="Taken, as nothing was said", text=text) for text in self.taken)


def basis(query: PlanQuery, context: Context) -> Basis:
    """Return what a plan stands on, or ask for the enclosure."""
    told, units = told_by(query.wish, query), context.units
    size = told.size
    if size is None:
        unclear = next((a for a in told.unclear if a.name is FactName.ENCLOSURE), None)
        read = shown(unclear.words) if unclear else shown(query.wish) or "no enclosure"
        accepted = "the inside length, depth and height of the enclosure with its unit"
        raise NotUnderstoodError(read, accepted, _EXAMPLE, "enclosure")
    taken: list[str] = []
    material = _text(told, FactName.MATERIAL)
    if not material:
        material = "glass"
        taken.append("walls of glass (material:wood)")
    lid = _text(told, FactName.LID)
    lid = _LIDS.get(lid, lid)
    if not lid:
        lid = "full mesh"
        taken.append("a full mesh lid (lid:solid)")
    room = told.measure(FactName.ROOM)
    if room is None:
        taken.append(f"a room of {temperature(_ROOM_C, units)} by day (room:68F)")
    back = query.back.low if query.back else _BACK_M
    if query.back is None:
        taken.append(f"a back {length(_BACK_M, units)} above what it lies on (back:3in)")
    mesh = _mesh(told, lid, taken)
    night = told.measure(FactName.ROOM_NIGHT) or told.measure(FactName.NIGHT)
    return Basis(
        told=told,
        kept=kept_asked(told.animal, context),
        size=size.value,
        material=material,
        lid=lid,
        mesh=mesh,
        room_c=room.value.low if room else _ROOM_C,
        night_c=night.value.low if night else None,
        back_m=back,
        tube=told.tube.value if told.tube else None,
        fixture=told.reflector.value if told.reflector else None,
        taken=tuple(taken),
    )


def _text(told: Told, name: FactName) -> str:
    said = told.one(name, str)
    return str(said.value) if said else ""


def _mesh(told: Told, lid: str, taken: list[str]) -> Screen | None:
    if lid == "solid":
        return None
    said = told.screen
    if said is not None and not isinstance(said.value, NoScreen):
        return screen_asked(said.value)
    taken.append("a mesh that blocks 45 % (screen:30%)")
    return screen_asked(_MESH)
