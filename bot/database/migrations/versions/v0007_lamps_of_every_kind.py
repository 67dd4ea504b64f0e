"""Lamps of a group's own that are no T5 HO tubes: their kind, and how a small one falls."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0007"
down_revision = "0006"


def upgrade() -> None:
    """Add both; every lamp kept until now is a T5 HO tube, and only a tube has a constant."""
    op.add_column("lamp", sa.Column("kind", sa.String, nullable=False, server_default="T5 HO tube"))
    op.add_column("lamp", sa.Column("point", sa.JSON))
    # SQLite changes no column in place: there the table is copied.
    with op.batch_alter_table("lamp") as lamp:
        lamp.alter_column("constant_uvi_m", existing_type=sa.Double, nullable=True)
        lamp.alter_column("lit_length_m", existing_type=sa.Double, nullable=True)
