"""One patch of sun in a set-up that is checked: whether UV, heat and light meet on one place."""

from dataclasses import dataclass, replace

from bot.facts import Say, Share, share
from bot.language.arranged import LampBeside
from bot.language.hearing import FactName
from bot.language.light_lamps import LightLamp
from bot.questions.setup.check_cases import every_way, length_said
from bot.questions.setup.check_lamps import heat_lamp_told
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, Urgency
from bot.questions.setup.sun import sun_told
from bot.questions.setup.told import SetUpTold
from bot.questions.setup.white import WHITE_SOURCES, WhiteTold, white_lights, white_told
from calc.animal import Animal
from calc.light.bands import Bands, bands_of, life_of
from calc.light.illuminance import Light
from calc.setup.arrangement import in_a_row, told_room
from calc.setup.bodies import body_for
from calc.setup.room import Room
from calc.setup.set_up import Sign
from calc.setup.sun_patch import met_by_light
from calc.uncertainty import Estimate
from calc.uv.lengths import LengthKnown
from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["sun_part", "usual_room"]

_SOURCES = ("common_practice", "sun_patch_judgement", "plan_judgement", "line_source")


@dataclass(frozen=True, slots=True)
class CheckSun:
    """The share of the platform where UV, heat and light meet, side by side and in a row."""

    beside: Share | None
    row: Share | None


@dataclass(frozen=True, slots=True)
class _Lit:
    """White lamps in a room, the levels they are held against, and what is told beside."""

    lights: tuple[Light, ...]
    bands: Bands | None
    told: tuple[Say, ...]
    white: WhiteTold | None

    @classmethod
    def of(cls, room: Room | None, animal: Animal, lamps: tuple[LightLamp, ...]) -> "_Lit":
        life = life_of(animal)
        bands = None if life is None else bands_of(life)
        if room is None:
            return cls((), bands, (), None)
        lights = white_lights(lamps, room.box.length_m)
        sun, there = met_by_light(room, room.met(), lights, bands)
        shade, white = sun_told(sun, there), white_told(there, bands, animal)
        told = [Say("check-why-sun-shade", shade)] if shade else []
        told += [Say("check-why-sun-white", white)] if white else []
        return cls(lights, bands, tuple(told), white)

    def told_of(self, part: Part) -> Part:
        """Return the part with the shade of all three, and how bright white lamps make it."""
        sources = WHITE_SOURCES if self.lights else ()
        more, white = self.told, self.white
        return replace(part, more=more, white=white, sources=(*part.sources, *sources))

    def met(self, room: Room | None) -> Estimate | None:
        """Return the share of the platform where all three meet; none where there is no room."""
        sun = None if room is None else met_by_light(room, room.met(), self.lights, self.bands)[0]
        return None if sun is None else sun.all_three


def sun_part(
    told: SetUpTold,
    animal: Animal,
    hang: LampBeside | None,
    uv: Part,
    lamps: tuple[LightLamp, ...] = (),
) -> tuple[Part, ...]:
    """Judge whether UV, heat and light meet; nothing without tube or heat lamp.

    Before the UV is right, only that it lies apart is told. How bright white ``lamps`` make it is
    told beside it, and makes no verdict.
    """
    needs_both = animal.uvi is not None and animal.basking_surface_c is not None
    if not needs_both or told.tube is None or not (hang or heat_lamp_told(told)):
        return ()
    if hang is LampBeside.APART:
        return (_apart(),)
    if uv.sign is not Sign.FINE:
        return ()
    room = usual_room(told, animal)
    lit = _Lit.of(room, animal, lamps)
    beside, row = (None, None) if room is None else (lit.met(room), lit.met(in_a_row(room)))
    facts = CheckSun(_share(beside), _share(row))
    worked = "untold" if room is None else "worked"
    if hang is None:
        why = Say.of("check-why-sun-which", worked, facts=facts)
        return (lit.told_of(Part(Piece.SUN, Sign.CANNOT_TELL, why, missing=(Missing.BESIDE,))),)
    if hang is LampBeside.IN_A_ROW:
        return (lit.told_of(_in_a_row(facts, row)),)
    found = Sign.FINE if beside is None or beside.best > 0.0 else Sign.CANNOT_TELL
    why = Say.of("check-why-sun-beside", worked, facts=facts)
    part = _told(found, why, None if beside is None else "beside", facts)
    part = lit.told_of(part)
    return (part if beside is None else replace(part, brief=Say("check-sun-met", facts)),)


def _told(sign: Sign, why: Say, cell: str | None, facts: CheckSun) -> Part:
    read = None if cell is None else Say.of("check-read-sun", cell, facts=facts)
    value = facts.row if cell == "row" else facts.beside
    values = () if read is None or value is None else (("patch_of_sun", value),)
    return Part(Piece.SUN, sign, why, read=read, values=values, sources=_SOURCES)


def _in_a_row(facts: CheckSun, row: Estimate | None) -> Part:
    """Judge a lamp and a tube in a row: a change only where nothing meets, however it may be."""
    none = row is not None and row.high == 0.0
    why = Say.of("check-why-sun-row", "untold" if row is None else "worked", facts=facts)
    cell = None if row is None else "row"
    found = _told(Sign.CHANGE if none else Sign.CANNOT_TELL, why, cell, facts)
    if not none:
        return found
    return replace(found, head=Say("check-head-sun-row"), todo=(_to_do(),))


def _apart() -> Part:
    return Part(
        Piece.SUN,
        Sign.CHANGE,
        Say("check-why-sun-apart"),
        head=Say("check-head-sun-apart"),
        todo=(_to_do(),),
        sources=("common_practice",),
    )


def _to_do() -> Todo:
    return Todo(Urgency.REST, Say("check-do-beside"), Say("check-do-beside-short"))


def usual_room(told: SetUpTold, animal: Animal) -> Room | None:
    """Return the set-up in the usual places of its box, where there is one way it may be."""
    size, body, wanted = told.size, body_for(animal), animal.uvi
    away = told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE)
    if size is None or body is None or away is None or wanted is None:
        return None
    if length_said(told).known not in (LengthKnown.TOLD, LengthKnown.FROM_WATTS):
        return None
    ways = tuple(every_way(told))
    if len(ways) != 1 or told.lies_across:
        return None
    [(_, _, lamp, between)] = ways
    try:
        box = Box(size.value.length_m, size.value.depth_m, size.value.height_m)
        away_m = away.value.middle
        range_ = (wanted.low, wanted.high)
        return told_room(box, lamp, between, away_m, body.back_m.best, range_, over=told.is_over)
    except OutsideModelError:
        return None


def _share(found: Estimate | None) -> Share | None:
    return None if found is None else share(found)
