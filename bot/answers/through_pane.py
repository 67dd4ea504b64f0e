"""A tube over glass or clear plastic: no distance helps, because no useful UVB comes through."""

from bot.answers.linking import page_links, source_lines
from bot.answers.uv_parts import UV_CAUTIONS
from bot.language.screens import Pane
from bot.preferences import Context
from bot.reply import Alarm, Reply

__all__ = ["NO_UV", "answer_pane"]

NO_UV = "no_uv_through_glass"
"""The key of this hazard."""

_GUIDE = ("screens", "measuring-the-distance", "how-to-take-a-reading")


def answer_pane(command: str, pane: Pane, context: Context) -> Reply:
    """Answer that nothing useful comes through, and hand out no distance."""
    return Reply(
        command=command,
        status="problem",
        title=f"No useful UV comes through {pane.material}",
        answer=(
            f"No distance helps under {pane.material}: nearly all of the UVB stays in it, however "
            "clear it looks. Ask again for the tube inside, or over open metal mesh."
        ),
        steps=(
            "Move the tube inside the box, or put open metal mesh where the pane is.",
            (
                "Then ask again with screen:none for a tube inside, or with what the mesh blocks, "
                "such as screen:45%: start at the far end of the range."
            ),
            "If you can borrow a UV index meter, hold it under the pane: it will show hardly any.",
        ),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(("float_glass_uv", "common_practice")),
        alarms=(Alarm(key=NO_UV, words=pane.text),),
    )
