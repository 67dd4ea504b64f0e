"""The questions about saved data: one module a topic, each (query, context, desk) to a Reply.

They word and round like ``bot.answers``, whose parts they use, and reach the store through the
desk alone.
"""
