"""One patch of sun: the share of a basking place where UV, heat and light meet, and shade of all.

Words: ``words/<language>/sun.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Say, Share, share
from bot.layered import Row
from calc.setup.room import Room
from calc.setup.sun_patch import sun_patch
from calc.uv.patches import Patches

__all__ = ["SunTold", "sun_rows", "sun_told"]


@dataclass(frozen=True, slots=True)
class SunTold:
    """Shares of the platform, and of the whole box without hides."""

    sun: Share
    open_shade: Share


def sun_told(room: Room, met: Patches) -> SunTold | None:
    """Return where the three parts of the sun meet; None without a heat lamp."""
    if room.heat is None:
        return None
    found = sun_patch(room, met)
    return SunTold(share(found.all_three), share(found.shade))


def sun_rows(facts: SunTold | None) -> Iterator[Row]:
    """Yield what is told of it."""
    if facts is not None:
        yield Row(Say("sun-label"), Say("sun-patch", facts))
        yield Row(Say("sun-label-shade"), Say("sun-shade", facts))
