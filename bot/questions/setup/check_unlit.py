"""The UV of an animal that may do without: none is missed; a lamp over water alone is too much."""

from bot.facts import Say
from bot.language.hearing import FactName
from bot.questions.setup.check_parts import Part, Piece, Todo, Urgency
from bot.questions.setup.told import SetUpTold
from calc.animal import Animal
from calc.setup.set_up import Sign

__all__ = ["unlit_part"]

_OF_UV = (
    *(FactName.UVI, FactName.UVI_AT, FactName.DISTANCE, FactName.DISTANCE_BACK),
    FactName.DISTANCE_PERCH,
)


def unlit_part(told: SetUpTold, animal: Animal) -> Part | None:
    """Return the UV of a set-up without a lamp, for an animal that may do without one."""
    lit = told.tube is not None or told.uv_lamp is not None or told.pane is not None
    lit = lit or any(told.all(name) for name in _OF_UV)
    if animal.is_of_water_alone:
        return _over_water() if lit else Part(Piece.UV, Sign.FINE, Say("check-why-uv-unneeded"))
    spare = animal.uvi is not None and animal.uvi.low <= 0.0
    if lit or not spare:
        return None
    return Part(Piece.UV, Sign.FINE, Say("check-why-uv-spare"))


def _over_water() -> Part:
    off = Todo(Urgency.TOO_MUCH_UV, Say("check-do-no-lamp"), Say("check-do-no-lamp-short"))
    why, head = Say("check-why-uv-unneeded"), Say("check-head-needs-no-lamp")
    return Part(Piece.UV, Sign.CHANGE, why, head=head, todo=(off,))
