"""Invented numbers of people and places, and what tests look up in a reply."""

from bot.reply import Reply

__all__ = ["CHANNEL", "FERN", "GARDEN", "MOSS", "row", "whole"]

FERN, MOSS = 4_000_000_000_000_001, 4_000_000_000_000_002
GARDEN, CHANNEL = 5_000_000_000_000_001, 6_000_000_000_000_001


def row(reply: Reply, label: str) -> str:
    """Return the text of a row of a reply."""
    return next(row.text for row in reply.rows if row.label == label)


def whole(reply: Reply) -> str:
    """Return all that a reply says."""
    return reply.model_dump_json()
