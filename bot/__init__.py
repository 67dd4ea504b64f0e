"""Noonstone, the bot: words in, a structured reply out, in a console or on Discord."""

__version__ = "0.2.0"
