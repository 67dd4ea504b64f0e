"""Reminders and boards; a zone for each server; the lit length that a lamp was measured with."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0002"
down_revision = "0001"

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")
# The shortest standard tube: what every lamp kept until now was measured against.
_LIT_LENGTH_M = "0.519"


def upgrade() -> None:
    """Add the new columns and tables; what is kept stays."""
    op.add_column("server", sa.Column("zone", sa.String))
    op.add_column(
        "lamp",
        sa.Column("lit_length_m", sa.Double, nullable=False, server_default=sa.text(_LIT_LENGTH_M)),
    )
    _reminders()
    _boards()


def _reminders() -> None:
    op.create_table(
        "reminder",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("keeper_id", sa.BigInteger, nullable=False),
        sa.Column("enclosure_id", _ROW_ID),
        sa.Column("server_id", sa.BigInteger),
        sa.Column("channel_id", sa.BigInteger),
        sa.Column("about", sa.String, nullable=False),
        sa.Column("due_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("zone", sa.String, nullable=False),
        sa.Column("every_days", sa.BigInteger),
        sa.Column("occurrence", sa.BigInteger, nullable=False),
        sa.Column("state", sa.String, nullable=False),
        sa.Column("try_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("attempt", sa.BigInteger, nullable=False),
        sa.Column("failures", sa.BigInteger, nullable=False),
        sa.Column("claimed_by", sa.String, nullable=False),
        sa.Column("trouble", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_reminder"),
        sa.ForeignKeyConstraint(
            ["keeper_id"], ["keeper.id"], name="fk_reminder_keeper_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["enclosure_id"], ["enclosure.id"], name="fk_reminder_enclosure_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_reminder_server_id", ondelete="CASCADE"
        ),
    )
    for columns in (["state", "try_at"], ["keeper_id"], ["enclosure_id"], ["server_id"]):
        op.create_index(f"ix_reminder_{'_'.join(columns)}", "reminder", columns)


def _boards() -> None:
    op.create_table(
        "board",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("channel_id", sa.BigInteger, nullable=False),
        sa.Column("topic", sa.String, nullable=False),
        sa.Column("animal", sa.String),
        sa.Column("message_id", sa.BigInteger),
        sa.Column("pinned", sa.Boolean, nullable=False),
        sa.Column("fingerprint", sa.String, nullable=False),
        sa.Column("state", sa.String, nullable=False),
        sa.Column("trouble", sa.String, nullable=False),
        sa.Column("look_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("wish", sa.BigInteger, nullable=False),
        sa.Column("claimed_by", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_board"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_board_server_id", ondelete="CASCADE"
        ),
        sa.UniqueConstraint("channel_id", "topic", name="uq_board_channel_id_topic"),
    )
    for column in ("server_id", "look_at"):
        op.create_index(f"ix_board_{column}", "board", [column])
