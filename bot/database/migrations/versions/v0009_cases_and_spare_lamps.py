"""Cases that keepers share with helpers; spare lamps; which targets somebody was told last."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0009"
down_revision = "0008"

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Add the tables, and what a reminder and a board need to tell of them."""
    _cases()
    _spares()
    _told()


def _cases() -> None:
    op.create_table(
        "shared_case",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("enclosure_id", _ROW_ID, nullable=False),
        sa.Column("channel_id", sa.BigInteger),
        sa.Column("opened_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("moved_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("before", sa.JSON, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_shared_case"),
        sa.UniqueConstraint("enclosure_id", name="uq_shared_case_enclosure_id"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_shared_case_server_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["enclosure_id"],
            ["enclosure.id"],
            name="fk_shared_case_enclosure_id",
            ondelete="CASCADE",
        ),
    )
    op.create_index("ix_shared_case_server_id", "shared_case", ["server_id"])
    op.create_index("ix_shared_case_moved_at", "shared_case", ["moved_at"])
    _advice()


def _advice() -> None:
    op.create_table(
        "advice",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("case_id", _ROW_ID, nullable=False),
        sa.Column("helper", sa.BigInteger),
        sa.Column("day", sa.Date, nullable=False),
        sa.Column("what", sa.String, nullable=False),
        sa.Column("of", sa.String),
        sa.Column("value", sa.Double),
        sa.PrimaryKeyConstraint("id", name="pk_advice"),
        sa.ForeignKeyConstraint(
            ["case_id"], ["shared_case.id"], name="fk_advice_case_id", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_advice_case_id", "advice", ["case_id"])
    op.create_index("ix_advice_helper", "advice", ["helper"])
    # SQLite adds no reference to a table in place: there the table is copied.
    with op.batch_alter_table("reminder") as reminder:
        reminder.add_column(sa.Column("case_id", _ROW_ID))
        reminder.create_foreign_key(
            "fk_reminder_case_id", "shared_case", ["case_id"], ["id"], ondelete="CASCADE"
        )
    op.create_index("ix_reminder_case_id", "reminder", ["case_id"])


def _spares() -> None:
    op.create_table(
        "spare",
        sa.Column("keeper_id", sa.BigInteger, nullable=False),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("lamp", sa.String, nullable=False),
        sa.Column("tube_percent", sa.Double),
        sa.Column("tube_length_m", sa.Double),
        sa.Column("bought_on", sa.Date),
        sa.PrimaryKeyConstraint("keeper_id", "key", name="pk_spare"),
        sa.ForeignKeyConstraint(
            ["keeper_id"], ["keeper.id"], name="fk_spare_keeper_id", ondelete="CASCADE"
        ),
    )


def _told() -> None:
    op.create_table(
        "told",
        sa.Column("enclosure_id", _ROW_ID, nullable=False),
        sa.Column("server_id", sa.BigInteger),
        sa.Column("animal", sa.String, nullable=False),
        sa.Column("targets", sa.JSON, nullable=False),
        sa.PrimaryKeyConstraint("enclosure_id", name="pk_told"),
        sa.ForeignKeyConstraint(
            ["enclosure_id"], ["enclosure.id"], name="fk_told_enclosure_id", ondelete="CASCADE"
        ),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_told_server_id", ondelete="SET NULL"
        ),
    )
    op.create_index("ix_told_server_id", "told", ["server_id"])
    op.add_column("reminder", sa.Column("moved", sa.JSON))
    op.add_column("board", sa.Column("told", sa.JSON))
    op.add_column("board", sa.Column("moved", sa.JSON))
