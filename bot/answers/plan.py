"""A complete starting set-up for an animal in a box, or why that box will not do."""

from bot.answers.heat_parts import HEAT_CAUTIONS, box_row
from bot.answers.linking import page_links, source_lines
from bot.answers.plan_heat import heat_plan
from bot.answers.plan_told import basis
from bot.answers.plan_uv import uv_plan
from bot.answers.setup_rows import read_rows
from bot.answers.uv_parts import UV_CAUTIONS
from bot.preferences import Context
from bot.queries.setup import PlanQuery
from bot.reply import Reply, Table

__all__ = ["answer_plan"]

_GUIDE = (
    "uv-and-heat-together",
    "warm-end-and-cool-end",
    "measuring-the-distance",
    "fire-and-electrical-safety",
)


def answer_plan(query: PlanQuery, context: Context) -> Reply:
    """Answer with tube, distance, platform, heat, targets, shopping list and first measurements."""
    stands_on, units = basis(query, context), context.units
    uv = uv_plan(stands_on, context)
    heat = heat_plan(stands_on, uv.way.platform_m if uv.way else 0.0, units)
    can_be = uv.way is not None and not heat.too_short
    verdict = f"Not well in this box: {heat.too_short}" if heat.too_short else "It can be done."
    answer = f"{verdict} {uv.answer} {heat.answer}"
    rows = (
        *stands_on.kept.rows,
        box_row(stands_on.size, stands_on.material, stands_on.lid),
        *uv.rows,
        *heat.rows,
        *stands_on.rows,
        *read_rows(stands_on.told, units),
    )
    shopping = (*uv.shopping, *heat.shopping) if uv.way else ()
    return Reply(
        command="plan",
        status="ok" if can_be else "problem",
        title=f"A set-up for {stands_on.kept.whom}",
        answer=answer if uv.way else uv.answer,
        values=(*uv.values, *heat.values),
        rows=rows,
        table=Table(columns=("To have", "Class", "What for"), rows=shopping) if shopping else None,
        steps=(*uv.steps, *heat.steps) if uv.way else _what_would_change(),
        cautions=(*UV_CAUTIONS, *HEAT_CAUTIONS),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(dict.fromkeys((*uv.sources, *heat.sources))),
    )


def _what_would_change() -> tuple[str, ...]:
    return (
        "Ask plan again with a taller enclosure, or with the mesh you have (screen:30%).",
        "Ask distance to see where each tube would have to hang.",
    )
