"""A whole set-up judged: a verdict on each part, the first three things to do, what is missing."""

from collections.abc import Iterator
from dataclasses import replace

from bot.answers.check_heat import HEATED, heat_parts
from bot.answers.check_limits import limit_alarms
from bot.answers.check_parts import Mark, Part, Todo, first_of, in_order
from bot.answers.check_safety import safety_parts
from bot.answers.check_set_up import checked_set_up
from bot.answers.check_uv import uv_part
from bot.answers.check_whom import kept_told
from bot.answers.first_change import first_change
from bot.answers.heat_parts import AFTER_A_CHANGE, HEAT_CAUTIONS, Kept
from bot.answers.lamp_alarms import lamp_alarms
from bot.answers.linking import page_links, source_lines
from bot.answers.setup_rows import read_rows
from bot.answers.setup_told import Told, told_by
from bot.answers.unfigured import whatever_it_is
from bot.answers.uv_parts import UV_CAUTIONS
from bot.language.errors import NotUnderstoodError
from bot.language.shown import shown
from bot.preferences import Context
from bot.queries.setup import CheckQuery
from bot.reply import Reply, Row, Table
from calc.animals import ANY

__all__ = ["answer_check"]

_GUIDE = (
    "how-to-ask",
    "uv-and-heat-together",
    "measuring-the-distance",
    "measuring-temperatures",
)
_EXAMPLE = "check beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool side 75"


def answer_check(query: CheckQuery, context: Context) -> Reply:
    """Answer with a verdict on each part of a set-up, and what to do first."""
    told, units = told_by(query.setup, query, context.own.names), context.units
    if not (told.facts or told.unclear):
        read = shown(query.setup) or "nothing"
        accepted = "something about your set-up: the animal, the tube, its distance, temperatures"
        raise NotUnderstoodError(read, accepted, _EXAMPLE, "setup")
    kept = kept_told(told, context)
    uv = uv_part(told, kept, units)
    parts = (*safety_parts(told, uv, kept), uv, *heat_parts(told, kept, units))
    todo = first_of(in_order(parts))
    warmed = any(part.mark is Mark.CHANGE and part.name in HEATED for part in parts)
    alarms = (
        *limit_alarms(told, kept.animal),
        *(alarm for part in parts for alarm in part.alarms),
        *lamp_alarms(told),
    )
    found = checked_set_up(told, kept, parts, todo)
    return Reply(
        command="check",
        status="ok",
        title=f"Your set-up for {kept.whom}, checked",
        answer=_answer(parts, todo, kept),
        values=tuple(value for part in parts for value in part.values),
        rows=(*kept.rows, *_missing_rows(parts), *read_rows(told, units), *_correct_row(told)),
        table=Table(
            columns=("Part", "Verdict", "Why"),
            rows=tuple((part.name, part.mark.value, part.why) for part in parts),
        ),
        steps=(
            *(item.text for item in todo),
            *((AFTER_A_CHANGE,) if warmed else ()),
            *(whatever_it_is(context) if kept.animal.slug == ANY else ()),
        ),
        cautions=(*UV_CAUTIONS[:2], *HEAT_CAUTIONS),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(dict.fromkeys(("common_practice", *_sources(parts)))),
        alarms=alarms,
        set_up=replace(found, first=first_change(alarms, found.first)),
    )


def _sources(parts: tuple[Part, ...]) -> Iterator[str]:
    for part in parts:
        yield from part.sources


def _answer(parts: tuple[Part, ...], todo: tuple[Todo, ...], kept: Kept) -> str:
    said = [f"{mark.value}: {', '.join(names)}" for mark in Mark if (names := _named(parts, mark))]
    told = "; ".join(said)
    told = f"{told[0].upper()}{told[1:]}."
    if kept.rows:
        told = f"{kept.rows[0].text} {told}"
    urgent = [item.short for item in todo if item.cannot_wait]
    if urgent:
        return f"First, {', then '.join(urgent)}. {told}"
    return f"{told} First, {todo[0].short}." if todo else f"{told} Nothing to do."


def _named(parts: tuple[Part, ...], mark: Mark) -> list[str]:
    names = dict.fromkeys(part.name for part in parts if part.mark is mark)
    return [name if name == "UV" else name.lower() for name in names]


def _missing_rows(parts: tuple[Part, ...]) -> tuple[Row, ...]:
    missing = dict.fromkeys(text for part in parts for text in part.missing)
    if not missing:
        return ()
    return (Row(label="Missing", text="; ".join(missing)),)


def _correct_row(told: Told) -> tuple[Row, ...]:
    text = "did I read something wrongly? Ask again and add it, such as distance:16in or cool:78F"
    return (Row(label="Correct me", text=text),) if told.facts else ()
