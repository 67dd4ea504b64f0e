"""A conversation: what a line means after the answer before it."""

from bot.dialogue.turns import START, Dialogue, Next, after, next_line, opened_for, told_before

__all__ = ["START", "Dialogue", "Next", "after", "next_line", "opened_for", "told_before"]
