"""The tables of keepers: what they keep, and what they share."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, ForeignKey, Index, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from bot.database.table import Table, own_id

__all__ = [
    "AdviceRow",
    "CaseRow",
    "EnclosureRow",
    "KeeperRow",
    "ReadingRow",
    "ReminderRow",
    "SpareRow",
    "ToldRow",
]


class KeeperRow(Table):
    """A person who keeps something here, or 0 for the keeper at the local console.

    ``asked_on``: when this person was asked, once, whether a group may have the readings.
    """

    __tablename__ = "keeper"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    units: Mapped[str | None]
    zone: Mapped[str | None]
    language: Mapped[str | None]
    asked_on: Mapped[date | None]


class EnclosureRow(Table):
    """A keeper's enclosure with its set-up."""

    __tablename__ = "enclosure"
    __table_args__ = (UniqueConstraint("keeper_id", "key"),)

    id: Mapped[int] = own_id()
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


class SpareRow(Table):
    """A UV lamp that a keeper has in stock."""

    __tablename__ = "spare"

    keeper_id: Mapped[int] = mapped_column(
        ForeignKey("keeper.id", ondelete="CASCADE"), primary_key=True
    )
    key: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    lamp: Mapped[str]
    tube_percent: Mapped[float | None]
    tube_length_m: Mapped[float | None]
    bought_on: Mapped[date | None]


class ToldRow(Table):
    """Which targets of its animal were told last of an enclosure, and in which group."""

    __tablename__ = "told"

    enclosure_id: Mapped[int] = mapped_column(
        ForeignKey("enclosure.id", ondelete="CASCADE"), primary_key=True, autoincrement=False
    )
    server_id: Mapped[int | None] = mapped_column(
        ForeignKey("server.id", ondelete="SET NULL"), index=True
    )
    animal: Mapped[str]
    targets: Mapped[dict[str, Any]]


class CaseRow(Table):
    """An enclosure that its keeper shares with the helpers of a group, in their channel."""

    __tablename__ = "shared_case"
    __table_args__ = (UniqueConstraint("enclosure_id"),)

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = mapped_column(ForeignKey("server.id", ondelete="CASCADE"), index=True)
    enclosure_id: Mapped[int] = mapped_column(ForeignKey("enclosure.id", ondelete="CASCADE"))
    channel_id: Mapped[int | None]
    opened_at: Mapped[datetime]
    moved_at: Mapped[datetime] = mapped_column(index=True)
    before: Mapped[list[Any]] = mapped_column(JSON)


class AdviceRow(Table):
    """What a helper advised; ``helper`` is emptied when that person asks to be forgotten."""

    __tablename__ = "advice"

    id: Mapped[int] = own_id()
    case_id: Mapped[int] = mapped_column(
        ForeignKey("shared_case.id", ondelete="CASCADE"), index=True
    )
    helper: Mapped[int | None] = mapped_column(index=True)
    day: Mapped[date]
    what: Mapped[str]
    of: Mapped[str | None]
    value: Mapped[float | None]


class ReminderRow(Table):
    """A reminder; ``try_at`` is when to try next, ``due_at`` when it was meant.

    ``moved`` are the targets that a group changed, with the old ones.
    """

    __tablename__ = "reminder"
    __table_args__ = (Index(None, "state", "try_at"), Index(None, "keeper_id"))

    id: Mapped[int] = own_id()
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
    case_id: Mapped[int | None] = mapped_column(
        ForeignKey("shared_case.id", ondelete="CASCADE"), index=True
    )
    moved: Mapped[list[Any] | None] = mapped_column(JSON(none_as_null=True))
