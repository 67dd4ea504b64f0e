"""What every table shares: how a moment is kept, how constraints are named."""

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
    Integer,
    MetaData,
    String,
    TypeDecorator,
)
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

__all__ = ["ROW_ID", "Table", "UtcTime", "of_server", "own_id"]

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
        list[str]: JSON,
    }


def own_id() -> Mapped[int]:
    """Return the column of a number that counts up by itself."""
    return mapped_column(ROW_ID, primary_key=True, autoincrement=True)


def of_server(*, primary_key: bool = False) -> Mapped[int]:
    """Return the column of the server that a row goes with."""
    return mapped_column(ForeignKey("server.id", ondelete="CASCADE"), primary_key=primary_key)
