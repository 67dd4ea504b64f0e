"""The table of readings that keepers gave to their groups."""

from datetime import date
from typing import Any

from sqlalchemy import JSON, ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from bot.database.table import Table, of_server, own_id

__all__ = ["PooledRow"]


class PooledRow(Table):
    """A reading that a keeper gave to a group; who that is leaves the database for nobody."""

    __tablename__ = "pooled"
    __table_args__ = (Index(None, "server_id", "id"),)

    id: Mapped[int] = own_id()
    server_id: Mapped[int] = of_server()
    keeper_id: Mapped[int] = mapped_column(ForeignKey("keeper.id", ondelete="CASCADE"), index=True)
    enclosure_id: Mapped[int | None] = mapped_column(
        ForeignKey("enclosure.id", ondelete="SET NULL"), index=True
    )
    day: Mapped[date]
    lamp: Mapped[str]
    own_lamp: Mapped[str | None]
    percent: Mapped[float | None]
    reflector: Mapped[str | None]
    screen: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))
    tube_length_m: Mapped[float | None]
    age_days: Mapped[int | None]
    distance_m: Mapped[float]
    uvi: Mapped[float]
