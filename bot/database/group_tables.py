"""The tables of groups."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, Index, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from bot.database.table import Table, of_server, own_id

__all__ = [
    "AnimalRow",
    "BoardRow",
    "ChangeRow",
    "ChannelRow",
    "CountRow",
    "LampRow",
    "PostRow",
    "PublicRow",
    "ScreenRow",
    "ServerRow",
    "TargetRow",
    "WrongRow",
]


class ServerRow(Table):
    """A Discord server, or 0 for the group of the local console."""

    __tablename__ = "server"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    units: Mapped[str | None]
    animal: Mapped[str | None]
    guide_url: Mapped[str | None]
    zone: Mapped[str | None]
    language: Mapped[str | None]
    vets: Mapped[str | None]
    helpers: Mapped[int | None]
    helper_role: Mapped[int | None]
    left_at: Mapped[datetime | None]


class ChannelRow(Table):
    """Who sees the answers of a channel."""

    __tablename__ = "channel"

    server_id: Mapped[int] = of_server(primary_key=True)
    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    shown: Mapped[str]


class LampRow(Table):
    """A lamp of a group's own; ``point`` is how a small one falls, which has no constant."""

    __tablename__ = "lamp"

    server_id: Mapped[int] = of_server(primary_key=True)
    key: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    kind: Mapped[str] = mapped_column(server_default="T5 HO tube")
    constant_uvi_m: Mapped[float | None]
    doubt_factor: Mapped[float]
    readings: Mapped[int]
    lit_length_m: Mapped[float | None]
    point: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))
    set_on: Mapped[date]


class ScreenRow(Table):
    """A screen of a group's own."""

    __tablename__ = "screen"

    server_id: Mapped[int] = of_server(primary_key=True)
    key: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    passes: Mapped[float]
    set_on: Mapped[date]


class TargetRow(Table):
    """A target of a group's own for an animal."""

    __tablename__ = "target"

    server_id: Mapped[int] = of_server(primary_key=True)
    animal: Mapped[str] = mapped_column(primary_key=True)
    subject: Mapped[str] = mapped_column(primary_key=True)
    low: Mapped[float]
    best: Mapped[float | None]
    high: Mapped[float]
    set_on: Mapped[date]


class AnimalRow(Table):
    """An animal that a group added."""

    __tablename__ = "animal"

    server_id: Mapped[int] = of_server(primary_key=True)
    key: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    scientific: Mapped[str]
    wants: Mapped[dict[str, Any]]
    surface_limit_c: Mapped[float | None]
    coolest_limit_c: Mapped[float | None]
    night_limit_c: Mapped[float | None]
    uvi_limit: Mapped[float | None]
    set_on: Mapped[date]
    back_m: Mapped[float | None]
    life: Mapped[str | None]


class ChangeRow(Table):
    """A line of a group's log; ``who`` is emptied when that person asks to be forgotten."""

    __tablename__ = "change"
    __table_args__ = (Index(None, "server_id", "id"),)

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = of_server()
    at: Mapped[datetime]
    who: Mapped[int | None] = mapped_column(index=True)
    what: Mapped[str]
    name: Mapped[str]
    before: Mapped[str]
    after: Mapped[str]


class BoardRow(Table):
    """A pinned summary, one a topic and channel."""

    __tablename__ = "board"
    __table_args__ = (
        UniqueConstraint("server_id", "channel_id", "topic"),
        Index(None, "channel_id"),
    )

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = of_server()
    channel_id: Mapped[int]
    topic: Mapped[str]
    animals: Mapped[list[str]]
    message_id: Mapped[int | None]
    pinned: Mapped[bool]
    fingerprint: Mapped[str]
    state: Mapped[str]
    trouble: Mapped[str]
    look_at: Mapped[datetime] = mapped_column(index=True)
    wish: Mapped[int]
    claimed_by: Mapped[str]
    told: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))
    moved: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))


class CountRow(Table):
    """How often something was asked in a week of a server: no text, no person."""

    __tablename__ = "count"

    server_id: Mapped[int] = of_server(primary_key=True)
    week: Mapped[str] = mapped_column(primary_key=True)
    kind: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(primary_key=True)
    times: Mapped[int]


class WrongRow(Table):
    """A question whose answer somebody called wrong: its values, no text, no person."""

    __tablename__ = "wrong"
    __table_args__ = (Index(None, "server_id", "id"),)

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = of_server()
    day: Mapped[date]
    command: Mapped[str]
    given: Mapped[dict[str, Any]]


class PublicRow(Table):
    """Who may post publicly in a channel, and how often; channel 0 is everywhere."""

    __tablename__ = "public_rule"

    server_id: Mapped[int] = of_server(primary_key=True)
    channel_id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    who: Mapped[str | None]
    most: Mapped[int | None]


class PostRow(Table):
    """A public post: no text; ``who`` is emptied when that person asks to be forgotten."""

    __tablename__ = "public_post"
    __table_args__ = (Index(None, "server_id", "at"),)

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = of_server()
    at: Mapped[datetime]
    who: Mapped[int | None] = mapped_column(index=True)
    channel_id: Mapped[int]
    command: Mapped[str]
    pings: Mapped[int]
