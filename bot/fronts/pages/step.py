"""What one page of the form that asks one thing at a time shows."""

from dataclasses import dataclass

from markupsafe import Markup

from bot import guide
from bot.reply import Picture, Reply

__all__ = ["Given", "Step", "WayOn"]


@dataclass(frozen=True, slots=True)
class WayOn:
    """A way on: what it is called, and where it leads."""

    label: str
    link: str
    drawn: Markup | None = None


@dataclass(frozen=True, slots=True)
class Given:
    """Something that was told, and where to change it."""

    name: str
    value: str
    change: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """What one page of the form shows; with a reply it is the answer."""

    heading: str
    hint: str = ""
    told: str = ""
    choices: tuple[WayOn, ...] = ()
    field: str = ""
    typed: str = ""
    example: str = ""
    page: guide.Page | None = None
    unknown: str = ""
    now: str = ""
    shown: Picture | None = None
    reply: Reply | None = None
    more: tuple[WayOn, ...] = ()
    other: str = ""
