"""Reply → plain text for a terminal, a pipe or a log: no colour, no box, nothing lost."""

from textwrap import TextWrapper

from bot.reply import Reply, Table

__all__ = ["render_text"]

_WIDTH = 88


def render_text(reply: Reply, width: int = _WIDTH) -> str:
    """Return the reply as lines of plain text, the answer first."""
    blocks = [reply.title, _wrap(reply.answer, width)]
    if reply.rows:
        blocks.append("\n".join(_labelled(r.label, r.text, width) for r in reply.rows))
    if reply.table:
        blocks.append(_table(reply.table))
    if reply.steps:
        lines = (_wrap(s, width, f"{n}. ") for n, s in enumerate(reply.steps, 1))
        blocks.append("Do this:\n" + "\n".join(lines))
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


def _table(table: Table) -> str:
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]

    def laid(line: tuple[str, ...]) -> str:
        return "  ".join(cell.ljust(w) for cell, w in zip(line, widths, strict=True)).rstrip()

    return "\n".join([laid(lines[0]), "  ".join("-" * w for w in widths), *map(laid, lines[1:])])
