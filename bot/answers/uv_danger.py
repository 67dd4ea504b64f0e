"""UV past a limit, in every question alike."""

from bot.answers.uv_asked import told_under
from bot.answers.uv_parts import Wish, wish_asked
from bot.preferences import Context
from calc.uncertainty import Estimate

__all__ = ["wish_under"]


def wish_under(
    animal: str, wanted: tuple[float, float] | None, uvi: Estimate, context: Context
) -> Wish:
    """Return the range wanted under a UV index; without one, danger is told all the same."""
    with told_under(uvi, animal, context):
        return wish_asked(animal, wanted, context)
