"""What can be said of a tube while its fixture or its screen is not known: every case at once."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from bot.answers.figures import length, length_away, uvi, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.placed import span_told
from bot.answers.tube_length import length_known, length_steps, length_values
from bot.answers.uv_asked import lamp_asked, screen_asked
from bot.answers.uv_parts import UV_CAUTIONS, Wish, fixture_name, screen_phrase, wish_asked
from bot.answers.verdicts import verdict_word
from bot.language import screens as typed
from bot.language.lamps import Fixture
from bot.language.quantities import Units
from bot.language.unsure import SomeMesh, Unsure
from bot.language.words import join_line
from bot.preferences import Context
from bot.queries.uv import DistanceQuery, UviQuery
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.judged import mildest
from bot.questions.uv.tubes import all_together
from bot.reply import Reply, Row, Table, Value
from calc.limits import Limits
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.placement import (
    SAFE_MINIMUM_M,
    Placement,
    Verdict,
    check_place,
    place,
    spot,
)
from calc.uv.screen import Screen

__all__ = ["Told", "answer_unsure", "told_surely"]

_GUIDE = ("screens", "reflectors", "measuring-the-distance", "how-to-take-a-reading")
_SOURCES = ("keitz1971", "uv_distance_rows")
# From a coarse mesh to a fine one; the middle one is the common insect screen.
_MESHES = (
    typed.Blocks(0.30, "blocks 30%"),
    typed.Blocks(0.45, "blocks 45%"),
    typed.Blocks(0.60, "blocks 60%"),
)
_NOTHING = typed.NoScreen("none")
_FIND_REFLECTOR = (
    "Switch the tube off, let it cool and look up into the fixture: if you see yourself as in a "
    "mirror, it is polished; if it is white or plastic, it is plain."
)
_FIND_SCREEN = (
    "Find out what the mesh takes: with a UV index meter, read below the tube with the mesh and "
    "without it (the question meter works it out). Without a meter, count its wires to the inch "
    "and measure one: the guide page screens shows how."
)
_TOO_NEAR = " And it is too near for any tube: switch it off first."
_IS_THERE_ONE = "Look whether anything is between the tube and the animal: a mesh, a lid, glass."


@dataclass(frozen=True, slots=True)
class Told:
    """Fixture and screen as far as they were told; None where readings hold them."""

    reflector: Fixture | None
    screen: typed.Screen | None


@dataclass(frozen=True, slots=True)
class _Case:
    """One way the set-up may be, with where the tube goes."""

    lamp: Lamp
    screen: Screen
    placement: Placement

    @property
    def name(self) -> str:
        fixture = "" if self.lamp.own else f"{fixture_name(self.lamp.fixture)}, "
        return f"{fixture}{screen_phrase(self.screen)}"


def told_surely(query: DistanceQuery) -> Told | None:
    """Return what was told of fixture and screen, or None where the asker does not know it.

    Readings of the tube through its screen hold both, known or not.
    """
    reflector, screen = query.reflector, query.screen
    assert not isinstance(screen, typed.Pane)
    unsure = isinstance(reflector, Unsure) or isinstance(screen, Unsure)
    if unsure and query.readings is None:
        return None
    return Told(
        None if isinstance(reflector, Unsure) else reflector,
        None if isinstance(screen, Unsure) else screen,
    )


def answer_unsure(query: DistanceQuery, context: Context) -> Reply:
    """Answer with every way the set-up may be, and where none of them is too strong."""
    wish, units = wish_asked(query.animal, query.uvi, context), context.units
    cases = [_case(query, *way, wish) for way in product(_reflectors(query), _screens(query))]
    asked = query.distance.low if isinstance(query, UviQuery) else None
    start = _start_m(cases)
    weakest = _weakest(cases, asked)
    return Reply(
        command="distance" if asked is None else "uvi",
        status="ok",
        title=f"Until you know more: the tube for {wish.whom}",
        answer=_answer(cases, start, asked, wish, limits_for(query.animal, context), units),
        values=(*_values(cases, start, asked), *length_values(cases[0].lamp)),
        rows=(
            wish.row,
            Row(label="You do not know", text=" and ".join(_unknown(query))),
            Row(label="Tube", text=length_known(cases[0].lamp, units)),
            Row(
                label="Why so wide",
                text="fixture and screen change the UV more than anything else; on top of the "
                "table, lamps of one class differ by about a third",
            ),
        ),
        table=_table(cases, asked, units),
        steps=(*_steps(query), *length_steps(cases[0].lamp, units)),
        alarms=uv_alarms(weakest, query.animal, wish.high, context),
        cautions=UV_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, "common_practice")),
    )


def _reflectors(query: DistanceQuery) -> tuple[Fixture | None, ...]:
    found = query.reflector
    return tuple(Fixture) if isinstance(found, Unsure) else (found,)


def _screens(query: DistanceQuery) -> tuple[typed.Screen, ...]:
    match query.screen:
        case SomeMesh():
            return _MESHES
        case Unsure() | None | typed.Pane():
            return (_NOTHING, *_MESHES)
        case screen:
            return (screen,)


def _case(
    query: DistanceQuery, reflector: Fixture | None, screen: typed.Screen, wish: Wish
) -> _Case:
    one = lamp_asked(query.tube, reflector, query.length, query.age, query.enclosure)
    lamp = all_together(one, query)
    between = screen_asked(screen)
    return _Case(lamp, between, place(lamp, between, wish.low, wish.high))


def _start_m(cases: list[_Case]) -> float | None:
    """Return the start of the strongest way, where it fits: there none is too strong."""
    if any(case.placement.verdict is Verdict.OUT_OF_RANGE for case in cases):
        return None
    starts = [ends[1].distance_m for case in cases if (ends := case.placement.ends)]
    starts += [mild_m for case in cases if (mild_m := case.placement.mild_m) is not None]
    return max(starts, default=None)


def _answer(
    cases: list[_Case],
    start: float | None,
    asked: float | None,
    wish: Wish,
    limits: Limits,
    units: Units,
) -> str:
    wanted = f"UVI {uvi_range(wish.low, wish.high)}"
    if asked is not None:
        low, high = _uvi_ends(cases, asked)
        told = f"At {length(asked, units)} expect anything from UVI {uvi(low)} to {uvi(high)}"
        near = _TOO_NEAR if asked < SAFE_MINIMUM_M else ""
        then = f"{near}{_until_then(start, asked, units)}"
        return f"{told}: {_standing(cases, asked, wish, limits)}.{then}"
    if start is None:
        return f"Not every way this may be gives {wanted} from a safe distance: find out first."
    low, high = _uvi_ends(cases, start)
    return (
        f"Until you know more, hang it {length_away(start, units)} from the animal's back: the "
        f"strongest way it may be gives no more than the wanted {wanted} there, however long the "
        f"tube is, and every other way less (UVI {uvi(low)} to {uvi(high)} with the doubt of the "
        "lamp). Rather too mild than too strong; find out in the next days."
    )


def _standing(cases: list[_Case], asked: float, wish: Wish, limits: Limits) -> str:
    ends = wish.low, wish.high
    checks = [check_place(case.lamp, case.screen, asked, *ends, limits) for case in cases]
    wanted = f"the wanted {uvi_range(wish.low, wish.high)}"
    one = mildest([check.judged for check in checks])
    long = any(check.may_be_above for check in checks)
    if one and not (long and one.is_fine):
        return f"{verdict_word(one)} for {wanted}, whichever way it is"
    if long or any(check.judged.is_likely_above for check in checks):
        return f"it may be above {wanted}"
    strong = ", or above it with a strong lamp" if _uvi_ends(cases, asked)[1] > wish.high else ""
    return f"it may be below {wanted}{strong}"


def _until_then(start: float | None, asked: float, units: Units) -> str:
    """Return where to hang it until more is known, as a question for the distance says."""
    if start is None:
        return " Find out before anything basks there."
    told = length_away(start, units)
    if told.partition(" (")[0] == length(asked, units).partition(" (")[0]:
        return " Leave it there until you know more."
    return f" Until you know more, hang it {told} from the animal's back."


def _uvi_ends(cases: list[_Case], distance_m: float) -> tuple[float, float]:
    found = [spot(case.lamp, distance_m, case.screen).uvi for case in cases]
    return min(e.low for e in found), max(e.high for e in found)


def _weakest(cases: list[_Case], asked: float | None) -> Estimate | None:
    """Return the UV index of the weakest way at a place that is not too near by itself."""
    if asked is None or asked < SAFE_MINIMUM_M:
        return None
    found = (spot(case.lamp, asked, case.screen).uvi for case in cases)
    return min(found, key=lambda uvi: uvi.best)


def _values(cases: list[_Case], start: float | None, asked: float | None) -> Iterator[Value]:
    place_m = start if asked is None else asked
    if asked is None and start is not None:
        fitting = [ends for case in cases if (ends := case.placement.ends)]
        low = min((e[0].distance_m for e in fitting), default=start)
        high = max((start, *(e[2].distance_m for e in fitting)))
        yield Value(name="distance", low=low, best=start, high=high, unit="m")
    if place_m is not None:
        low, high = _uvi_ends(cases, place_m)
        yield Value(name="uvi", low=low, best=(low * high) ** 0.5, high=high, unit="1")


def _table(cases: list[_Case], asked: float | None, units: Units) -> Table:
    def told(case: _Case) -> str:
        if asked is not None:
            here = spot(case.lamp, asked, case.screen).uvi
            return f"{uvi(here.best)} ({uvi(here.low)} to {uvi(here.high)})"
        return span_told(case.placement, units)

    head = "Tube to back" if asked is None else "UVI there"
    return Table(columns=("If it is", head), rows=tuple((c.name, told(c)) for c in cases))


def _unknown(query: DistanceQuery) -> Iterator[str]:
    if isinstance(query.reflector, Unsure):
        yield "what is behind the tube"
    if isinstance(query.screen, SomeMesh):
        yield "how much the mesh takes"
    elif isinstance(query.screen, Unsure):
        yield "what is between tube and animal"


def _steps(query: DistanceQuery) -> Iterator[str]:
    """Return how to find out, and what to ask then."""
    if isinstance(query.reflector, Unsure):
        yield _FIND_REFLECTOR
    if isinstance(query.screen, Unsure):
        if not isinstance(query.screen, SomeMesh):
            yield _IS_THERE_ONE
        yield _FIND_SCREEN
    given = {
        "tube": query.tube.text if query.tube else "",
        "reflector": "polished" if isinstance(query.reflector, Unsure) else query.reflector,
        "screen": "45%" if isinstance(query.screen, Unsure) else query.screen and query.screen.text,
        "animal": query.animal,
        "tubes": str(query.tubes) if query.tubes > 1 else "",
    }
    known = {name: str(text) for name, text in given.items() if text}
    yield f"Then ask again with what you found, such as: {join_line('distance', known)}"
    yield "Measure again whenever tube, fixture, screen or platform change."
