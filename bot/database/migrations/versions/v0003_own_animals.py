"""Animals that a group adds: what they want and what they may not have."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Add the table; what is kept stays."""
    op.create_table(
        "animal",
        sa.Column("server_id", sa.BigInteger, nullable=False),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("scientific", sa.String, nullable=False),
        sa.Column("wants", sa.JSON, nullable=False),
        sa.Column("surface_limit_c", sa.Double),
        sa.Column("coolest_limit_c", sa.Double),
        sa.Column("night_limit_c", sa.Double),
        sa.Column("uvi_limit", sa.Double),
        sa.Column("set_on", sa.Date, nullable=False),
        sa.PrimaryKeyConstraint("server_id", "key", name="pk_animal"),
        sa.ForeignKeyConstraint(
            ["server_id"], ["server.id"], name="fk_animal_server_id", ondelete="CASCADE"
        ),
    )
