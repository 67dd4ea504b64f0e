"""Servers with their own figures and their log; keepers with enclosures and readings; counts."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0001"
down_revision = None

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Make the first tables."""
    op.create_table(
        "server",
        sa.Column("id", sa.BigInteger, autoincrement=False, nullable=False),
        sa.Column("units", sa.String),
        sa.Column("animal", sa.String),
        sa.Column("guide_url", sa.String),
        sa.Column("left_at", sa.DateTime(timezone=True)),
        sa.PrimaryKeyConstraint("id", name="pk_server"),
    )
    op.create_table(
        "channel",
        _server_id("channel"),
        sa.Column("id", sa.BigInteger, autoincrement=False, nullable=False),
        sa.Column("shown", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "id", name="pk_channel"),
    )
    _figures()
    op.create_table(
        "change",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        _server_id("change"),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.BigInteger),
        sa.Column("what", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("before", sa.String, nullable=False),
        sa.Column("after", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_change"),
    )
    op.create_index("ix_change_server_id_id", "change", ["server_id", "id"])
    op.create_index("ix_change_who", "change", ["who"])
    _keepers()
    op.create_table(
        "count",
        _server_id("count"),
        sa.Column("week", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("times", sa.BigInteger, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "week", "kind", "name", name="pk_count"),
    )


def _figures() -> None:
    op.create_table(
        "lamp",
        _server_id("lamp"),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("constant_uvi_m", sa.Double, nullable=False),
        sa.Column("doubt_factor", sa.Double, nullable=False),
        sa.Column("readings", sa.BigInteger, nullable=False),
        sa.Column("set_on", sa.Date, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "key", name="pk_lamp"),
    )
    op.create_table(
        "screen",
        _server_id("screen"),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("passes", sa.Double, nullable=False),
        sa.Column("set_on", sa.Date, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "key", name="pk_screen"),
    )
    op.create_table(
        "target",
        _server_id("target"),
        sa.Column("animal", sa.String, nullable=False),
        sa.Column("subject", sa.String, nullable=False),
        sa.Column("low", sa.Double, nullable=False),
        sa.Column("best", sa.Double),
        sa.Column("high", sa.Double, nullable=False),
        sa.Column("set_on", sa.Date, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "animal", "subject", name="pk_target"),
    )


def _keepers() -> None:
    op.create_table(
        "keeper",
        sa.Column("id", sa.BigInteger, autoincrement=False, nullable=False),
        sa.Column("units", sa.String),
        sa.Column("zone", sa.String),
        sa.PrimaryKeyConstraint("id", name="pk_keeper"),
    )
    op.create_table(
        "enclosure",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("keeper_id", sa.BigInteger, nullable=False),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("setup", sa.JSON, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_enclosure"),
        sa.ForeignKeyConstraint(
            ["keeper_id"], ["keeper.id"], name="fk_enclosure_keeper_id", ondelete="CASCADE"
        ),
        sa.UniqueConstraint("keeper_id", "key", name="uq_enclosure_keeper_id_key"),
    )
    op.create_table(
        "reading",
        sa.Column("enclosure_id", _ROW_ID, nullable=False),
        sa.Column("day", sa.Date, nullable=False),
        sa.Column("of", sa.String, nullable=False),
        sa.Column("value", sa.Double, nullable=False),
        sa.Column("distance_m", sa.Double),
        sa.PrimaryKeyConstraint("enclosure_id", "day", "of", name="pk_reading"),
        sa.ForeignKeyConstraint(
            ["enclosure_id"], ["enclosure.id"], name="fk_reading_enclosure_id", ondelete="CASCADE"
        ),
    )


def _server_id(table: str) -> sa.Column[int]:
    reference = sa.ForeignKey("server.id", name=f"fk_{table}_server_id", ondelete="CASCADE")
    return sa.Column("server_id", sa.BigInteger, reference, nullable=False)
