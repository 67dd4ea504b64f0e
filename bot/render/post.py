"""Reply → what a message of Discord says: the brief, and one part where it is open.

It reads the same as a card, which one person sees, and as plain text, which rings and is found,
quoted and pinned. No line of the brief is ever left out. What does not fit of a part is left out
line by line, the least needed first (sources, then pages, table, rows, steps), and the reader is
told how much. The query as understood stands last.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import count

from bot.brief import brief_of
from bot.menu import menu_name
from bot.render.escaping import escape, escape_code, units_long
from bot.render.mentions import Mention, clickable, unnumbered
from bot.reply import Line, PartName, Reply, Role, Row, SourceLine, Table

__all__ = ["MOST_CARD", "MOST_TEXT", "Post", "asked_of", "render_post"]

MOST_TEXT, MOST_CARD = 2000, 4000
"""What a plain message holds, and what a card holds."""

# The last line; with a slash it reads as what to type, in every language.
_ASKED = "-# /"
_MOST_ASKED = 1000
_TITLE = 256
_LINE = 1024
# Our own words above an answer, and the ends of lines between its texts.
_SPARE = 200
# A longer head is no line to be set in bold.
_MOST_BOLD = 200
# A phone shows about this many monospaced characters.
_PHONE = 32
# Room for the table as a block: it must not be split over two messages.
_CODE = 2500
_GAP = "\n\n"
_URGENT = (Role.DANGER, Role.CALL)
_ESCAPED = re.compile(r"\\([^0-9A-Za-z\s])")


@dataclass(frozen=True, slots=True)
class Post:
    """What is shown unasked, the part that was opened under it, and what was asked."""

    brief: str
    part: str = ""
    asked: str = ""

    @property
    def text(self) -> str:
        """Return all of it as one text."""
        told = _GAP.join(text for text in (self.brief, self.part) if text)
        return "\n".join(text for text in (told, self.asked) if text)


@dataclass(frozen=True, slots=True)
class _Section:
    """A headed run of lines; a lower rank is kept longer."""

    rank: int
    heading: str
    lines: tuple[str, ...]
    code: bool = False

    def text(self) -> str:
        lines = ("```", *self.lines, "```") if self.code else self.lines
        return "\n".join((f"**{self.heading}**", *lines) if self.heading else lines)


def render_post(
    reply: Reply,
    part: PartName | None = None,
    most: int = MOST_CARD,
    mention: Mention = unnumbered,
) -> Post:
    """Return the brief with the part that is open, if any: at most so many characters.

    ``mention`` tells what stands for the name of a question.

    Fails with ValueError where the brief and the cautions shown are more than one message holds.
    """
    asked = _asked(reply.asked)
    room = most - _SPARE - units_long(asked)
    shown = [*_brief(reply), *_parts_shown(reply, None)]
    opened = list(_parts_shown(reply, part)) if part not in (None, *reply.opened) else []
    lines = (*(offer.line() for offer in reply.offers), *reply.lines)
    named = {str(n): f"<@{n}>" for n in reply.people} | {str(n): f"<#{n}>" for n in reply.channels}
    told = [_named(_clickable(s, mention, lines), named) for s in (*shown, *opened)]
    fitted = _fitted(told, room)
    return Post(_joined(fitted[: len(shown)]), _joined(fitted[len(shown) :]), asked)


def _clickable(section: _Section, mention: Mention, asked: tuple[str, ...]) -> _Section:
    if section.code:
        return section
    return replace(section, lines=tuple(clickable(x, mention, asked) for x in section.lines))


def _named(section: _Section, named: Mapping[str, str]) -> _Section:
    """Return a section in which people and channels are shown by name; nobody is pinged by it."""
    if section.code or not named:
        return section
    pattern = re.compile(rf"(?<!\d)(?:{'|'.join(named)})(?!\d)")
    return replace(
        section, lines=tuple(pattern.sub(lambda m: named[m[0]], line) for line in section.lines)
    )


def asked_of(text: str) -> str:
    r"""Return the question that the last line of a message tells, or nothing.

    >>> asked_of("14 in is 35.5 cm.\n-# /convert \\*14 in")
    'convert *14 in'
    """
    line = text.rpartition("\n")[2]
    told = line.removeprefix(_ASKED) if line.startswith(_ASKED) else ""
    return _ESCAPED.sub(r"\1", told)


def _asked(asked: str) -> str:
    name, *rest = asked.split() or [""]
    line = " ".join((menu_name(name), *rest))
    return _ASKED + _cut(escape(line), _MOST_ASKED) if line else ""


def _joined(sections: Iterable[_Section]) -> str:
    return _GAP.join(section.text() for section in sections if section.lines)


def _brief(reply: Reply) -> Iterator[_Section]:
    """Return what is urgent, then the answer; a page or a list has a title too."""
    lines = brief_of(reply)
    numbers = count(1)
    urgent = tuple(f"**{_line(line.text)}**" for line in lines if line.role in _URGENT)
    title = f"### {_cut(escape(reply.title), _TITLE)}"
    titled = (title,) if reply.opened and reply.title.strip() else ()
    bold = not (urgent or titled)
    rest = tuple(_told(line, numbers, bold=bold) for line in lines if line.role not in _URGENT)
    yield _Section(0, "", urgent)
    yield _Section(0, "", (*titled, *rest))


def _told(line: Line, numbers: Iterator[int], *, bold: bool) -> str:
    text = _cut(escape(line.text), _LINE)
    match line.role:
        case Role.HEAD if bold and len(text) <= _MOST_BOLD and "\n" not in text:
            return f"**{text}**"
        case Role.STEP:
            return f"{next(numbers)}. {text}"
        case Role.CAUTION:
            return f"**!** {text}"
        case Role.ASSUMED:
            return f"-# {text}"
        case _:
            return text


def _parts_shown(reply: Reply, part: PartName | None) -> Iterator[_Section]:
    """Return the part that was opened, or without one those that are the answer itself."""
    for told in reply.parts:
        if told.name is part or (part is None and told.name in reply.opened):
            yield from _PARTS[told.name](reply, told.label if told.name is part else "")


def _steps(reply: Reply, heading: str) -> Iterator[_Section]:
    steps = (f"{n}. {_line(step)}" for n, step in enumerate(reply.steps, 1))
    yield _Section(1, heading, tuple(steps))


def _numbers(reply: Reply, heading: str) -> Iterator[_Section]:
    rows = tuple(_rows(reply.rows))
    yield _Section(2, heading, rows)
    if reply.table:
        yield _table(reply.table, "" if rows else heading)


def _why(reply: Reply, heading: str) -> Iterator[_Section]:
    yield _Section(2, heading, tuple(f"- {_line(reason)}" for reason in reply.why))


def _care(reply: Reply, heading: str) -> Iterator[_Section]:
    yield _Section(0, heading, tuple(f"- {escape(caution)}" for caution in reply.cautions))


def _sources(reply: Reply, heading: str) -> Iterator[_Section]:
    pages = tuple(f"- {_page(page.title, page.url)}" for page in reply.guide)
    yield _Section(4, heading, pages)
    lines = tuple(f"-# {_line(s.citation)}{_kind(s)}" for s in reply.sources)
    yield _Section(5, "" if pages else heading, lines)


_PARTS: Mapping[PartName, Callable[[Reply, str], Iterator[_Section]]] = {
    PartName.STEPS: _steps,
    PartName.NUMBERS: _numbers,
    PartName.WHY: _why,
    PartName.CARE: _care,
    PartName.SOURCES: _sources,
}


def _kind(source: SourceLine) -> str:
    """Return the kind of a source, where its own words do not tell it: there is little room."""
    return "" if source.kind in source.citation else f" ({escape(source.kind)})"


def _rows(rows: tuple[Row, ...]) -> Iterator[str]:
    if not any("\n" in row.text for row in rows):
        yield from (f"**{escape(row.label)}:** {_line(row.text)}" for row in rows)
        return
    for index, row in enumerate(rows):
        heading = f"**{_line(row.label)}**"
        yield f"\n{heading}" if index else heading
        yield from (_line(line) for line in row.text.splitlines())


def _table(table: Table, heading: str) -> _Section:
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]
    if sum(widths) + 2 * (len(widths) - 1) <= _PHONE:
        laid = (
            "  ".join(cell.ljust(w) for cell, w in zip(line, widths, strict=True)).rstrip()
            for line in lines
        )
        return _Section(3, heading, tuple(escape_code(line) for line in laid), code=True)
    head = " · ".join(f"**{escape(name)}**" for name in table.columns)
    rows = (_cut(" · ".join(escape(cell) for cell in row), _LINE) for row in table.rows)
    return _Section(3, heading, (head, *(f"- {row}" for row in rows)))


def _page(title: str, url: str) -> str:
    return f"[{escape(title)}]({url})" if url else escape(title)


def _line(text: str) -> str:
    return _cut(escape(text), _LINE)


def _cut(text: str, most: int) -> str:
    """Return the text, or its beginning up to a word with an ellipsis."""
    if units_long(text) <= most:
        return text
    kept = text[: most - 2]
    while units_long(kept) > most - 2:
        kept = kept[:-1]
    head, space, _ = kept.rpartition(" ")
    kept = head if space and len(head) > most // 2 else kept
    # A backslash left alone at the end would escape the ellipsis.
    return kept.rstrip("\\ ") + " …"


def _fitted(sections: list[_Section], room: int) -> list[_Section]:
    """Return the sections shortened, the least needed first, so that all fit the room."""
    fitted = dict(enumerate(sections))
    for index, section in sorted(fitted.items(), key=lambda item: item[1].rank):
        if not section.lines:
            continue
        kept = _shortened(section, min(room, _CODE) if section.code else room)
        if section.rank == 0 and kept != section:
            raise ValueError("the brief and its cautions are more than one message holds")
        fitted[index] = kept
        room -= units_long(kept.text()) + len(_GAP) if kept.lines else 0
    return list(fitted.values())


def _shortened(section: _Section, room: int) -> _Section:
    """Return the section with as many lines as fit, and a line that says how many do not."""
    lines = section.lines
    kept = len(lines)
    while True:
        left_out = len(lines) - kept
        note = (f"… (+{left_out})",) if left_out else ()
        shown = replace(section, lines=(*lines[:kept], *note))
        if units_long(shown.text()) + len(_GAP) <= room:
            return shown
        if kept == 0:
            return replace(section, lines=())
        kept -= 1
