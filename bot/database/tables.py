"""The tables as they are today; the migrations lead there from every earlier version."""

from datetime import UTC, date, datetime
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Date,
    DateTime,
    Dialect,
    Double,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    String,
    TypeDecorator,
    UniqueConstraint,
)
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

__all__ = [
    "ROW_ID",
    "AnimalRow",
    "BoardRow",
    "ChangeRow",
    "ChannelRow",
    "CountRow",
    "EnclosureRow",
    "KeeperRow",
    "LampRow",
    "ReadingRow",
    "ReminderRow",
    "ScreenRow",
    "ServerRow",
    "Table",
    "TargetRow",
    "UtcTime",
    "WrongRow",
]

# SQLite counts up only in a column of its own integer type.
ROW_ID = BigInteger().with_variant(Integer, "sqlite")


class UtcTime(TypeDecorator[datetime]):
    """A moment, kept in UTC; SQLite keeps no zone, so it is added again on the way out."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Return the moment in UTC; one without a zone is a mistake of ours."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a moment to be kept has a zone")
        return value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Return the moment with its zone."""
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Table(DeclarativeBase):
    """What every table shares."""

    metadata = MetaData(
        naming_convention={
            "pk": "pk_%(table_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        }
    )
    type_annotation_map = {  # noqa: RUF012  SQLAlchemy reads it as a plain class attribute
        int: BigInteger,
        float: Double,
        str: String,
        datetime: UtcTime,
        date: Date,
        dict[str, Any]: JSON,
    }


def _own_id() -> Mapped[int]:
    return mapped_column(ROW_ID, primary_key=True, autoincrement=True)


def _of_server(*, primary_key: bool = False) -> Mapped[int]:
    return mapped_column(ForeignKey("server.id", ondelete="CASCADE"), primary_key=primary_key)


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
    left_at: Mapped[datetime | None]


class ChannelRow(Table):
    """Who sees the answers of a channel."""

    __tablename__ = "channel"

    server_id: Mapped[int] = _of_server(primary_key=True)
    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    shown: Mapped[str]


class LampRow(Table):
    """A lamp of a group's own; ``point`` is how a small one falls, which has no constant."""

    __tablename__ = "lamp"

    server_id: Mapped[int] = _of_server(primary_key=True)
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

    server_id: Mapped[int] = _of_server(primary_key=True)
    key: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    passes: Mapped[float]
    set_on: Mapped[date]


class TargetRow(Table):
    """A target of a group's own for an animal."""

    __tablename__ = "target"

    server_id: Mapped[int] = _of_server(primary_key=True)
    animal: Mapped[str] = mapped_column(primary_key=True)
    subject: Mapped[str] = mapped_column(primary_key=True)
    low: Mapped[float]
    best: Mapped[float | None]
    high: Mapped[float]
    set_on: Mapped[date]


class AnimalRow(Table):
    """An animal that a group added."""

    __tablename__ = "animal"

    server_id: Mapped[int] = _of_server(primary_key=True)
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

    id: Mapped[int] = _own_id()
    server_id: Mapped[int] = _of_server()
    at: Mapped[datetime]
    who: Mapped[int | None] = mapped_column(index=True)
    what: Mapped[str]
    name: Mapped[str]
    before: Mapped[str]
    after: Mapped[str]


class KeeperRow(Table):
    """A person who keeps something here, or 0 for the keeper at the local console."""

    __tablename__ = "keeper"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    units: Mapped[str | None]
    zone: Mapped[str | None]
    language: Mapped[str | None]


class EnclosureRow(Table):
    """A keeper's enclosure with its set-up."""

    __tablename__ = "enclosure"
    __table_args__ = (UniqueConstraint("keeper_id", "key"),)

    id: Mapped[int] = _own_id()
    keeper_id: Mapped[int] = mapped_column(ForeignKey("keeper.id", ondelete="CASCADE"))
    key: Mapped[str]
    name: Mapped[str]
    setup: Mapped[dict[str, Any]]


class ReadingRow(Table):
    """A dated reading, one a day and kind."""

    __tablename__ = "reading"

    enclosure_id: Mapped[int] = mapped_column(
        ForeignKey("enclosure.id", ondelete="CASCADE"), primary_key=True
    )
    day: Mapped[date] = mapped_column(primary_key=True)
    of: Mapped[str] = mapped_column(primary_key=True)
    value: Mapped[float]
    distance_m: Mapped[float | None]


class ReminderRow(Table):
    """A reminder; ``try_at`` is when to try next, ``due_at`` when it was meant."""

    __tablename__ = "reminder"
    __table_args__ = (Index(None, "state", "try_at"), Index(None, "keeper_id"))

    id: Mapped[int] = _own_id()
    keeper_id: Mapped[int] = mapped_column(ForeignKey("keeper.id", ondelete="CASCADE"))
    enclosure_id: Mapped[int | None] = mapped_column(
        ForeignKey("enclosure.id", ondelete="CASCADE"), index=True
    )
    server_id: Mapped[int | None] = mapped_column(
        ForeignKey("server.id", ondelete="CASCADE"), index=True
    )
    channel_id: Mapped[int | None]
    about: Mapped[str]
    due_at: Mapped[datetime]
    zone: Mapped[str]
    every_days: Mapped[int | None]
    occurrence: Mapped[int]
    state: Mapped[str]
    try_at: Mapped[datetime]
    attempt: Mapped[int]
    failures: Mapped[int]
    claimed_by: Mapped[str]
    trouble: Mapped[str]


class BoardRow(Table):
    """A pinned summary, one a topic and channel."""

    __tablename__ = "board"
    __table_args__ = (UniqueConstraint("channel_id", "topic"), Index(None, "server_id"))

    id: Mapped[int] = _own_id()
    server_id: Mapped[int] = _of_server()
    channel_id: Mapped[int]
    topic: Mapped[str]
    animal: Mapped[str | None]
    message_id: Mapped[int | None]
    pinned: Mapped[bool]
    fingerprint: Mapped[str]
    state: Mapped[str]
    trouble: Mapped[str]
    look_at: Mapped[datetime] = mapped_column(index=True)
    wish: Mapped[int]
    claimed_by: Mapped[str]


class CountRow(Table):
    """How often something was asked in a week of a server: no text, no person."""

    __tablename__ = "count"

    server_id: Mapped[int] = _of_server(primary_key=True)
    week: Mapped[str] = mapped_column(primary_key=True)
    kind: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(primary_key=True)
    times: Mapped[int]


class WrongRow(Table):
    """A question whose answer somebody called wrong: its values, no text, no person."""

    __tablename__ = "wrong"
    __table_args__ = (Index(None, "server_id", "id"),)

    id: Mapped[int] = _own_id()
    server_id: Mapped[int] = _of_server()
    day: Mapped[date]
    command: Mapped[str]
    given: Mapped[dict[str, Any]]
