"""Noonstone, the bot: words in, a structured reply out, in a console or on Discord."""
