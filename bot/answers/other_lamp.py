"""A UV lamp without figures, which is every kind but a T5 HO tube: how a meter finds its place."""

from bot.answers.animals import AnimalNotNamedError
from bot.answers.figures import length, number, uvi_range
from bot.answers.linking import page_links, source_lines
from bot.answers.uv_parts import UV_CAUTIONS, Wish, wish_asked
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import WARM, UvLamp
from bot.preferences import Context
from bot.questions.shared import limits_for
from bot.questions.uv.judged import judged_uvi_read
from bot.reply import Reply, Row
from calc.limits import Limits
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = ["METER_FIRST", "answer_other_lamp"]

_GUIDE = ("how-to-take-a-reading", "reading-a-uv-meter", "measuring-the-distance")
_SOURCES = ("common_practice", "uv_meter_judgement", "nearest_distance")
# Where nothing is known one begins farther away than any tube that is answered for hangs.
_START_M = 0.9144
METER_FIRST = "only a UV index meter can tell where it may hang"
_WHY = {
    UvLamp.OTHER_TUBE: "it gives less UV than a T5 HO tube with the same label, and how much less "
    "is another for each",
    UvLamp.COMPACT: "its UV is strong close by and weak a little farther on",
    UvLamp.METAL_HALIDE: "it is strong, and its UV and its heat come out of one small place",
    UvLamp.MERCURY: "it is strong, and its UV and its heat come out of one small place; it is "
    "never dimmed",
    UvLamp.LED: "these are new, and one gives quite another UV than the next",
    UvLamp.UNKNOWN: "without its kind and its strength nothing can be worked out",
}
_SHOWN = ("4.2", "2.8", "2.0")
_WARM_UP = (
    "Take the animal out of its light, leave the lamp on for 30 minutes and switch other lamps off."
)
_HEAT_TOO = (
    "Read the basking surface with an infrared gun as well: of UV and heat, the one that wants "
    "more distance decides."
)
_NO_METER = (
    "No meter to borrow? Use a T5 HO tube instead: for those I know distances (ask tube). Until "
    "then leave this lamp off."
)


def answer_other_lamp(
    command: str,
    kind: UvLamp,
    animal: str,
    uvi: tuple[float, float] | None,
    context: Context,
    readings: tuple[PlacedReading, ...] | None = None,
    label: float | None = None,
) -> Reply:
    """Answer that there are no figures for this kind, and how to find its distance safely.

    ``readings`` are too few to say how its UV falls, but tell of the place they were taken at;
    ``label`` is the number printed on it.
    """
    wish, units = _wish(animal, uvi, context), context.units
    limits = limits_for(animal, context)
    shows = f"UVI {uvi_range(wish.low, wish.high)}" if wish else "what your animal needs"
    start, nearest = length(_START_M, units), length(COMFORTABLE_MINIMUM_M, units)
    return Reply(
        command=command,
        status="problem",
        title=f"{kind.a[0].upper()}{kind.a[1:]}: go by a UV index meter",
        answer=(
            f"I have no figures for {kind.a}: {METER_FIRST}. Start {start} from the animal's back, "
            f"come nearer until it shows {shows}, and stay at least {nearest} away."
        ),
        rows=(
            *((wish.row,) if wish else ()),
            *(_read_row(reading, wish, limits, units) for reading in readings or ()),
            *(() if label is None else (_label_row(label),)),
            Row(
                label="Why no figures",
                text=f"{_WHY[kind]}. The distances I know are those of "
                "T5 HO tubes and hold for no other lamp",
            ),
        ),
        steps=tuple(_steps(kind, shows, animal if wish else "", units)),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*(wish.sources if wish else ()), *_SOURCES)),
    )


def _label_row(label: float) -> Row:
    told = f"I read {number(label, 0.1)} on it; on this kind of lamp the number tells no UV index"
    return Row(label="Its label", text=f"{told}, so nothing is worked out from it")


def _read_row(reading: PlacedReading, wish: Wish | None, limits: Limits, units: Units) -> Row:
    at = f"UVI {number(reading.value, 0.01)} at {length(reading.distance.low, units)}"
    stands = ""
    if wish:
        judged = judged_uvi_read((reading.value,), wish.low, wish.high, limits)
        stands = f": {verdict_word(judged)}, wanted {uvi_range(wish.low, wish.high)}"
    return Row(
        label="You read",
        text=f"{at}{stands}, at that place and no other. Read at two more distances, and I can "
        "say where it may hang",
    )


def _wish(animal: str, uvi: tuple[float, float] | None, context: Context) -> Wish | None:
    """Return the range to aim at; without an animal there is none yet, and the rest holds."""
    try:
        return wish_asked(animal, uvi, context)
    except AnimalNotNamedError:
        return None


def _steps(kind: UvLamp, shows: str, animal: str, units: Units) -> list[str]:
    start, nearest = length(_START_M, units), length(COMFORTABLE_MINIMUM_M, units)
    inches, cm = ("12 in", "15 in", "18 in"), ("30 cm", "38 cm", "46 cm")
    places = inches if units is Units.IN else cm
    rows = ", ".join(f"{read} at {at}" for read, at in zip(_SHOWN, places, strict=True))
    ask = f"meter readings:{rows} lamp:{kind.value} animal:{animal or 'bearded dragon'}"
    return [
        _WARM_UP,
        (
            f"Hold the sensor at back height, facing the lamp, {start} away. Come nearer a hand's "
            f"width at a time until it shows {shows}; stop at {nearest}, whatever it shows. More "
            f"than that already at {start}? Switch it off: it is too strong for here."
        ),
        *((_HEAT_TOO,) if kind in WARM else ()),
        f"Write three readings down with their distances, then ask, such as: {ask}",
        _NO_METER,
    ]
