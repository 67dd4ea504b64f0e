"""The first page: one enclosure with a worry at each place, and the animals by what they are."""

from dataclasses import dataclass

from markupsafe import Markup

from bot.drawing import Bar, Place, Side, Tool
from bot.facts import Say
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.kinds import Kind, kinds
from bot.fronts.pages.pictures import inline
from bot.questions.setup.usual_box import laid_out
from bot.reply import Picture
from calc.animals import animals
from calc.quantities import Quantity
from calc.setup.set_up import SetUp, Thing

__all__ = ["Home", "home", "home_picture"]

_ANIMAL = "bearded-dragon"
# Worries that cannot wait, those by their number in the picture, and those that have no place
# in it, each with its page.
_URGENT = (
    (Say("page-worry-vet"), "when-to-call-a-vet"),
    (Say("page-worry-burns"), "when-something-burns"),
    (Say("page-worry-broken"), "a-broken-lamp"),
)
_PLACED = (
    (Say("page-worry-distance"), "measuring-the-distance"),
    (Say("page-worry-basking"), "the-basking-spot"),
    (Say("page-worry-warm"), "warm-end-and-cool-end"),
    (Say("page-worry-cool"), "the-cool-end"),
    (Say("page-worry-night"), "nights"),
    (Say("page-worry-hours"), "day-length"),
)
_MORE = (
    (Say("page-worry-worn"), "when-a-lamp-is-worn-out"),
    (Say("page-worry-bones"), "why-uv-matters"),
    (Say("page-worry-first"), "the-first-weeks"),
)


@dataclass(frozen=True, slots=True)
class Home:
    """What the first page shows: its picture, worries with their pages, animals by kind."""

    picture: Markup | None
    urgent: tuple[tuple[str, str], ...]
    worries: tuple[tuple[str, str], ...]
    more: tuple[tuple[str, str], ...]
    kinds: tuple[Kind, ...]


def home(edition: Edition) -> Home:
    """Return the first page of an edition."""
    return Home(
        picture=inline(home_picture(edition, titled=False)),
        urgent=tuple((edition.say(say), slug) for say, slug in _URGENT),
        worries=tuple((edition.say(say), slug) for say, slug in _PLACED),
        more=tuple((edition.say(say), slug) for say, slug in _MORE),
        kinds=kinds(edition),
    )


def home_picture(edition: Edition, *, titled: bool = True) -> Picture:
    """Return the enclosure in which each worry has its number; untitled under a heading."""
    say = edition.say
    set_up = SetUp(animal=_ANIMAL)
    laid = laid_out(set_up, animals()[_ANIMAL], hung=(Thing.TUBE, Thing.HEAT_LAMP))
    assert laid.tube is not None
    assert laid.lamp is not None
    (x0, x1, under_m), (lamp_x_m, lamp_z_m) = laid.tube, laid.lamp
    drawing = Side(
        title=say(Say("page-worries")) if titled else "",
        subtitle="",
        width_m=laid.box.length_m,
        height_m=laid.box.height_m,
        width_label="",
        height_label="",
        tubes=(Bar(x0, x1, under_m, say(Say("side-tube"))),),
        heat_lamp=Place(lamp_x_m, lamp_z_m, say(Say("side-lamp"))),
        blocks=laid.blocks,
        back=Place(laid.x_m, laid.back_z_m, ""),
        places=(
            Place(x0 + 0.3 * (x1 - x0), under_m - 0.06, ""),
            Place(*laid.at(Quantity.BASKING_SURFACE), "", tool=Tool.INFRARED_GUN),
            Place(lamp_x_m + 0.12, lamp_z_m, ""),
            Place(*laid.at(Quantity.COOL_AIR), "", tool=Tool.PROBE),
            Place(*laid.at(Quantity.NIGHT_AIR), "", tool=Tool.NIGHT),
            Place(*laid.at(Quantity.LIGHT_HOURS), "", tool=Tool.CLOCK),
        ),
        animal=laid.figure,
        animal_m=laid.long_m,
        hide=laid.hide,
    )
    return Picture(alt=say(Say("page-home-alt")), drawing=drawing)
