"""The white light in the picture of a checked set-up: its bar, how bright it is, no verdict.

Words: ``words/<language>/check.ftl``.
"""

from collections.abc import Iterator
from dataclasses import replace

from bot.drawing import Bar, Gauge, Place, Placeless, Side, Tone
from bot.facts import Say
from bot.layered import Teller
from bot.questions.setup.check_facts import Checked
from bot.questions.setup.usual_box import Laid
from bot.questions.setup.white import WhiteTold

__all__ = ["light_alt", "with_light"]

# How much of a tube a white lamp is drawn over; to where, and how far under the lid, without.
_OF_TUBE, _TO, _UNDER = 0.64, 0.9, 0.06
# The rump, as a share of the animal from its middle.
_RUMP = 0.15


def with_light(side: Side, facts: Checked, laid: Laid, teller: Teller) -> Side:
    """Return the drawing with one bar for all white lamps that were told, and how bright it is.

    Where that was not worked out, it says so; where no white lamp was told, nothing is added.
    """
    if not facts.has_white:
        return side
    lit = replace(side, lights=(Bar(*_over(laid), teller.say(Say("sun-bar"))),))
    white = facts.white
    if white is None:
        open_ = Placeless(teller.say(Say("check-picture-light-open")), Tone.PLAIN)
        return replace(lit, placeless=(*lit.placeless, open_))
    return replace(lit, places=(*lit.places, _bright(white, laid, teller)))


def light_alt(facts: Checked) -> Iterator[Say]:
    """Yield the same for who cannot see it."""
    if facts.white is not None:
        yield Say("sun-alt-light", facts.white)
    elif facts.has_white:
        yield Say("check-picture-light-open")


def _over(laid: Laid) -> tuple[float, float, float]:
    """Return where the bar is drawn [m]: beside the heat lamp and the name of the tube."""
    if laid.tube is not None:
        first, last, up_m = laid.tube
        return first, first + _OF_TUBE * (last - first), up_m
    box = laid.box
    first = 2.0 * laid.lamp[0] if laid.lamp else (1.0 - _TO) * box.length_m
    return first, _TO * box.length_m, (1.0 - _UNDER) * box.height_m


def _bright(white: WhiteTold, laid: Laid, teller: Teller) -> Place:
    """Return how bright white lamps make it on the back, on a plate without a verdict."""
    say = teller.say
    gauge = Gauge(
        label=say(Say("check-picture-light")),
        where=say(Say("check-picture-no-need")),
        wanted=None,
        wanted_text="",
        reading=None,
        reading_text=say(Say("check-picture-lux", white)),
        verdict=say(white.said),
    )
    return Place(laid.x_m + _RUMP * laid.long_m, laid.back_z_m, "", gauge=gauge)
