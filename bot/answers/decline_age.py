"""When a UV lamp is replaced by its age alone: common practice, and for some kinds not even that.

A lamp with dated readings is answered from those, whatever its kind.
"""

from bot.answers.figures import number
from bot.answers.linking import page_links, source_lines
from bot.answers.uv_parts import UV_CAUTIONS
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.reply import Reply, Row, Value
from calc.uncertainty import Estimate
from calc.uv.decline import READ_AGAIN_DAYS, REPLACE_AFTER_DAYS, REPLACE_OTHERS_AFTER_DAYS
from calc.uv.lamp import AgeBand, age_band

__all__ = ["by_age"]

_GUIDE = ("when-a-lamp-is-worn-out", "how-to-take-a-reading")
_UNREAD = ("sunbed_end_of_life", "mcginley1998", "burn_in")
_T5_HO = UvLamp.T5_HO
_DAY_S, _DAY_H, _HOUR_S = 86_400.0, 24.0, 3_600.0
_MONTH_DAYS = 30.44
_AGES = {
    AgeBand.BURNING_IN: "It is new: for its first 100 hours it may give more than later.",
    AgeBand.SETTLED: "It need not be replaced by its age.",
    AgeBand.AGEING: "It is at the age at which many keepers replace it, unread.",
    AgeBand.OLD: "It is past the age at which keepers replace it, unread: replace it or read it.",
}


def by_age(kind: UvLamp, age_s: float | None, context: Context) -> Reply:
    """Answer by what is common practice for that kind of lamp."""
    ages = REPLACE_AFTER_DAYS if kind == _T5_HO else REPLACE_OTHERS_AFTER_DAYS.get(kind.value)
    source = "uv_replace_ages" if kind == _T5_HO else "uv_replace_ages_others"
    return Reply(
        command="decline",
        status="ok",
        title=f"When to replace the {'tube' if kind == _T5_HO else 'lamp'}, by its age",
        answer=_answer(kind, ages, age_s),
        values=_values(ages, age_s),
        rows=(
            Row(label="Age", text=_age_given(age_s)),
            *_other_rows(kind),
            Row(
                label="Why a range",
                text="nobody has published how these lamps fade; other UV lamps held for hundreds "
                "of hours in one study and differed two- to threefold by age in another",
            ),
        ),
        steps=(
            "Write the day it was fitted on its end cap or base.",
            (
                "Borrow a UV index meter: read it now, and again in "
                f"{round(READ_AGAIN_DAYS[1] / _MONTH_DAYS)} months at the same place, "
                "then ask decline with both."
            ),
        ),
        cautions=UV_CAUTIONS[:2],
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((source, *_UNREAD)),
    )


def _answer(kind: UvLamp, ages: tuple[float, float] | None, age_s: float | None) -> str:
    if ages is None:
        return (
            f"Nobody I know of says when {kind.a} is worn out, so its age tells nothing: only a UV "
            "index meter can. Without one, use a T5 HO tube."
        )
    return (
        f"{_age_told(ages, age_s)}Common practice is to replace {kind.a} after {_months(ages)}; "
        "only a UV index meter can tell how yours does."
    )


def _months(ages: tuple[float, float]) -> str:
    soon, late = (round(day / _MONTH_DAYS) for day in ages)
    return f"about {soon} months" if soon == late else f"{soon} to {late} months"


def _age_told(ages: tuple[float, float], age_s: float | None) -> str:
    if age_s is None:
        return ""
    band = age_band(age_s)
    if band is not AgeBand.BURNING_IN:
        days = age_s / _DAY_S
        band = AgeBand.SETTLED if days <= ages[0] else AgeBand.AGEING
        band = AgeBand.OLD if days > ages[1] else band
    return f"{_AGES[band]} "


def _values(ages: tuple[float, float] | None, age_s: float | None) -> tuple[Value, ...]:
    values = [] if age_s is None else [Value.of("age", Estimate.exact(age_s / _HOUR_S), "h")]
    if ages:
        soon, late = (days * _DAY_H for days in ages)
        values.append(Value.of("replace_after", Estimate(soon, late, late), "h"))
    return tuple(values)


def _other_rows(kind: UvLamp) -> tuple[Row, ...]:
    if kind != _T5_HO:
        return ()
    told = ", ".join(f"{name} {_months(ages)}" for name, ages in REPLACE_OTHERS_AFTER_DAYS.items())
    return (
        Row(
            label="Other lamps",
            text=f"{told}, all from memory, no source; of LED bars nothing is known. Ask with "
            "lamp: and its kind",
        ),
    )


def _age_given(age_s: float | None) -> str:
    if age_s is None:
        return "not given; with it (age:8 months) or with dated readings the answer is yours"
    return f"about {number(age_s / _DAY_S / _MONTH_DAYS, 0.5)} months, as you gave it"
