"""The two views of a section answer: the enclosure to scale with the maps of UVI in it."""

from functools import partial

from bot.answers.figures import length, uvi_estimate, uvi_range
from bot.answers.section_words import SHADE_HERE
from bot.answers.uv_parts import lamp_name, screen_phrase
from bot.drawing import End, Place
from bot.language.quantities import Units
from bot.questions.setup.side import SideWords, side_views
from bot.reply import Picture
from calc.setup.set_up import SetUp
from calc.uv.patches import SHADE_UVI

__all__ = ["section_picture"]

_NAMES = ("strongest", "weakest")


def section_picture(set_up: SetUp, whom: str, alt: str, units: Units) -> Picture:
    """Return the enclosure seen from the front, and below it from its end."""
    tube, count = set_up.tubes[0], len(set_up.tubes)
    label = lamp_name(tube.lamp)
    many = "" if count == 1 else f"{count} tubes, each "
    wanted = uvi_range(*(set_up.uvi_wanted or (0.0, 0.0)))
    shade = SHADE_HERE[set_up.shade].format(uvi=SHADE_UVI) if set_up.shade else ""
    places = tuple(
        Place(spot.at_m[0], spot.at_m[2], f"{name}: UVI {uvi_estimate(spot.value)}")
        for name, spot in zip(_NAMES, set_up.spots, strict=True)
        if spot.at_m and spot.value
    )
    x_m = set_up.stands[0].place.middle_m[0]
    words = SideWords(
        length=partial(length, units=units),
        title=f"Where the UV goes, for {whom}",
        subtitle=f"{many}{label}, {screen_phrase(tube.screen)}",
        tube=f"UV tube {label}",
        tubes="UV tube" if count == 1 else f"{count} UV tubes",
        lamp="heat lamp",
        lid="screen",
        stand="platform",
        across=f"Seen from the warm end, cut {length(x_m, units)} from it",
        note="The maps are those of a level back; above, under the middle of the depth; hides are "
        "not in them.",
        ends=(
            End("warm end", f"UVI {wanted} to bask in", True),
            End("cool end", shade, False),
        ),
        places=places,
    )
    return Picture(alt=alt, drawing=side_views(set_up, words))
