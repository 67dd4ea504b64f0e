"""Where the UV goes in an enclosure: the map, the platform, the shade and the heat."""

import numpy as np

from bot.answers.curves import shortened
from bot.answers.figures import length, percent, uvi, uvi_estimate, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.section_layout import Layout, layout
from bot.answers.section_picture import section_picture
from bot.answers.tube_length import length_sources, length_steps, length_values
from bot.answers.uv_danger import uv_alarms
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    doubt_row,
    lamp_name,
    screen_phrase,
    wish_asked,
)
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.uv_depth import SectionQuery
from bot.reply import Picture, Reply, Row, Table, Value
from calc.judgement import judge_value
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.uv.field_unknowns import field_unknowns
from calc.uv.patches import SHADE_UVI, Overlap, Patches, Place, patches
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.section import uvi_field

__all__ = ["answer_section"]

_GUIDE = ("sun-and-shade", "uv-and-heat-together", "screens")
_SOURCES = ("line_source", "line_through_weave", "uv_distance_rows", "uv_shade")
_COLUMNS, _HEIGHTS, _ACROSS = 6, 5, 5
_OVERLAPS = {
    Overlap.TOGETHER: "they lie together",
    Overlap.PARTLY: "they lie together only in part",
    Overlap.APART: "they lie apart",
}
_ENOUGH = 0.5


def answer_section(query: SectionQuery, context: Context) -> Reply:
    """Answer with the share of the platform in range, the extremes, shade, and a map."""
    if none := answer_without_figures("section", query, kind_of(query.tube, query.lamp), context):
        return none
    units = context.units
    wish = wish_asked(query.animal, query.uvi, context)
    room = layout(query, units)
    found = patches(
        room.tubes, room.box, room.platform, room.back_m, wish.low, wish.high, room.heat
    )
    lamp, whole = room.tubes[0].lamp, field_unknowns(room.tubes, room.back_z_m)
    table = _side_view(room, units)
    return Reply(
        command="section",
        status="ok",
        title=f"Where the UV goes, for {wish.whom}",
        answer=_answer(found, wish),
        values=_values(found, room),
        rows=(
            Row(label="Set-up", text=_setup(room, query.tubes, units)),
            wish.row,
            Row(label="Strongest place", text=_place(found.strongest, units)),
            Row(label="Weakest place", text=_place(found.weakest, units)),
            Row(label="Shade", text=_shade(found)),
            Row(label="Heat and UV", text=_heat(found, wish)),
            Row(label="End view", text=_end_view(room, units)),
            Row(label="Assumed", text="; ".join(room.taken)),
            doubt_row(whole),
        ),
        table=table,
        steps=(*_steps(found, wish, units), *length_steps(lamp, units)),
        cautions=(
            *UV_CAUTIONS[:2],
            "Walls, branches and hides are not in this map: behind them it is darker.",
        ),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *length_sources(lamp), *whole.sources)),
        picture=Picture.later(_picture, room, found, wish, table, units),
        alarms=uv_alarms(found.strongest.uvi, query.animal, wish.high, context),
    )


def _picture(room: Layout, found: Patches, wish: Wish, table: Table, units: Units) -> Picture:
    alt = _alt(table, found, wish, _end_view(room, units))
    return section_picture(room, found, wish, alt, units)


def _answer(found: Patches, wish: Wish) -> str:
    share = found.in_range
    shade = "There is shade to go to." if found.shade_reached else "There is no shade to go to."
    return (
        f"About {percent(share.best)} of the platform is inside UVI "
        f"{uvi_range(wish.low, wish.high)} ({percent(share.low)} to {percent(share.high)}, by the "
        "doubt of the lamp). Where the "
        f"animal can go, the UVI runs from {uvi(found.weakest.uvi.best)} to "
        f"{uvi(found.strongest.uvi.best)}. {shade}"
    )


def _values(found: Patches, room: Layout) -> tuple[Value, ...]:
    heat = found.heat_in_range or 0.0
    return (
        Value.of("platform_in_range", found.in_range, "1"),
        Value.of("uvi_strongest", found.strongest.uvi, "1"),
        Value.of("uvi_weakest", found.weakest.uvi, "1"),
        Value.of("shade_share", Estimate.exact(found.shade_share), "1"),
        Value.of("heat_in_range", Estimate.exact(heat), "1"),
        *length_values(room.tubes[0].lamp),
        Value.of("platform_top", Estimate.exact(room.platform.top_m), "m"),
    )


def _setup(room: Layout, count: int, units: Units) -> str:
    tube = room.tubes[0]
    many = "" if count == 1 else f"{count} tubes, each "
    return (
        f"{many}{lamp_name(tube.lamp)}, {length(room.tube_length_m, units)} long, "
        f"{length(room.tube_y_m, units)} from the back wall, {screen_phrase(tube.screen)}; the "
        f"platform's top {length(room.platform.top_m, units)} "
        "over the floor puts the back at your distance"
    )


def _place(place: Place, units: Units) -> str:
    return (
        f"UVI {uvi_estimate(place.uvi)}, {length(place.x_m, units)} from the warm end, "
        f"{length(place.y_m, units)} from the back wall, back "
        f"{length(place.z_m, units)} over the floor"
    )


def _shade(found: Patches) -> str:
    if not found.shade_reached:
        return f"nowhere under UVI {SHADE_UVI}, so hides and plants must give it"
    sure = "" if found.shade_is_sure else ", though a strong lamp may leave little"
    return f"{percent(found.shade_share)} of the floor and platform is under UVI {SHADE_UVI}{sure}"


def _heat(found: Patches, wish: Wish) -> str:
    if found.overlap is None or found.heat_in_range is None:
        return "no heat lamp was given"
    return (
        f"{_OVERLAPS[found.overlap]}: {percent(found.heat_in_range)} of the warmed patch is inside "
        f"UVI {uvi_range(wish.low, wish.high)}"
    )


def _side_view(room: Layout, units: Units) -> Table:
    """Return the map along the enclosure, under the middle of the depth."""
    box = room.box
    along = np.linspace(0.0, box.length_m, _COLUMNS)
    highest = max(room.tube_z_m - COMFORTABLE_MINIMUM_M, room.back_z_m)
    heights = np.linspace(highest, room.back_m, _HEIGHTS)
    heights[np.argmin(np.abs(heights - room.back_z_m))] = room.back_z_m
    grid = uvi_field(room.tubes, along, box.depth_m / 2.0, heights[:, None])
    return Table(
        columns=("Over the floor", *(length(float(x), units) for x in along)),
        rows=tuple(
            (length(float(z), units), *(uvi(float(value)) for value in line))
            for z, line in zip(heights, grid, strict=True)
        ),
    )


def _end_view(room: Layout, units: Units) -> str:
    across = np.linspace(0.0, room.box.depth_m, _ACROSS)
    line = uvi_field(room.tubes, room.basking_x_m, across, room.back_z_m)
    told = ", ".join(
        f"{uvi(float(value))} at {length(float(y), units)}"
        for y, value in zip(across, line, strict=True)
    )
    return f"from the back wall, across the platform's middle at the back's height: UVI {told}"


def _steps(found: Patches, wish: Wish, units: Units) -> tuple[str, ...]:
    steps = []
    judged = judge_value(Quantity.UVI, found.strongest.uvi, wish.low, wish.high)
    if found.too_near or judged.is_likely_above:
        steps.append(
            "The strongest place is above the range: lower the platform or hang the tube higher; "
            "distance says by how much."
        )
    if judged.verdict.wants_change and not judged.is_likely_above:
        steps.append(
            "Even the strongest place is below the range: bring the platform nearer, or ask tube "
            "which class suits that distance."
        )
    elif found.in_range.best < _ENOUGH:
        steps.append(
            "Put the platform under the middle of the tube, and keep it no longer than the part "
            "of the tube above it."
        )
    if not found.shade_reached:
        steps.append("Give real shade at the cool end: a hide, cork or leaves, or a shorter tube.")
    if found.overlap is not Overlap.TOGETHER:
        steps.append(
            "Move the heat lamp so that its warm patch lies inside the UV on the platform."
        )
    steps.append(
        "Walk the places in the table with a UV index meter, sensor up at back height, and trust "
        f"the meter: {uvi_range(wish.low, wish.high)} where it basks, under {SHADE_UVI} in shade."
    )
    return tuple(steps)


def _alt(table: Table, found: Patches, wish: Wish, end_view: str) -> str:
    heads = table.columns[1:]
    lines = [
        f"At {row[0]} over the floor, from the warm end: "
        + ", ".join(f"{value} at {head}" for head, value in zip(heads, row[1:], strict=True))
        + "."
        for row in table.rows
    ]
    return shortened(
        (
            "Map of UV index, seen from the side.",
            _answer(found, wish),
            f"Below it the end view, {end_view}.",
            *lines,
        )
    )
