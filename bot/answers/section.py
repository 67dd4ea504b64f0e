"""Where the UV goes in an enclosure: the map, the platform, the shade and the heat."""

from dataclasses import replace
from math import inf

import numpy as np

from bot.answers.animals import animal_asked
from bot.answers.figures import length, percent, uvi, uvi_estimate, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.no_figures import answer_without_figures
from bot.answers.section_layout import Layout, layout
from bot.answers.section_picture import section_picture
from bot.answers.section_words import SHADE_TOLD, heat_told, mend_steps, shade_row
from bot.answers.tube_length import length_sources, length_steps, length_values
from bot.answers.uv_limits import is_named
from bot.answers.uv_parts import (
    UV_CAUTIONS,
    Wish,
    doubt_row,
    lamp_name,
    screen_phrase,
    wish_asked,
)
from bot.dangers.first_change import first_change
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.uv_depth import SectionQuery
from bot.questions.uv.curves import shortened
from bot.questions.uv.danger import uv_alarms
from bot.reply import Picture, Reply, Row, Table, Value
from calc.setup.bodies import body_of
from calc.setup.lit import lit_set_up
from calc.setup.mends import Mend, MendKind, is_served, mends_for
from calc.setup.room import Room
from calc.setup.set_up import SetUp
from calc.uncertainty import Estimate
from calc.uv.field_unknowns import field_unknowns
from calc.uv.patches import SHADE_UVI, Patches, Place
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.section import uvi_field

__all__ = ["answer_section"]

_GUIDE = ("sun-and-shade", "uv-and-heat-together", "screens")
_SOURCES = ("line_source", "line_through_weave", "uv_distance_rows", "uv_shade", "shade_judgement")
_COLUMNS, _HEIGHTS, _ACROSS = 6, 5, 5
_NOTHING_SERVES = (
    "Nothing that I tried in this box gives the platform its UV: ask plan, with the box and the "
    "animal, for a set-up that does."
)


def answer_section(query: SectionQuery, context: Context) -> Reply:
    """Answer with the share of the platform in range, the extremes, shade, and a map."""
    if none := answer_without_figures("section", query, kind_of(query.tube, query.lamp), context):
        return none
    units = context.units
    wish = wish_asked(query.animal, query.uvi, context)
    laid = layout(query, (wish.low, wish.high), units)
    room = laid.room
    met = room.met()
    mends = _mends(room, met, query, context)
    alarms = uv_alarms(met.strongest.uvi, query.animal, wish.high, context)
    lit = lit_set_up(room, met, mends)
    set_up = replace(lit, first=first_change(alarms, lit.first))
    lamp, whole = room.tubes[0].lamp, field_unknowns(room.tubes, room.back_z_m)
    table = _side_view(room, units)
    wanted = uvi_range(wish.low, wish.high)
    return Reply(
        command="section",
        status="ok",
        title=f"Where the UV goes, for {wish.whom}",
        answer=_answer(met, wanted),
        values=_values(met, room),
        rows=_rows(laid, met, wish, wanted, units),
        table=table,
        steps=(
            *mend_steps(room, mends, units),
            *_last_steps(met, mends, wanted),
            *length_steps(lamp, units),
        ),
        cautions=(
            *UV_CAUTIONS[:2],
            "Walls, branches and hides are not in this map: behind them it is darker.",
        ),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*wish.sources, *_SOURCES, *length_sources(lamp), *whole.sources)),
        picture=Picture.later(_picture, set_up, met, wish, table, room, units),
        alarms=alarms,
        set_up=set_up,
    )


def _rows(laid: Layout, met: Patches, wish: Wish, wanted: str, units: Units) -> tuple[Row, ...]:
    room = laid.room
    return (
        Row(label="Set-up", text=_told(room, units)),
        wish.row,
        Row(label="Strongest place", text=_place(met.strongest, units)),
        Row(label="Weakest place", text=_place(met.weakest, units)),
        Row(label="Shade", text=shade_row(met)),
        Row(label="Heat and UV", text=heat_told(met, wanted)),
        Row(label="End view", text=_end_view(room, units)),
        Row(label="Assumed", text="; ".join(laid.taken)),
        doubt_row(field_unknowns(room.tubes, room.back_z_m)),
    )


def _mends(room: Room, met: Patches, query: SectionQuery, context: Context) -> tuple[Mend, ...]:
    named = is_named(query.animal, context)
    body = body_of(animal_asked(query.animal, context).slug) if named else None
    highest_m = body.highest_platform_m if body else inf
    return mends_for(room, met, highest_m, nothing_owned=room.tubes[0].lamp.own is None)


def _picture(
    set_up: SetUp, met: Patches, wish: Wish, table: Table, room: Room, units: Units
) -> Picture:
    alt = _alt(table, _answer(met, uvi_range(wish.low, wish.high)), _end_view(room, units))
    return section_picture(set_up, wish.whom, alt, units)


def _answer(met: Patches, wanted: str) -> str:
    share = met.in_range
    return (
        f"About {percent(share.best)} of the platform is inside UVI {wanted} "
        f"({percent(share.low)} to {percent(share.high)}, by the doubt of the lamp). Where the "
        f"animal can go, the UVI runs from {uvi(met.weakest.uvi.best)} to "
        f"{uvi(met.strongest.uvi.best)}. {SHADE_TOLD[met.shade]}"
    )


def _values(met: Patches, room: Room) -> tuple[Value, ...]:
    heat = met.heat_in_range or Estimate.exact(0.0)
    return (
        Value.of("platform_in_range", met.in_range, "1"),
        Value.of("uvi_strongest", met.strongest.uvi, "1"),
        Value.of("uvi_weakest", met.weakest.uvi, "1"),
        Value.of("shade_share", met.shade_share, "1"),
        Value.of("heat_in_range", heat, "1"),
        *length_values(room.tubes[0].lamp),
        Value.of("platform_top", Estimate.exact(room.platform.top_m), "m"),
    )


def _told(room: Room, units: Units) -> str:
    tube, count = room.tubes[0], len(room.tubes)
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


def _side_view(room: Room, units: Units) -> Table:
    """Return the map along the enclosure, under the middle of the depth."""
    box = room.box
    along = np.linspace(0.0, box.length_m, _COLUMNS)
    highest = max(room.tubes[0].z_m - COMFORTABLE_MINIMUM_M, room.back_z_m)
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


def _end_view(room: Room, units: Units) -> str:
    across = np.linspace(0.0, room.box.depth_m, _ACROSS)
    line = uvi_field(room.tubes, room.platform.middle_m[0], across, room.back_z_m)
    told = ", ".join(
        f"{uvi(float(value))} at {length(float(y), units)}"
        for y, value in zip(across, line, strict=True)
    )
    return f"from the back wall, across the platform's middle at the back's height: UVI {told}"


def _last_steps(met: Patches, mends: tuple[Mend, ...], wanted: str) -> tuple[str, ...]:
    """Return what is left to do: where no mend of the UV was found, and always to measure."""
    hopeless = not is_served(met) and all(MendKind.HIDE in mend.kinds for mend in mends[:1])
    return (
        *((_NOTHING_SERVES,) if hopeless else ()),
        (
            "Walk the places in the table with a UV index meter, sensor up at back height, and "
            f"trust the meter: {wanted} where it basks, under {SHADE_UVI} in shade."
        ),
    )


def _alt(table: Table, answer: str, end_view: str) -> str:
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
            answer,
            f"Below it the end view, {end_view}.",
            *lines,
        )
    )
