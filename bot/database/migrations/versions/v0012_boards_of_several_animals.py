"""Boards about several animals, one of a topic for a channel of each group."""

from typing import Any

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0012"
down_revision = "0011"

_BOARD = sa.table(
    "board",
    sa.column("id", sa.BigInteger),
    sa.column("animal", sa.String),
    sa.column("animals", sa.JSON),
    sa.column("told", sa.JSON(none_as_null=True)),
    sa.column("moved", sa.JSON(none_as_null=True)),
)


def upgrade() -> None:
    """Keep a list of animals in place of one, and of each what was told and what changed."""
    op.add_column("board", sa.Column("animals", sa.JSON, nullable=False, server_default="[]"))
    connection = op.get_bind()
    for row in connection.execute(sa.select(_BOARD).where(_BOARD.c.animal.is_not(None))).all():
        connection.execute(
            sa.update(_BOARD)
            .where(_BOARD.c.id == row.id)
            .values(
                animals=[row.animal],
                told=_of(row.animal, row.told, "targets"),
                moved=_of(row.animal, row.moved, "moved"),
            )
        )
    # SQLite changes no column and no constraint in place: there the table is copied.
    with op.batch_alter_table("board") as board:
        board.alter_column(
            "animals", existing_type=sa.JSON(), existing_nullable=False, server_default=None
        )
        board.drop_column("animal")
        board.drop_index("ix_board_server_id")
        board.drop_constraint("uq_board_channel_id_topic", type_="unique")
        board.create_unique_constraint(
            "uq_board_server_id_channel_id_topic", ["server_id", "channel_id", "topic"]
        )
        board.create_index("ix_board_channel_id", ["channel_id"])


def _of(animal: str, kept: dict[str, Any] | None, name: str) -> dict[str, Any] | None:
    return None if kept is None else {**kept, name: {animal: kept[name]}}
