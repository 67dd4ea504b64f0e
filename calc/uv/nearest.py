"""How near a tube may hang, which every room may say without the engine."""

__all__ = ["COMFORTABLE_MINIMUM_M"]

COMFORTABLE_MINIMUM_M = 0.20
"""The nearest distance of the trade, 8 in, to the nearest centimetre. Source: nearest_distance."""
