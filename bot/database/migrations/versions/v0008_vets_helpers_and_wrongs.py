"""Whom a group calls, where its helpers are asked, and answers that somebody called wrong."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0008"
down_revision = "0007"

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Add the two settings, and the table of what was called wrong, which holds no person."""
    op.add_column("server", sa.Column("vets", sa.String))
    op.add_column("server", sa.Column("helpers", sa.BigInteger))
    op.create_table(
        "wrong",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("day", sa.Date, nullable=False),
        sa.Column("command", sa.String, nullable=False),
        sa.Column("given", sa.JSON, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_wrong"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_wrong_server_id", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_wrong_server_id_id", "wrong", ["server_id", "id"])
