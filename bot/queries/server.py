"""The questions of a group's moderators: settings, own figures, log, counts, boards."""

import re
from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.choices import read_choice
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_number
from bot.language.uv_lamps import UvLamp
from bot.language.wanted import UpTo
from bot.queries.options import (
    AnimalName,
    AnimalNames,
    Length,
    Readings,
    ScreenOption,
    Text,
    TubeLength,
    UvLampKind,
)
from bot.queries.query import Option, Query, reading
from bot.queries.saved import (
    CLEARED,
    NONE,
    BoardTopic,
    Cleared,
    LampName,
    MaybeTongue,
    MaybeUnits,
    NewName,
    ScientificName,
    ScreenName,
    Site,
    Sure,
    ZoneName,
)
from bot.saved.boards import Topic
from bot.saved.public import MOST_AN_HOUR
from bot.saved.values import LONGEST_LINE, line_of

__all__ = [
    "SUBJECTS",
    "AnimalQuery",
    "AnswersQuery",
    "BoardQuery",
    "DropQuery",
    "HelpersQuery",
    "LampQuery",
    "PublicQuery",
    "ScreenQuery",
    "SettingsQuery",
    "ShowQuery",
    "StatsQuery",
    "TargetQuery",
    "TopicQuery",
    "VetsQuery",
    "WrongQuery",
]

SUBJECTS = {
    "uvi": ("uv", "uv index"),
    "basking": ("basking surface", "surface", "hot spot"),
    "warm": ("warm air", "warm end"),
    "cool": ("cool air", "cool end"),
    "night floor": ("night", "night low", "floor"),
    "night off": ("night heat off", "thermostat", "off"),
    "water": ("water temperature", "water warmth"),
    "depth": ("water depth", "depth of water", "deep"),
    "hours": ("light", "light hours", "day length"),
}
_MOST_WEEKS = 104
_SHOWN = {
    "private": ("alone", "hidden", "ephemeral"),
    "public": ("open", "shown", "everyone"),
    "usual": ("default", "none", "normal"),
}
_Subject = Annotated[
    str, reading(lambda text: read_choice(text, SUBJECTS)), Option(choices=tuple(SUBJECTS))
]
_LIVES = {
    "climbs": ("climber", "arboreal", "tree", "branches"),
    "water": ("swims", "aquatic", "semi-aquatic", "turtle"),
    "digs": ("burrows", "burrower", "fossorial"),
    "night": ("nocturnal", "crepuscular", "night active"),
}
_Life = Annotated[
    str, reading(lambda text: read_choice(text, _LIVES)), Option(choices=tuple(_LIVES))
]
_Shown = Annotated[
    str, reading(lambda text: read_choice(text, _SHOWN)), Option(choices=tuple(_SHOWN))
]


_WHERE = {"here": ("this channel", "channel"), "nowhere": ("none", "off", "no")}
_AskHelpers = Annotated[
    str, reading(lambda text: read_choice(text, _WHERE)), Option(choices=tuple(_WHERE))
]


def _read_line(text: str) -> str | Cleared:
    if text.strip().lower() == NONE:
        return CLEARED
    try:
        return line_of(text)
    except ValueError as error:
        wanted = Say("wanted-line", UpTo(LONGEST_LINE))
        raise NotUnderstoodError(text, wanted, "the channel #reptile-vets") from error


_VetsLine = Annotated[str | Cleared, reading(_read_line), Option()]


_FILES = {"csv": ("table", "spreadsheet"), "json": ()}
_FileKind = Annotated[
    str, reading(lambda text: read_choice(text, _FILES)), Option(choices=tuple(_FILES))
]


_WHO = {
    "everybody": ("everyone", "all", "anybody"),
    "helpers": ("helper", "role"),
    "moderators": ("moderator", "mods", "moderators only"),
    "usual": ("default", "none", "normal"),
}
_PLACES = {
    "here": ("this channel", "channel", "thread", "this thread"),
    "parent": ("forum", "above", "whole forum", "its channel"),
    "everywhere": ("group", "server", "whole group", "all channels"),
}
_Who = Annotated[str, reading(lambda text: read_choice(text, _WHO)), Option(choices=tuple(_WHO))]
_PublicPlace = Annotated[
    str, reading(lambda text: read_choice(text, _PLACES)), Option(choices=tuple(_PLACES))
]


def _read_most(text: str) -> int | Cleared:
    if text.strip().lower() == NONE:
        return CLEARED
    accepted, example = Say("wanted-an-hour", UpTo(MOST_AN_HOUR)), "10"
    most = round(read_number(text, accepted, example))
    if not 1 <= most <= MOST_AN_HOUR:
        raise NotUnderstoodError(text, accepted, example)
    return most


_ROLE = re.compile(r"(?:<@&)?(\d{5,19})>?")


def _read_role(text: str) -> int | Cleared:
    if text.strip().lower() == NONE:
        return CLEARED
    found = _ROLE.fullmatch(text.strip())
    if found is None or int(found[1]) >= 2**63:
        raise NotUnderstoodError(text, Say("wanted-role"), "none")
    return int(found[1])


_AnHour = Annotated[int | Cleared, reading(_read_most), Option()]
_Role = Annotated[int | Cleared, reading(_read_role), Option()]


def _read_weeks(text: str) -> int:
    accepted, example = Say("wanted-weeks", UpTo(_MOST_WEEKS)), "8"
    weeks = round(read_number(text, accepted, example))
    if not 1 <= weeks <= _MOST_WEEKS:
        raise NotUnderstoodError(text, accepted, example)
    return weeks


_Weeks = Annotated[
    int,
    reading(_read_weeks),
    Option(choices=("4", "8", "26", "52", "104")),
]


class ShowQuery(Query):
    """What the group has set."""


class SettingsQuery(Query):
    """How the group wants to be answered; none takes a setting away."""

    units: MaybeUnits | None = Field(None, examples=["cm"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    site: Site | None = Field(None, examples=["https://guide.example"])
    language: MaybeTongue | None = Field(None, examples=["de"])
    zone: ZoneName = Field("", examples=["Europe/Berlin"])

    def asks_of_an_animal(self) -> bool:
        """Say that no animal is taken for one that was not named."""
        return False


class AnswersQuery(Query):
    """Who sees the answers in this channel."""

    show: _Shown = Field(examples=["public"])


class LampQuery(Query):
    """Keep a lamp of the group's own, from meter readings."""

    name: NewName = Field(examples=["Hood by the door"])
    readings: Readings = Field(examples=["4.2 at 12 in, 2.9 at 15 in"])
    length: TubeLength | None = Field(None, examples=["22in"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    lamp: UvLampKind = Field(UvLamp.T5_HO, examples=["metal halide lamp"])


class ScreenQuery(Query):
    """Keep a screen of the group's own."""

    name: NewName = Field(examples=["Mesh lid"])
    screen: ScreenOption | None = Field(None, examples=["passes 55%"])
    readings: Readings | None = Field(None, examples=["3.3 at 12 in"])
    without: Readings | None = Field(None, examples=["6.0 at 12 in"])


class TargetQuery(Query):
    """Keep a target of the group's own for an animal."""

    animal: AnimalName = Field(examples=["bearded dragon"])
    of: _Subject = Field(examples=["basking"])
    range: Text = Field(examples=["95-110F"])
    best: Text = Field("", examples=["103F"])


class AnimalQuery(Query):
    """Add an animal of the group's own: what it wants, and what it may not have."""

    name: NewName = Field(examples=["Moss lizard"])
    scientific: ScientificName = Field("", examples=["Lacerta muscosa"])
    uvi: Text = Field("", examples=["2-3"])
    basking: Text = Field("", examples=["88-93F"])
    warm: Text = Field("", examples=["80-84F"])
    cool: Text = Field("", examples=["70-76F"])
    night: Text = Field("", examples=["58-64F"])
    night_off: Text = Field("", examples=["64-66F"])
    water: Text = Field("", examples=["72-78F"])
    depth: Text = Field("", examples=["12-16in"])
    hours: Text = Field("", examples=["12-14 hours"])
    surface_limit: Text = Field("", examples=["104F"])
    cool_limit: Text = Field("", examples=["86F"])
    night_limit: Text = Field("", examples=["52F"])
    uvi_limit: Text = Field("", examples=["6"])
    back: Length | None = Field(None, examples=["2in"])
    life: _Life | None = Field(None, examples=["climbs"])


class DropQuery(Query):
    """Take a figure of the group's own away."""

    lamp: LampName = Field("", examples=["Hood by the door"])
    screen: ScreenName = Field("", examples=["Mesh lid"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    of: _Subject | None = Field(None, examples=["basking"])

    def asks_of_an_animal(self) -> bool:
        """Say that no animal is taken for one that was not named."""
        return False


class VetsQuery(Query):
    """Whom the group calls, shown with every call to a vet."""

    line: _VetsLine = Field(examples=["the channel #reptile-vets"])


class HelpersQuery(Query):
    """Where helpers are asked."""

    ask: _AskHelpers = Field(examples=["here"])


class PublicQuery(Query):
    """Who may post publicly, where, and how often."""

    who: _Who | None = Field(None, examples=["moderators"])
    where: _PublicPlace = Field("here", examples=["everywhere"])
    most: _AnHour | None = Field(None, examples=["10"])
    role: _Role | None = Field(None, examples=["none"])


class WrongQuery(Query):
    """What was called wrong."""

    clear: Sure = Field("no", examples=["yes"])
    file: _FileKind | None = Field(None, examples=["csv"])


class StatsQuery(Query):
    """What was asked in the last weeks."""

    weeks: _Weeks = Field(8, examples=["8"])


class TopicQuery(Query):
    """A board by its topic."""

    topic: BoardTopic = Field(examples=["distances"])


class BoardQuery(TopicQuery):
    """A board by its topic, for one animal or a few."""

    animal: AnimalNames = Field("", examples=["bearded dragon; leopard gecko"])

    def asks_of_an_animal(self) -> bool:
        """Say whether the topic is about an animal."""
        return self.topic in (Topic.DISTANCES, Topic.TEMPERATURES)
