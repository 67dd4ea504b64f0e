"""Reply → plain text for a terminal, a pipe or a log: no colour, no box, nothing lost."""

from collections.abc import Iterator
from functools import lru_cache
from textwrap import TextWrapper

from bot.brief import brief_of, held_labels
from bot.reply import Part, PartName, Reply, Role, Table

__all__ = ["render_brief", "render_part", "render_sheet", "render_text"]

_WIDTH = 88
# A column folded tighter than this is harder to read than one that runs over.
_NARROWEST = 24
# A longer lead leaves no room for what stands behind it [1 of the width].
_LONGEST_LEAD = 0.4
_BELOW = "    "
_URGENT = (Role.DANGER, Role.CALL)


def render_text(reply: Reply, width: int = _WIDTH) -> str:
    """Return all of the reply as plain text: its brief, then every part."""
    blocks = [reply.title, *_brief(reply, width)]
    blocks += [_part(reply, part, width) for part in reply.parts]
    return "\n\n".join([*blocks, *_document(reply)]) + "\n"


def render_brief(
    reply: Reply, width: int = _WIDTH, more: str = "More", *, sheet: bool = False
) -> str:
    """Return what is shown unasked, and a last line that says what more there is.

    ``sheet``: a care sheet opens at a word too.
    """
    opened = [part for part in reply.parts if part.name in reply.opened]
    blocks = [*([reply.title] if opened else []), *_brief(reply, width)]
    blocks += [_part(reply, part, width) for part in opened]
    blocks += _document(reply)
    if held := held_labels(reply):
        also = f", {reply.sheet_label.lower()}" if sheet and reply.sheet else ""
        blocks.append(_wrap(f"{more}: {held}{also}", width))
    return "\n\n".join(blocks) + "\n"


def render_part(reply: Reply, name: PartName, width: int = _WIDTH) -> str:
    """Return one part of the reply, or nothing where it has none of that name."""
    return "".join(_part(reply, part, width) + "\n" for part in reply.parts if part.name is name)


def render_sheet(reply: Reply, width: int = _WIDTH) -> str:
    """Return the reply's care sheet in words, or nothing where it has none."""
    told = reply.sheet.alt if reply.sheet else ""
    return f"{reply.sheet_label}:\n{_wrap(told, width)}\n" if told else ""


def _brief(reply: Reply, width: int) -> Iterator[str]:
    """Return the block of what is urgent, where anything is, and the block of the answer."""
    lines = brief_of(reply)
    if urgent := [line.text for line in lines if line.role in _URGENT]:
        yield "\n".join(_wrap(text, width) for text in urgent)
    told = []
    steps = 0
    for line in lines:
        steps += line.role is Role.STEP
        lead = {Role.STEP: f"{steps}. ", Role.CAUTION: "! "}.get(line.role, "")
        if line.role not in _URGENT:
            told.append(_wrap(line.text, width, lead))
    if told:
        yield "\n".join(told)


def _part(reply: Reply, part: Part, width: int) -> str:
    numbered = part.name is PartName.STEPS
    lines = (
        _wrap(item, width, f"{n}. " if numbered else "- ") for n, item in enumerate(part.items, 1)
    )
    told = _numbers(reply, width) if part.name is PartName.NUMBERS else lines
    # What is the answer itself needs no heading.
    heading = [] if part.name in reply.opened else [f"{part.label}:"]
    return "\n".join([*heading, *told])


def _numbers(reply: Reply, width: int) -> Iterator[str]:
    pages = any("\n" in row.text for row in reply.rows)
    for index, row in enumerate(reply.rows):
        if pages:
            yield from ([""] if index else [])
            yield _wrap(row.label, width)
            yield _wrap(row.text, width)
        else:
            yield _wrap(row.text, width, f"{row.label}: ")
    if reply.table:
        yield from ([""] if reply.rows else [])
        yield _table(reply.table, width)


def _document(reply: Reply) -> Iterator[str]:
    if reply.document:
        yield f"{reply.document.name}:\n\n{reply.document.text.rstrip()}"


# Most of an answer's forty texts (labels, cautions, sources) are the same in every answer.
@lru_cache(maxsize=4096)
def _wrap(text: str, width: int, lead: str = "") -> str:
    """Wrap a text that stands behind its lead, or goes on below one that leaves it no room."""
    behind = len(lead) <= width * _LONGEST_LEAD
    wrapper = TextWrapper(
        width,
        initial_indent=lead if behind else "",
        subsequent_indent=" " * len(lead) if behind else _BELOW,
        break_on_hyphens=False,
    )
    text = text if behind else lead + text
    return "\n".join(wrapper.fill(line) for line in text.splitlines()) if text else lead


def _table(table: Table, width: int) -> str:
    """Lay a table out in columns; too wide, its last one is folded, or its rows are lists."""
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]
    beside = sum(widths[:-1]) + 2 * (len(widths) - 1)
    if beside + min(widths[-1], _NARROWEST) > width:
        return "\n".join(_listed(table, width))
    widths[-1] = min(widths[-1], max(width - beside, _NARROWEST))
    folder = TextWrapper(widths[-1], break_on_hyphens=False)

    def laid(line: tuple[str, ...]) -> str:
        first, *others = folder.wrap(line[-1]) or [""]
        cells = [cell.ljust(w) for cell, w in zip(line[:-1], widths, strict=False)]
        return "\n".join(
            ["  ".join([*cells, first]).rstrip(), *(" " * beside + other for other in others)]
        )

    return "\n".join([laid(lines[0]), "  ".join("-" * w for w in widths), *map(laid, lines[1:])])


def _listed(table: Table, width: int) -> Iterator[str]:
    """Yield each row as its first cell, and below it the others behind their columns' names."""
    folder = TextWrapper(width, break_on_hyphens=False)
    below = TextWrapper(
        width, initial_indent="  ", subsequent_indent="    ", break_on_hyphens=False
    )
    for first, *others in table.rows:
        yield folder.fill(first)
        for name, cell in zip(table.columns[1:], others, strict=True):
            yield below.fill(f"{name}: {cell}")
