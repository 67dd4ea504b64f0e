"""Readings that keepers gave to a group, and when a keeper was asked whether to give any."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0010"
down_revision = "0009"

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Add both; a reading goes with its keeper and with its group, and outlives its enclosure."""
    op.add_column("keeper", sa.Column("asked_on", sa.Date))
    op.create_table(
        "pooled",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("keeper_id", sa.BigInteger, nullable=False),
        sa.Column("enclosure_id", _ROW_ID),
        sa.Column("day", sa.Date, nullable=False),
        sa.Column("lamp", sa.String, nullable=False),
        sa.Column("own_lamp", sa.String),
        sa.Column("percent", sa.Double),
        sa.Column("reflector", sa.String),
        sa.Column("screen", sa.JSON),
        sa.Column("tube_length_m", sa.Double),
        sa.Column("age_days", sa.BigInteger),
        sa.Column("distance_m", sa.Double, nullable=False),
        sa.Column("uvi", sa.Double, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_pooled"),
        *(
            sa.ForeignKeyConstraint(
                [f"{table}_id"], [f"{table}.id"], name=f"fk_pooled_{table}_id", ondelete=gone
            )
            for table, gone in (
                ("server", "CASCADE"),
                ("keeper", "CASCADE"),
                ("enclosure", "SET NULL"),
            )
        ),
    )
    op.create_index("ix_pooled_server_id_id", "pooled", ["server_id", "id"])
    op.create_index("ix_pooled_keeper_id", "pooled", ["keeper_id"])
    op.create_index("ix_pooled_enclosure_id", "pooled", ["enclosure_id"])
