"""In which language a keeper and a group want to be answered."""

import sqlalchemy as sa
from alembic import op

__all__ = ["upgrade"]

revision = "0005"
down_revision = "0004"


def upgrade() -> None:
    """Add a language to both; where none is set, the asker's own program tells."""
    op.add_column("server", sa.Column("language", sa.String))
    op.add_column("keeper", sa.Column("language", sa.String))
