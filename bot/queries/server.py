"""The questions of a group's moderators: settings, own figures, log, counts, boards."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.kept.boards import Topic
from bot.language.choices import read_choice
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_number
from bot.language.wanted import UpTo
from bot.queries.options import AnimalName, Readings, ScreenOption, Text, TubeLength
from bot.queries.query import Option, Query, reading
from bot.queries.saved import (
    BoardTopic,
    LampName,
    MaybeTongue,
    MaybeUnits,
    NewName,
    ScientificName,
    ScreenName,
    Site,
    ZoneName,
)

__all__ = [
    "SUBJECTS",
    "AnimalQuery",
    "AnswersQuery",
    "BoardQuery",
    "DropQuery",
    "LampQuery",
    "ScreenQuery",
    "SettingsQuery",
    "ShowQuery",
    "StatsQuery",
    "TargetQuery",
    "TopicQuery",
]

SUBJECTS = {
    "uvi": ("uv", "uv index"),
    "basking": ("basking surface", "surface", "hot spot"),
    "warm": ("warm air", "warm end"),
    "cool": ("cool air", "cool end"),
    "night floor": ("night", "night low", "floor"),
    "night off": ("night heat off", "thermostat", "off"),
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
_Shown = Annotated[
    str, reading(lambda text: read_choice(text, _SHOWN)), Option(choices=tuple(_SHOWN))
]


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

    units: MaybeUnits | None = Field(
        None, description="shown first: in (with °F), cm (with °C), or none", examples=["cm"]
    )
    animal: AnimalName = Field(
        "", description="taken where none is named, or none", examples=["bearded dragon"]
    )
    site: Site | None = Field(
        None,
        description="where the guide is published, or none",
        examples=["https://guide.example"],
    )
    language: MaybeTongue | None = Field(
        None, description="the language of answers here: en, de, or none", examples=["de"]
    )
    zone: ZoneName = Field(
        "", description="the group's time zone, or none", examples=["Europe/Berlin"]
    )

    def asks_of_an_animal(self) -> bool:
        """Say that no animal is taken for one that was not named."""
        return False


class AnswersQuery(Query):
    """Who sees the answers in this channel."""

    show: _Shown = Field(
        description="private: the asker alone; public: the channel; usual", examples=["public"]
    )


class LampQuery(Query):
    """Keep a lamp class of the group's own, from meter readings."""

    name: NewName = Field(description="a name for the lamp", examples=["Hood by the door"])
    readings: Readings = Field(
        description="UV index read, and how far from the tube: 4.2 at 12 in, 2.9 at 15 in",
        examples=["4.2 at 12 in, 2.9 at 15 in"],
    )
    length: TubeLength | None = Field(
        None,
        description="length of the tube or the watts on it: 22in, 85cm, 39W",
        examples=["22in"],
    )
    screen: ScreenOption | None = Field(
        None, description="what was between tube and meter, if anything", examples=["none"]
    )


class ScreenQuery(Query):
    """Keep a screen of the group's own."""

    name: NewName = Field(description="a name for the screen", examples=["Mesh lid"])
    screen: ScreenOption | None = Field(
        None, description="the share: blocks 45% or passes 55%", examples=["passes 55%"]
    )
    readings: Readings | None = Field(
        None, description="UV index read through it: 3.3 at 12 in", examples=["3.3 at 12 in"]
    )
    without: Readings | None = Field(
        None, description="the same read with the screen taken away", examples=["6.0 at 12 in"]
    )


class TargetQuery(Query):
    """Keep a target of the group's own for an animal."""

    animal: AnimalName = Field(description="the animal", examples=["bearded dragon"])
    of: _Subject = Field(description="what the target is of", examples=["basking"])
    range: Text = Field(
        description="from where to where: 95-110F, 3-5 for UV, 10-14h for light",
        examples=["95-110F"],
    )
    best: Text = Field("", description="what to aim for, if known: 103F", examples=["103F"])


class AnimalQuery(Query):
    """Add an animal of the group's own: what it wants, and what it may not have."""

    name: NewName = Field(description="the animal's name", examples=["Moss lizard"])
    scientific: ScientificName = Field(
        "", description="its scientific name", examples=["Lacerta muscosa"]
    )
    uvi: Text = Field("", description="UV index where it basks: 2-3", examples=["2-3"])
    basking: Text = Field("", description="basking surface: 88-93F", examples=["88-93F"])
    warm: Text = Field("", description="warm-end air: 80-84F", examples=["80-84F"])
    cool: Text = Field("", description="cool-end air: 70-76F", examples=["70-76F"])
    night: Text = Field("", description="night heat only below: 58-64F", examples=["58-64F"])
    night_off: Text = Field("", description="night heat off at: 64-66F", examples=["64-66F"])
    hours: Text = Field("", description="light a day: 12-14 hours", examples=["12-14 hours"])
    surface_limit: Text = Field("", description="no surface may be hotter: 104F", examples=["104F"])
    cool_limit: Text = Field(
        "", description="the coolest place may not reach this: 86F", examples=["86F"]
    )
    night_limit: Text = Field("", description="no night may be colder: 52F", examples=["52F"])
    uvi_limit: Text = Field("", description="no UV index may reach this: 6", examples=["6"])


class DropQuery(Query):
    """Take a figure of the group's own away."""

    lamp: LampName = Field("", description="the lamp that goes", examples=["Hood by the door"])
    screen: ScreenName = Field("", description="the screen that goes", examples=["Mesh lid"])
    animal: AnimalName = Field(
        "",
        description="an animal of the group's own, or the one whose target goes",
        examples=["bearded dragon"],
    )
    of: _Subject | None = Field(None, description="which target goes", examples=["basking"])

    def asks_of_an_animal(self) -> bool:
        """Say that no animal is taken for one that was not named."""
        return False


class StatsQuery(Query):
    """What was asked in the last weeks."""

    weeks: _Weeks = Field(8, description="how many weeks back, 1 to 104", examples=["8"])


class TopicQuery(Query):
    """A board by its topic."""

    topic: BoardTopic = Field(
        description="what it is about: distances, temperatures, first-day or guide",
        examples=["distances"],
    )


class BoardQuery(TopicQuery):
    """A board by its topic, for an animal."""

    animal: AnimalName = Field(
        "", description="the animal; else the group's", examples=["bearded dragon"]
    )

    def asks_of_an_animal(self) -> bool:
        """Say whether the topic is about an animal."""
        return self.topic in (Topic.DISTANCES, Topic.TEMPERATURES)
