"""What becomes public in a group: its rules, the role of its helpers, the log without text."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0011"
down_revision = "0010"

_ROW_ID = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Add the setting and the two tables."""
    op.add_column("server", sa.Column("helper_role", sa.BigInteger))
    op.create_table(
        "public_rule",
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("channel_id", sa.BigInteger, nullable=False),
        sa.Column("who", sa.String),
        sa.Column("most", sa.BigInteger),
        sa.PrimaryKeyConstraint("server_id", "channel_id", name="pk_public_rule"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_public_rule_server_id", ondelete="CASCADE"
        ),
    )
    op.create_table(
        "public_post",
        sa.Column("id", _ROW_ID, autoincrement=True, nullable=False),
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.BigInteger),
        sa.Column("channel_id", sa.BigInteger, nullable=False),
        sa.Column("command", sa.String, nullable=False),
        sa.Column("pings", sa.BigInteger, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_public_post"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_public_post_server_id", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_public_post_server_id_at", "public_post", ["server_id", "at"])
    op.create_index("ix_public_post_who", "public_post", ["who"])
