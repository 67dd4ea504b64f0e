"""The UV of a plan: which tube, over the mesh or inside, where along the box, how high to lie."""

from dataclasses import dataclass

from bot.answers.figures import length, length_range, percent, uvi_estimate, uvi_range
from bot.answers.plan_told import Basis
from bot.answers.uv_parts import (
    Wish,
    fixture_name,
    fixture_of,
    lamp_name,
    screen_phrase,
    wish_asked,
)
from bot.language.quantities import Units
from bot.preferences import Context
from bot.reply import Row, Value
from calc.uncertainty import Estimate
from calc.uv.choice import TubeChoice, tube_length_for
from calc.uv.hanging import Hanging, Mount, hangings, lowest_box
from calc.uv.lamp import Fixture, Lamp
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["UvPlan", "uv_plan"]

_STRENGTHS = (12.0, 6.0)


@dataclass(frozen=True, slots=True)
class UvPlan:
    """The UV of a plan, or why there is none."""

    wish: Wish
    way: Hanging | None
    choice: TubeChoice | None
    answer: str
    rows: tuple[Row, ...]
    steps: tuple[str, ...]
    shopping: tuple[tuple[str, str, str], ...]
    values: tuple[Value, ...]
    sources: tuple[str, ...]


def uv_plan(basis: Basis, context: Context) -> UvPlan:
    """Plan the UV for an animal in a box."""
    units, wish = context.units, wish_asked(basis.kept.animal.name, None, context)
    choice = tube_length_for(basis.size.length_m)
    lit_m = (choice.tube or STANDARD_T5_HO[0]).lit_length_m
    sources = (*wish.sources, "keitz1971", "uv_distance_rows", "half_to_two_thirds", "t5_lengths")
    own, others = _lamps(basis, lit_m)
    height, mesh, back = basis.size.height_m, basis.mesh, basis.back_m
    ways = hangings(own, mesh, height, back, wish.low, wish.high)
    ways = ways or hangings(others, mesh, height, back, wish.low, wish.high)
    if not ways:
        return _none(basis, wish, (*own, *others), units, sources)
    way = ways[0]
    kept_own = bool(own) and way.lamp in own
    return UvPlan(
        wish=wish,
        way=way,
        choice=choice,
        answer=_answer(way, choice, units),
        rows=_rows(way, ways[1:], choice, wish, basis, units),
        steps=_steps(way, wish, units),
        shopping=_shopping(way, choice, basis, kept_own, units),
        values=_values(way, choice),
        sources=sources,
    )


def _lamps(basis: Basis, lit_m: float) -> tuple[tuple[Lamp, ...], tuple[Lamp, ...]]:
    """Return the lamps that are owned, as far as told, and those to buy otherwise."""
    fixtures = (fixture_of(basis.fixture),) if basis.fixture else tuple(Fixture)
    own = tuple(Lamp(basis.tube.percent, f, lit_m) for f in fixtures) if basis.tube else ()
    others = tuple(Lamp(s, f, lit_m) for s in _STRENGTHS for f in (Fixture.POLISHED, Fixture.PLAIN))
    return own, others


def _answer(way: Hanging, choice: TubeChoice, units: Units) -> str:
    tube = f"a {lamp_name(way.lamp)}"
    if choice.tube:
        tube += f", {length(choice.tube.face_to_face_m, units)} long"
    where = "on the mesh" if way.mount is Mount.OVER_MESH else "inside, under the lid"
    lies = "lying on the floor"
    if way.platform_m >= 0.01:
        lies = f"on a platform whose top is {length(way.platform_m, units)} above the floor"
    return (
        f"For the UV {tube}, {where} at the warm end, with the animal {lies}, so that its "
        f"back is {length(way.distance_m, units)} below the tube (UVI about "
        f"{uvi_estimate(way.here.uvi)})."
    )


def _rows(
    way: Hanging,
    others: tuple[Hanging, ...],
    choice: TubeChoice,
    wish: Wish,
    basis: Basis,
    units: Units,
) -> tuple[Row, ...]:
    rows = [wish.row, Row(label="UV at the back", text=_at_back(way, units))]
    if choice.tube and choice.middle_from_warm_end_m and choice.share:
        rows.append(
            Row(
                label="Where the tube goes",
                text="start it at the warm end, its middle "
                f"{length(choice.middle_from_warm_end_m, units)} from that wall; it covers "
                f"{percent(choice.share)} of the length. Heat lamp and tube over the same "
                "platform, so that UV and warmth lie together",
            )
        )
    else:
        rows.append(Row(label="Tube length", text="no standard length suits this box well"))
    if others:
        rows.append(Row(label="Or else", text=_other(others[0], units)))
    if basis.tube and way.lamp.strength_percent != basis.tube.percent:
        rows.append(
            Row(label="Your own tube", text=f"the {basis.tube.percent:g} % tube does not fit here")
        )
    return tuple(rows)


def _at_back(way: Hanging, units: Units) -> str:
    near, far = way.placement.near, way.placement.far
    span = ""
    if near and far:
        span = f"; {length_range(near.distance_m, far.distance_m, units)} would still do"
    return (
        f"UVI {uvi_estimate(way.here.uvi)} at {length(way.distance_m, units)}, "
        f"{screen_phrase(way.screen)}{span}"
    )


def _other(way: Hanging, units: Units) -> str:
    return (
        f"a {lamp_name(way.lamp)} {way.mount.value}, platform "
        f"{length(way.platform_m, units)} high, {length(way.distance_m, units)} from the back"
    )


def _steps(way: Hanging, wish: Wish, units: Units) -> tuple[str, ...]:
    mount = (
        "Lay the fixture on the mesh at the warm end; nothing between but the mesh."
        if way.mount is Mount.OVER_MESH
        else "Screw the fixture under the lid at the warm end, cable out of reach, tube guarded."
    )
    return (
        mount,
        (
            "Build the platform under it, then measure from the underside of the lit tube to the "
            f"animal's back: {length(way.distance_m, units)} is wanted. Correct the platform, not "
            "the tube."
        ),
        (
            "If you can borrow a UV index meter, set it by the meter: "
            f"{uvi_range(wish.low, wish.high)} at back height. Keep shade at the cool end."
        ),
    )


def _shopping(
    way: Hanging, choice: TubeChoice, basis: Basis, owned: bool, units: Units
) -> tuple[tuple[str, str, str], ...]:
    """Return tube and fixture, without what is owned already."""
    tube = choice.tube
    size = f", {length(tube.face_to_face_m, units)}, {tube.power_w:.0f} W" if tube else ""
    fixture = f"T5 HO, {fixture_name(way.lamp.fixture)}, same length"
    rows = []
    if not owned:
        strength = f"T5 HO, {way.lamp.strength_percent:g} %{size}"
        rows.append(("UV tube", strength, "UV along half the box"))
    if not owned or basis.fixture is None:
        rows.append(("Fixture", fixture, "the distances hold for this kind"))
    return tuple(rows)


def _values(way: Hanging, choice: TubeChoice) -> tuple[Value, ...]:
    near, far = way.placement.near, way.placement.far
    low = near.distance_m if near else way.distance_m
    high = far.distance_m if far else way.distance_m
    values = [
        Value(name="distance", low=low, best=way.distance_m, high=high, unit="m"),
        Value.of("uvi", way.here.uvi, "1"),
        Value.of("platform_height", Estimate.exact(way.platform_m), "m"),
    ]
    if choice.tube:
        values.append(Value.of("tube_length", Estimate.exact(choice.tube.face_to_face_m), "m"))
    return tuple(values)


def _none(
    basis: Basis, wish: Wish, lamps: tuple[Lamp, ...], units: Units, sources: tuple[str, ...]
) -> UvPlan:
    height = basis.size.height_m
    lowest = lowest_box(lamps, basis.mesh, basis.back_m, wish.low, wish.high)
    wanted = f"UVI {uvi_range(wish.low, wish.high)}"
    shown = length(height, units)
    if lowest is not None and lowest > height:
        answer = (
            f"Not in this box: with {shown} of height every usual tube is too near to the animal "
            f"for {wanted}, even when it lies on the floor. A box of at least "
            f"{length(lowest, units)} inside would do."
        )
    else:
        answer = (
            f"Not with this lid and height ({shown}): no usual tube gives {wanted} at the back. "
            "A mesh that takes less, or the tube inside, would change that."
        )
    return UvPlan(wish, None, None, answer, (wish.row,), (), (), (), (*sources, "nearest_distance"))
