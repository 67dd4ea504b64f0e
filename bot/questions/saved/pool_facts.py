"""What the readings of a group show, as facts: by class, fixture, screen, age; how tubes fade.

Words: ``words/<language>/pool.ftl``.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto
from math import exp, log
from statistics import median

from bot.facts import Length, Say, Share, Uvi, metres, share, uvi
from bot.language.uv_lamps import UvLamp
from bot.pooled import screen_of
from bot.questions.saved.pooled_told import between_of, kind_said
from bot.questions.uv.lamp_asked import own_lamp
from bot.saved.group import Own
from bot.saved.pool import Shared
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.pool import ENOUGH_KEEPERS, LEAST_SHOWN, Value, Values
from calc.uv.pool_read import Pooled, PoolRead, by_age, by_class, by_fixture, by_screen, faded
from calc.uv.robust import spread_of

__all__ = ["By", "PoolFading", "PoolKind", "PoolLine", "PoolShown", "pool_shown"]

_AT_M = 0.30


class By(Enum):
    """What readings are told apart by."""

    CLASS = auto()
    FIXTURE = auto()
    SCREEN = auto()
    AGE = auto()
    OWN = auto()


@dataclass(frozen=True, slots=True)
class _OfClass:
    """A class of tube."""

    strength: Share
    fixture: Fixture


@dataclass(frozen=True, slots=True)
class _OfLamp:
    """A lamp of the group's own."""

    name: str


@dataclass(frozen=True, slots=True)
class PoolLine:
    """Readings of one kind over what is expected of it; None: by too few keepers to be shown.

    ``middle`` is the median over the keepers, ``spread`` one deviation of them, ``known`` what is
    held with what was thought before, ``own`` the share of the readings in that, ``of_one`` what
    one tube gives by it. ``counts``: it takes the place of our figure.
    """

    by: By
    name: Say
    key: str
    keepers: int
    readings: int
    middle: Share | None
    spread: Share | None
    known: Share | None
    own: Share | None
    of_one: Share | None = None
    counts: bool = False


@dataclass(frozen=True, slots=True)
class PoolKind:
    """Readings of a kind without figures, all at one distance; None: by too few keepers."""

    name: Say
    keepers: int
    readings: int
    there: Uvi | None
    spread: Share | None
    at: Length


@dataclass(frozen=True, slots=True)
class PoolFading:
    """What tubes lose in 30 days; None: by too few keepers. ``of`` None: all of them."""

    of: Say | None
    tubes: int
    keepers: int
    loss: Share | None


@dataclass(frozen=True, slots=True)
class PoolShown:
    """All that the readings of a group show."""

    count: int
    keepers: int
    newest: date | None
    lines: tuple[PoolLine, ...]
    kinds: tuple[PoolKind, ...]
    fading: tuple[PoolFading, ...]

    @property
    def least(self) -> int:
        """Return of how many keepers a figure is shown at least."""
        return LEAST_SHOWN

    @property
    def enough(self) -> int:
        """Return from how many keepers on it takes the place of our figure."""
        return ENOUGH_KEEPERS

    @property
    def counting(self) -> int:
        """Return how many classes take the place of our figure."""
        return sum(line.counts for line in self.lines)

    @property
    def first(self) -> PoolLine | None:
        """Return the class that most keepers read, where it can be shown."""
        shown = [line for line in self.lines if line.known is not None and line.by is By.CLASS]
        return max(shown, key=lambda line: line.keepers, default=None)


def pool_shown(shared: Sequence[Shared], reads: Mapping[int, PoolRead], own: Own) -> PoolShown:
    """Work out what the readings of a group show; ``reads`` are those of T5 HO tubes that count."""
    every = list(reads.values())
    return PoolShown(
        count=len(shared),
        keepers=len({one.keeper for one in shared}),
        newest=max((one.reading.day for one in shared), default=None),
        lines=(*_lines(every), *_own_lines(shared, own)),
        kinds=tuple(_kinds(shared)),
        fading=tuple(_fading(every)),
    )


def _lines(reads: Sequence[PoolRead]) -> Iterator[PoolLine]:
    for (percent, fixture), found in _strongest_first(by_class(reads)):
        name = Say("pool-class", _OfClass(share(percent / 100.0), fixture))
        enough = found.values.keepers >= ENOUGH_KEEPERS
        kind = f"{percent:g}_{fixture.name.lower()}"
        yield _line(By.CLASS, name, kind, found, counts=enough)
    for behind, found in by_fixture(reads).items():
        yield _line(By.FIXTURE, Say.by("pool-fixture", behind), behind.name.lower(), found)
    for number, (screen, found) in enumerate(by_screen(reads).items(), start=1):
        yield _line(By.SCREEN, between_of(screen), f"{number}", found)
    for band, found in by_age(reads).items():
        yield _line(By.AGE, Say.by("pool-age", band), band.name.lower(), found)


_Class = tuple[float, Fixture]


def _strongest_first(found: Mapping[_Class, Pooled]) -> list[tuple[_Class, Pooled]]:
    return sorted(found.items(), key=lambda row: (-row[0][0], row[0][1].name))


def _line(by: By, name: Say, key: str, found: Pooled, *, counts: bool = False) -> PoolLine:
    values = found.values
    if values.keepers < LEAST_SHOWN:
        return PoolLine(by, name, key, values.keepers, values.readings, None, None, None, None)
    return PoolLine(
        by=by,
        name=name,
        key=key,
        keepers=values.keepers,
        readings=values.readings,
        middle=share(found.middle),
        spread=share(exp(found.spread) - 1.0),
        known=share(found.estimate),
        own=share(found.leant.own),
        of_one=share(found.of_one),
        counts=counts,
    )


def _own_lines(shared: Sequence[Shared], own: Own) -> Iterator[PoolLine]:
    """Yield what was read under each lamp of the group's own, over what it is kept as."""
    for lamp in own.lamps:
        engine = own_lamp(lamp)
        of = [one for one in shared if one.reading.own_lamp == lamp.name]
        values = Values.by_keeper(
            [Value(one.keeper, lamp.name, log(_times(engine, one))) for one in of]
        )
        if not of:
            continue
        name, is_shown = Say("pool-own", _OfLamp(lamp.name)), values.keepers >= LEAST_SHOWN
        yield PoolLine(
            by=By.OWN,
            name=name,
            key="own",
            keepers=values.keepers,
            readings=values.readings,
            middle=share(exp(median(values.of))) if is_shown else None,
            spread=share(exp(spread_of(values.of)) - 1.0) if is_shown else None,
            known=None,
            own=None,
        )


def _times(engine: Lamp, one: Shared) -> float:
    reading = one.reading
    expected = uvi_at(engine, reading.distance_m, screen_of(reading.screen))
    return reading.uvi / float(expected)


def _kinds(shared: Sequence[Shared]) -> Iterator[PoolKind]:
    """Yield other kinds of lamp at one distance, as from a small lamp's face; bare ones alone."""
    for kind in UvLamp:
        of = [
            one
            for one in shared
            if one.reading.own_lamp is None
            and one.reading.lamp is kind is not UvLamp.T5_HO
            and one.reading.screen is None
        ]
        if not of:
            continue
        values = Values.by_keeper([Value(one.keeper, one.box, log(_there(one))) for one in of])
        is_shown = values.keepers >= LEAST_SHOWN
        yield PoolKind(
            name=kind_said(kind),
            keepers=values.keepers,
            readings=values.readings,
            there=uvi(exp(median(values.of))) if is_shown else None,
            spread=share(exp(spread_of(values.of)) - 1.0) if is_shown else None,
            at=metres(_AT_M),
        )


def _there(one: Shared) -> float:
    return one.reading.uvi * (one.reading.distance_m / _AT_M) ** 2


def _fading(reads: Sequence[PoolRead]) -> Iterator[PoolFading]:
    """Yield how all tubes fade, then each class of them that was read so by enough keepers."""
    whole = faded(reads)
    if whole is None:
        return
    yield _faded(None, whole.tubes, whole.keepers, whole.month.best)
    for strength, fixture in sorted(
        {(r.lamp.strength_percent, r.lamp.fixture) for r in reads},
        key=lambda key: (-key[0], key[1].name),
    ):
        of = [r for r in reads if (r.lamp.strength_percent, r.lamp.fixture) == (strength, fixture)]
        found = faded(of)
        if found is not None and found.keepers >= LEAST_SHOWN:
            name = Say("pool-class", _OfClass(share(strength / 100.0), fixture))
            yield _faded(name, found.tubes, found.keepers, found.month.best)


def _faded(name: Say | None, tubes: int, keepers: int, month: float) -> PoolFading:
    is_shown = keepers >= LEAST_SHOWN
    return PoolFading(name, tubes, keepers, share(1.0 - month) if is_shown else None)
