"""A layered answer in words: messages become sentences, nothing is decided any more."""

from collections.abc import Callable, Iterator

from bot import layered as layers
from bot.brief import fitted
from bot.facts import Say
from bot.layered import Care, Layered, Weight
from bot.linking import page_links, source_lines
from bot.reply import LABELLED, Line, Reply, Role, Row, Table, Value
from bot.saying.voice import Voice

__all__ = ["said"]

# What gives way where a brief is too long, and how many lines of it stay; it all is in a part too.
_GIVES_WAY = (
    (Role.STEP, 1),
    (Role.RANGE, 1),
    (Role.ASSUMED, 0),
    (Role.RANGE, 0),
    (Role.STEP, 0),
)


def said(layered: Layered, voice: Voice, guide_url: str = "") -> Reply:
    """Return the reply that a layered answer is in one language, with one unit first."""

    say = voice.text
    brief = layered.brief
    return Reply(
        command=layered.command,
        status=layered.status,
        title=say(layered.title),
        answer=" ".join(say(x) for x in (brief.head, *brief.range)),
        brief=fitted([Line(role=role, text=say(x)) for role, x in _lines(layered)], _GIVES_WAY),
        labels=tuple(say(Say.of("part", name)) for name in LABELLED),
        language=voice.language,
        values=tuple(_values(layered)),
        rows=tuple(_row(row, say) for row in layered.numbers),
        why=tuple(map(say, layered.why)),
        table=_table(layered.table, say),
        steps=tuple(map(say, layered.steps)),
        cautions=tuple(say(care.say) for care in _heaviest_first(layered.care)),
        guide=page_links(layered.guide, guide_url, voice.language),
        sources=source_lines(layered.sources, say),
        picture=layered.picture and layered.picture(voice),
        sheet=layered.sheet and layered.sheet(voice),
        alarms=layered.alarms,
        offers=layered.offers,
        lines=tuple(say(x) if isinstance(x, Say) else x for x in layered.lines),
        lacking=layered.lacking,
        perhaps=layered.perhaps,
        set_up=layered.set_up,
        document=layered.document,
        undecided=layered.undecided,
        people=layered.people,
        channels=layered.channels,
        units=voice.units.value,
    )


def _row(row: layers.Row, say: Callable[[Say], str]) -> Row:
    return Row(label=say(row.label), text="\n".join(map(say, (row.say, *row.more))))


def _table(table: layers.Table | None, say: Callable[[Say], str]) -> Table | None:
    if table is None:
        return None
    rows = tuple(tuple(map(say, row)) for row in table.rows)
    return Table(columns=tuple(map(say, table.columns)), rows=rows)


def _lines(layered: Layered) -> Iterator[tuple[Role, Say]]:
    brief = layered.brief
    yield Role.HEAD, brief.head
    yield from ((Role.RANGE, say) for say in brief.range)
    yield from ((Role.ASSUMED, say) for say in brief.assumed)
    yield from ((Role.STEP, say) for say in brief.steps)
    heaviest = _heaviest_first(layered.care)[:1]
    for care in heaviest:
        if care.weight is Weight.STEP and care.short is not None:
            yield Role.CAUTION, care.short


def _values(layered: Layered) -> Iterator[Value]:
    for name, figure in layered.values:
        if figure is not None:
            yield Value(
                name=name,
                low=figure.low,
                best=figure.best,
                high=figure.high,
                unit=figure.kind.unit,
            )


def _heaviest_first(care: tuple[Care, ...]) -> list[Care]:
    return sorted(care, key=lambda one: one.weight is Weight.ALWAYS)
