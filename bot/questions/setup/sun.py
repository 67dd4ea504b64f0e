"""One patch of sun: the share of a basking place where UV, heat and light meet, and shade of all.

Words: ``words/<language>/sun.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Say, Share, share
from bot.layered import Row
from bot.questions.setup.white import WhiteTold
from calc.setup.lights import LightThere
from calc.setup.sun_patch import SunPatch

__all__ = ["SunTold", "sun_alt", "sun_note", "sun_rows", "sun_told"]


@dataclass(frozen=True, slots=True)
class SunTold:
    """Shares of the platform, and of the whole box without hides; ``white``: by white lamps."""

    sun: Share
    open_shade: Share
    white: bool


def sun_told(found: SunPatch | None, light: LightThere | None) -> SunTold | None:
    """Return where the three parts of the sun meet; None without a heat lamp."""
    if found is None:
        return None
    return SunTold(share(found.all_three), share(found.shade), white=light is not None)


def sun_rows(facts: SunTold | None, white: WhiteTold | None) -> Iterator[Row]:
    """Yield what is told of it, and how bright it is; without a white lamp that is not known."""
    if facts is not None:
        yield Row(Say("sun-label"), Say("sun-patch", facts))
        yield Row(Say("sun-label-shade"), Say("sun-shade", facts))
    told = Say("sun-light-unknown") if white is None else Say("sun-light", white)
    yield Row(Say("sun-label-light"), told)
    if white is not None and white.warms is not None:
        yield Row(Say("sun-label-warms"), Say("sun-warms", white.warms))


def sun_note(facts: SunTold | None) -> Iterator[Say]:
    """Yield what the strip on the platform means, where there is one."""
    if facts is not None and facts.sun.best > 0.0:
        yield Say("sun-note")


def sun_alt(facts: SunTold | None, white: WhiteTold | None = None) -> Iterator[Say]:
    """Yield the same for who cannot see it."""
    if facts is not None:
        yield Say("sun-alt", facts)
    if white is not None:
        yield Say("sun-alt-light", white)
