"""Reply → plain text for a terminal, a pipe or a log: no colour, no box, nothing lost."""

from textwrap import TextWrapper

from bot.reply import Reply, Table

__all__ = ["render_text"]

_WIDTH = 88
# A column folded tighter than this is harder to read than one that runs over.
_NARROWEST = 24


def render_text(reply: Reply, width: int = _WIDTH) -> str:
    """Return the reply as lines of plain text, the answer first."""
    blocks = [reply.title, _wrap(reply.answer, width)]
    told = []
    if reply.rows:
        told.append("\n".join(_labelled(r.label, r.text, width) for r in reply.rows))
    if reply.table:
        told.append(_table(reply.table, width))
    lines = (_wrap(s, width, f"{n}. ") for n, s in enumerate(reply.steps, 1))
    acts = ["Do this:\n" + "\n".join(lines)] if reply.steps else []
    # In danger nobody reads figures before what is to be done.
    blocks += [*acts, *told] if reply.dangers else [*told, *acts]
    if reply.cautions:
        blocks.append("Take care:\n" + "\n".join(_wrap(c, width, "- ") for c in reply.cautions))
    if reply.guide:
        lines = (
            _wrap(f"{p.title}: {p.url or f'guide {p.slug}'}", width, "- ") for p in reply.guide
        )
        blocks.append("Read more:\n" + "\n".join(lines))
    if reply.sources:
        lines = (_wrap(f"{s.citation} [{s.kind}]", width, "- ") for s in reply.sources)
        blocks.append("Sources:\n" + "\n".join(lines))
    if reply.document:
        blocks.append(f"{reply.document.name}:\n\n{reply.document.text.rstrip()}")
    return "\n\n".join(blocks) + "\n"


def _wrap(text: str, width: int, lead: str = "") -> str:
    wrapper = TextWrapper(
        width, initial_indent=lead, subsequent_indent=" " * len(lead), break_on_hyphens=False
    )
    return "\n".join(wrapper.fill(line) for line in text.splitlines()) if text else lead


def _labelled(label: str, text: str, width: int) -> str:
    return _wrap(text, width, f"{label}: ")


def _table(table: Table, width: int) -> str:
    """Lay a table out in columns; where it is too wide, the last column is folded."""
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]
    beside = sum(widths[:-1]) + 2 * (len(widths) - 1)
    widths[-1] = min(widths[-1], max(width - beside, _NARROWEST))
    folder = TextWrapper(widths[-1], break_on_hyphens=False)

    def laid(line: tuple[str, ...]) -> str:
        first, *others = folder.wrap(line[-1]) or [""]
        cells = [cell.ljust(w) for cell, w in zip(line[:-1], widths, strict=False)]
        return "\n".join(
            ["  ".join([*cells, first]).rstrip(), *(" " * beside + other for other in others)]
        )

    return "\n".join([laid(lines[0]), "  ".join("-" * w for w in widths), *map(laid, lines[1:])])
