"""The kinds of option that only questions about saved data have."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units, read_duration, single
from bot.language.tongue import Tongue
from bot.language.wanted import UpTo
from bot.language.zones import read_zone
from bot.queries.query import Option, reading
from bot.saved.boards import Topic
from bot.saved.reminders import About
from bot.saved.values import LONGEST_NAME, name_of, scientific_of, url_of

__all__ = [
    "CLEARED",
    "NEW",
    "NONE",
    "AboutOption",
    "BoardTopic",
    "Cleared",
    "Days",
    "Document",
    "EnclosureName",
    "LampInStock",
    "LampName",
    "MaybeTongue",
    "MaybeUnits",
    "NewName",
    "ScientificName",
    "ScreenName",
    "Site",
    "Sure",
    "Where",
    "ZoneName",
]

NONE = "none"
NEW = "new"


class Cleared:
    """Stands for a setting that is taken away."""


CLEARED = Cleared()


def read_name(text: str) -> str:
    """Read a name that something is kept under."""
    try:
        return name_of(text)
    except ValueError as error:
        wanted = Say("wanted-name", UpTo(LONGEST_NAME))
        raise NotUnderstoodError(text, wanted, "Pebble's box") from error


def _read_scientific(text: str) -> str:
    try:
        return scientific_of(text)
    except ValueError as error:
        raise NotUnderstoodError(text, Say("wanted-scientific"), "Lacerta muscosa") from error


def _read_units(text: str) -> Units | Cleared:
    names = {"in": ("inch", "inches", "f", "fahrenheit"), "cm": ("c", "celsius", "metric")}
    chosen = read_choice(text, {**names, NONE: ("off", "nothing", "default")})
    return CLEARED if chosen == NONE else Units(chosen)


def _read_tongue(text: str) -> Tongue | Cleared:
    names = {"en": ("english", "englisch"), "de": ("german", "deutsch")}
    chosen = read_choice(text, {**names, NONE: ("off", "nothing", "default")})
    return CLEARED if chosen == NONE else Tongue(chosen)


def _read_site(text: str) -> str | Cleared:
    if text.strip().lower() == NONE:
        return CLEARED
    try:
        return url_of(text)
    except ValueError as error:
        raise NotUnderstoodError(
            text, Say("wanted-address"), "https://example.org/guide"
        ) from error


def _read_zone(text: str) -> str:
    return NONE if text.strip().lower() == NONE else read_zone(text).key


def _read_days(text: str) -> int:
    days = round(single(read_duration(text)).low / 86_400.0)
    if not 1 <= days <= 1098:
        raise NotUnderstoodError(text, Say("wanted-how-often"), "3 months")
    return days


_ABOUT: Mapping[str, tuple[str, ...]] = {
    About.METER.value: ("read the meter", "meter reading", "uv", "uvi", "reading", "measure"),
    About.TUBE.value: ("replace the tube", "lamp", "replace", "new tube", "bulb"),
    About.SEASON.value: ("season change", "seasons", "winter", "summer", "timer"),
    About.CHECK.value: ("check the set up", "temperatures", "temps", "check up"),
}
_TOPICS: Mapping[str, tuple[str, ...]] = {
    Topic.DISTANCES.value: ("distance", "tubes", "uv"),
    Topic.TEMPERATURES.value: ("temperature", "temps", "heat"),
    Topic.FIRST_DAY.value.replace("-", " "): ("first", "checklist", "day one", "start"),
    Topic.GUIDE.value: ("pages", "links", "guide links"),
    Topic.WELCOME.value: ("hello", "newcomers", "new members"),
}
_YES: Mapping[str, tuple[str, ...]] = {"yes": ("y", "sure", "true"), "no": ("n", "false")}
_WHERE: Mapping[str, tuple[str, ...]] = {
    "message": ("dm", "direct message", "private", "pm"),
    "here": ("channel", "this channel", "in the channel", "public"),
}


def _read_topic(text: str) -> Topic:
    return Topic(read_choice(text, _TOPICS).replace(" ", "-"))


def _choices(names: Mapping[str, object]) -> Option:
    return Option(choices=tuple(names))


NewName = Annotated[str, reading(read_name), Option()]
EnclosureName = Annotated[str, reading(read_name), Option(completes="enclosure")]
LampInStock = Annotated[str, reading(read_name), Option(completes="stock")]
LampName = Annotated[str, reading(read_name), Option(completes="own_lamp")]
ScientificName = Annotated[str, reading(_read_scientific), Option()]
ScreenName = Annotated[str, reading(read_name), Option(completes="own_screen")]
MaybeUnits = Annotated[Units | Cleared, reading(_read_units), Option(choices=("in", "cm", NONE))]
MaybeTongue = Annotated[Tongue | Cleared, reading(_read_tongue), Option(choices=("en", "de", NONE))]
Site = Annotated[str | Cleared, reading(_read_site), Option()]
ZoneName = Annotated[str, reading(_read_zone), Option(completes="zone")]
Days = Annotated[int, reading(_read_days), Option()]
AboutOption = Annotated[
    About, reading(lambda text: About(read_choice(text, _ABOUT))), _choices(_ABOUT)
]
BoardTopic = Annotated[Topic, reading(_read_topic), _choices(_TOPICS)]
Sure = Annotated[str, reading(partial(read_choice, names=_YES)), _choices(_YES)]
Where = Annotated[str, reading(partial(read_choice, names=_WHERE)), _choices(_WHERE)]
Document = Annotated[str, Option(document=True)]
