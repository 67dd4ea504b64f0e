"""How a connection to an SQLite file begins."""

__all__ = ["BUSY_S", "PRAGMAS"]

BUSY_S = 5.0
"""How long a statement waits for others that write."""
PRAGMAS = (
    f"PRAGMA busy_timeout = {round(BUSY_S * 1000)}",
    "PRAGMA foreign_keys = ON",
    "PRAGMA journal_mode = WAL",
    # A write that was confirmed outlives a power cut too; the writes here are few and small.
    "PRAGMA synchronous = FULL",
    # What is deleted is overwritten.
    "PRAGMA secure_delete = ON",
)
