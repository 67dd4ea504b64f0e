"""Where answers that still make their own sentences find ``bot/linking.py``."""

from bot.linking import page_links, source_lines

__all__ = ["page_links", "source_lines"]
