"""What was tried to mend the light of a box, and what came of it, as facts."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Bound, Length, Say, Share, Uvi, metres, share, uvi
from bot.questions.uv.tubes import tube_told
from calc.setup.mends import Mend, MendKind
from calc.setup.room import Room
from calc.uv.patches import Shade

__all__ = ["SectionMend", "SectionMove", "mends_told"]

_WARMED = {MendKind.PLATFORM_LOWER, MendKind.PLATFORM_HIGHER, MendKind.HEAT_LAMP}


@dataclass(frozen=True, slots=True)
class SectionMove:
    """One thing that is moved, exchanged or added, and how things are then.

    ``away`` is from tube to back, ``along`` and ``across`` where the platform has its middle.
    """

    kind: MendKind
    by: Length
    away: Length
    along: Length
    across: Length
    count: int
    lamp: Say
    long: Length


@dataclass(frozen=True, slots=True)
class SectionMoves:
    """A move, and those that go with it."""

    move: Say
    then: Say | None


@dataclass(frozen=True, slots=True)
class SectionMend:
    """Moves that are made at once, and what came of them on top of those before.

    ``hide``: where one goes, in place of a move; ``instead``: it takes the place of the mend
    before it. ``warmth`` is how much of the warmed patch has the UV, where that is what it mends.
    """

    moves: tuple[SectionMove, ...]
    hide: Length | None
    instead: bool
    warmth: Share | None
    uvi: Uvi
    wanted: Uvi
    in_range: Share
    shade: Share | None

    @property
    def all_moves(self) -> Say:
        """Return every move, one sentence each."""
        told: Say | None = None
        for move in reversed(self.moves):
            told = Say("section-moves", SectionMoves(_told(move), told))
        assert told is not None
        return told

    @property
    def last(self) -> Say:
        """Return the last move in brief."""
        return self.briefly[-1]

    @property
    def briefly(self) -> tuple[Say, ...]:
        """Return every move in brief."""
        return tuple(_short(move) for move in self.moves)

    @property
    def warms_anew(self) -> bool:
        """Say whether it moves the warmth, so that the surface is to be read again."""
        return any(move.kind in _WARMED for move in self.moves)


def _told(move: SectionMove) -> Say:
    return Say.by("section-move", move.kind, move)


def _short(move: SectionMove) -> Say:
    return Say.by("section-do", move.kind, move)


def mends_told(room: Room, mends: tuple[Mend, ...]) -> tuple[SectionMend, ...]:
    """Return each mend with what came of it when it was tried."""
    return tuple(_mends(room, mends))


def _mends(room: Room, mends: tuple[Mend, ...]) -> Iterator[SectionMend]:
    now = room
    for mend in mends:
        met, new = mend.met, mend.room
        heated = met.heat_in_range if MendKind.HEAT_LAMP in mend.kinds else None
        shaded = met.shade in (Shade.THERE, Shade.PROBABLY)
        yield SectionMend(
            moves=tuple(_move(kind, now, new) for kind in mend.kinds if not mend.hide),
            hide=metres(mend.hide.x_m) if mend.hide else None,
            instead=mend.instead,
            warmth=None if heated is None else share(heated.best),
            uvi=uvi(met.strongest.uvi),
            wanted=uvi(new.low_uvi, (new.low_uvi, new.high_uvi)),
            in_range=share(met.in_range.best),
            shade=share(met.shade_share.best) if shaded else None,
        )
        if not mend.hide and not mend.instead:
            now = new


def _move(kind: MendKind, old: Room, new: Room) -> SectionMove:
    x_m, y_m = new.platform.middle_m
    return SectionMove(
        kind=kind,
        by=metres(abs(new.platform.top_m - old.platform.top_m)),
        away=metres(new.tubes[0].z_m - new.back_z_m, bound=Bound.AT_LEAST),
        along=metres(x_m),
        across=metres(y_m),
        count=len(new.tubes),
        lamp=Say(
            "tubes-name", tube_told(new.tubes[0].lamp, None, to_buy=kind is MendKind.OTHER_TUBE)
        ),
        long=metres(new.tube_length_m),
    )
