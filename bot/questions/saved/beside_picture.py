"""The picture of two days, or of two enclosures: each reading twice, what matters first."""

from bot.drawing import Axis, Gauge, Scale, Sheet, Tone
from bot.facts import Say
from bot.layered import Teller
from bot.questions.heat.gauges import span_of
from bot.questions.saved.beside import Beside, Stood
from bot.questions.scales import temperatures
from bot.questions.tones import TONES
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.judgement import Verdict, as_read
from calc.quantities import Quantity
from calc.setup.set_up import sign_of

__all__ = ["beside_picture"]

_MOST = 3
_HEADROOM = 1.3


def beside_picture(
    title: Say, head: Say, sides: tuple[Say, Say], both: tuple[Beside, ...], teller: Teller
) -> Picture:
    """Return what was read on both sides beside what is wanted, by what matters most."""
    names = tuple(map(teller.say, sides))
    said, top = (teller.say(title), teller.say(head)), both[0]
    of_uvi = top.of is Quantity.UVI
    shown = [one for one in both if (one.of is Quantity.UVI) is of_uvi][:_MOST]
    rest = "\n".join(_line(one, names, teller) for one in both if one not in shown)
    lines = [_line(one, names, teller) for one in both]
    drawing = _sheet(said, names, shown, rest, teller)
    return Picture(alt=shortened([f"{said[0]}.", said[1], *lines]), drawing=drawing)


def _line(one: Beside, names: tuple[str, ...], teller: Teller) -> str:
    told = (_words(each, name, teller) for each, name in _twice(one, names))
    return f"{teller.say(one.what)}: {'; '.join(told)}."


def _twice(one: Beside, names: tuple[str, ...]) -> tuple[tuple[Stood, str], ...]:
    return (one.earlier, names[0]), (one.later, names[1])


def _words(one: Stood, name: str, teller: Teller) -> str:
    judged = f", {teller.say(one.judged)}" if one.judged else ""
    return f"{name}: {teller.say(one.told)}{judged}"


def _tone(verdict: Verdict | None) -> Tone:
    return Tone.PLAIN if verdict is None else TONES[sign_of(verdict)]


def _doubt(of: Quantity, value: float) -> tuple[float, float]:
    read = as_read(of, value)
    return read.low, read.high


def _axis(of: Quantity, gauges: tuple[Gauge, ...], teller: Teller) -> Axis:
    if of is Quantity.UVI:
        met = [span for gauge in gauges for span in (gauge.wanted, gauge.reading) if span]
        return Axis("", 0.0, _HEADROOM * max(high for _, high in met), (Scale("UVI"),))
    span = span_of(gauges)
    assert span is not None
    return Axis("", *span, temperatures(teller.units))


def _sheet(
    said: tuple[str, str],
    names: tuple[str, ...],
    shown: list[Beside],
    rest: str,
    teller: Teller,
) -> Sheet:
    gauges = tuple(
        Gauge(
            label=f"{teller.say(one.what)}, {name}",
            where="",
            wanted=each.wanted,
            wanted_text="",
            reading=_doubt(one.of, each.value),
            reading_text=teller.say(each.told),
            verdict=teller.say(each.judged) if each.judged else "",
            tone=_tone(each.verdict),
        )
        for one in shown
        for each, name in _twice(one, names)
    )
    axis = _axis(shown[0].of, gauges, teller)
    note = "\n".join(filter(None, (rest, teller.say(Say("mine-compare-picture-note")))))
    return Sheet(title=said[0], subtitle=said[1], axis=axis, gauges=gauges, note=note)
