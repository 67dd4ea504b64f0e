"""What is said of placed readings before any figure, in the answers that have not moved yet."""

from bot.answers.figures import number, percent, uvi_wanted
from bot.questions.uv.readings_off import Meant, Off, OffBy, WasIt

__all__ = ["warning_told"]

_MANY = 3.0


def warning_told(off: Off) -> str:
    """Return why the readings are not gone by; nothing where they are."""
    match off.by:
        case OffBy.NOTHING:
            return ""
        case OffBy.CONTRADICT:
            one = "tube" if off.tube else "lamp"
            told = f"Your readings do not fit one {one}: read again before you move anything."
        case OffBy.STRONG:
            kind = f"the strongest tube sold ({_class(off)})" if off.strongest else _tube(off)
            told = (
                f"You read far more than {kind} gives, about {_as_many(off.times)} times as much: "
                "do not let the animal under it, and read again."
            )
        case OffBy.WEAK:
            told = (
                f"You read far less than {_tube(off)} gives, about {percent(off.times)} of it: do "
                "not hang it nearer, and read again. Is the sensor or the tube dirty, or a screen "
                "between?"
            )
    return f"{told}{_was_it(off.was_it)}"


def _tube(off: Off) -> str:
    return f"a {_class(off)} tube"


def _class(off: Off) -> str:
    return f"T5 HO, {number(off.strength.best * 100.0, 0.1)} %"


def _as_many(times: float) -> str:
    return str(round(times)) if times >= _MANY else number(times, 0.1)


def _was_it(was: WasIt | None) -> str:
    """Return the question whether a reading was meant otherwise."""
    if was is None:
        return ""
    match was.meant:
        case Meant.UVI:
            meant = was.uvi_meant.best
            told = f"{meant:.1f}" if meant < was.uvi_read.best else number(meant, 0.1)
            return f" Was it {told}, not {uvi_wanted(was.uvi_read.best)}?"
        case Meant.CENTIMETRES:
            return f" Was it {was.number_meant} cm, not inches?"
        case Meant.INCHES:
            return f" Was it {was.number_meant} inches, not cm?"
        case Meant.DISTANCE:
            sign = "in" if was.inches else "cm"
            return f" Was it {was.number_meant} {sign}, not {was.number_read} {sign}?"
