"""How the sign of a verdict is drawn, the same in every picture."""

from bot.drawing import Tone
from calc.setup.set_up import Sign

__all__ = ["TONES"]

TONES = {Sign.FINE: Tone.GOOD, Sign.CHANGE: Tone.BAD, Sign.CANNOT_TELL: Tone.DOUBTFUL}
"""The tone of each sign."""
