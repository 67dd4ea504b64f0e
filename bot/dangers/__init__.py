"""What cannot wait: the one table of hazards, what hears them, and what says them first."""

from bot.dangers.first import first
from bot.dangers.listening import listen
from bot.dangers.table import Call, Hazard, HazardKind, Urgency, hazard, hazards

__all__ = ["Call", "Hazard", "HazardKind", "Urgency", "first", "hazard", "hazards", "listen"]
