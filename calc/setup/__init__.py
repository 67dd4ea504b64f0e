"""A whole set-up from what a keeper has: where the tube hangs, how high the platform, what heat.

Decisions are fields and enums; the wording is the bot's.
"""
