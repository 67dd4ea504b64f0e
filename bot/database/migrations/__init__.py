"""The versions of the database, each a step from the one before."""

from pathlib import Path

__all__ = ["MIGRATIONS", "known_versions"]

MIGRATIONS = Path(__file__).parent


def known_versions() -> tuple[str, ...]:
    """Return the versions that this program knows, oldest first."""
    files = (MIGRATIONS / "versions").glob("v*.py")
    return tuple(sorted(file.stem[1:].partition("_")[0] for file in files))
