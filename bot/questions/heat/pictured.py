"""The picture of an answer about warmth; what draws it loads where it is looked at."""

from collections.abc import Callable

from bot.layered import Teller
from bot.questions.heat.seen import Pictured
from bot.reply import Picture

__all__ = ["pictured"]


def pictured(shown: Pictured) -> Callable[[Teller], Picture]:
    """Return what makes the picture."""

    def made(teller: Teller) -> Picture:
        from bot.questions.heat.answer_picture import answer_picture

        return Picture.later(answer_picture, shown, teller)

    return made
