"""How high the back of an animal of a group's own is, and in what way it lives."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0006"
down_revision = "0005"


def upgrade() -> None:
    """Add both; where none is set, an answer asks for it or tells nothing of it."""
    op.add_column("animal", sa.Column("back_m", sa.Double))
    op.add_column("animal", sa.Column("life", sa.String))
