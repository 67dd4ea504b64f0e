"""The picture of an answer about warmth: a box with what was read and wanted at its places."""

from collections.abc import Iterator

from bot.drawing import Flow, Tone
from bot.facts import Name, Say
from bot.layered import Teller
from bot.questions.heat.gauges import BoxHead, GaugesTold, Told, box_picture
from bot.questions.heat.seen import Pictured, Seen
from bot.questions.setup.usual_box import laid_out
from bot.questions.tones import TONES
from bot.reply import Picture
from calc.animals import animals
from calc.setup.set_up import Act, Movement, SetUp, Thing, sign_of
from calc.uncertainty import Estimate

__all__ = ["answer_picture"]

_ANIMAL = "animal-"
# Where warmth leaves, as shares of the box: from x, y to x, y.
_WALL, _LID = (0.86, 0.62, 0.985, 0.62), (0.3, 0.74, 0.3, 0.97)


def answer_picture(shown: Pictured, teller: Teller) -> Picture:
    """Return the box, with the sign of the first place that has a verdict."""
    places = [_told(one) for one in shown.seen]
    sign = next((one.sign for one in places if one.sign is not None), None)
    head = BoxHead(shown.over, shown.head, Tone.PLAIN if sign is None else TONES[sign])
    set_up = _set_up(shown)
    gauges = GaugesTold(Name(f"{_ANIMAL}{set_up.animal}"), ())
    flows = list(_flows(shown, set_up, teller))
    return box_picture(gauges, set_up, head, places, teller, (), flows)


def _told(one: Seen) -> Told:
    verdict = one.verdict
    return Told(
        one.quantity,
        one.label,
        one.wanted,
        one.read,
        None if verdict is None else Say.by("verdict", verdict),
        None if verdict is None else sign_of(verdict),
        one.ends,
        one.met,
        one.below,
    )


def _set_up(shown: Pictured) -> SetUp:
    moved = Movement(Act.MOVE, (Thing.HEAT_LAMP,), (0.0, 0.0, shown.moved_m))
    return SetUp(
        animal="" if shown.animal is None else shown.animal.key.removeprefix(_ANIMAL),
        lamp_to_stand_m=None if shown.lamp is None else Estimate.exact(shown.lamp.best),
        first=moved if shown.moved_m else None,
    )


def _flows(shown: Pictured, set_up: SetUp, teller: Teller) -> Iterator[Flow]:
    leaves = shown.leaves
    if leaves is None:
        return
    box = laid_out(set_up, animals().get(set_up.animal)).box
    for (x0, y0, x1, y1), words in ((_WALL, leaves.walls), (_LID, leaves.air)):
        long_m, high_m = box.length_m, box.height_m
        yield Flow(x0 * long_m, y0 * high_m, x1 * long_m, y1 * high_m, teller.say(words))
