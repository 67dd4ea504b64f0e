"""Lamps in their places as facts: what each gives, how wide it is bright, and the cool end."""

from bot.facts import Lux, Name, Say, angle, lumens, lux, metres
from bot.queries.light import BrightQuery
from bot.questions.light.brightness import BrightLamp, BrightLit, LampTaken
from bot.questions.light.lights import Hung, Taken, patch_widths
from calc.light.illuminance import light_doubts, lux_field, total_lux
from calc.light.kinds import LampUv
from calc.uncertainty import Estimate, combined_factor

__all__ = ["assumed_told", "lamp_name", "lit_told"]


def lit_told(query: BrightQuery, hung: tuple[Hung, ...], left_out: tuple[str, ...]) -> BrightLit:
    """Return the lamps in their places as facts, and the kinds that were left out."""
    lights = tuple(light for one in hung for light in one.lights)
    along, across = patch_widths(lights)
    return BrightLit(
        lamps=tuple(map(_lamp, hung)),
        left_out=tuple(lamp_name(kind) for kind in left_out),
        has_doubtful_uv=any(one.kind.uv is not LampUv.NONE for one in hung) or bool(left_out),
        has_led=any(one.kind.uv is LampUv.NONE for one in hung),
        doubts=tuple(Say.of("bright-doubt", name) for name in _doubts(hung)),
        by_watts=any(one.light.by_watts for one in hung),
        along=metres(along),
        across=metres(across),
        cool=_cool(query, hung),
        is_behind_glass=query.is_behind_glass,
    )


def lamp_name(kind: str) -> Name:
    """Return the name of a kind of lamp."""
    return Name(f"bright-lamp-{kind.replace(' ', '-')}")


def _lamp(hung: Hung) -> BrightLamp:
    return BrightLamp(
        lamp=lamp_name(hung.kind.slug),
        count=len(hung.lights),
        flux=lumens(hung.light.flux_lm),
        by_watts=hung.light.by_watts,
        distance=metres(hung.height_m),
        assumed=tuple(assumed_told(one, hung) for one in hung.taken),
        gives=lux(hung.spot_lx),
    )


def assumed_told(taken: Taken, hung: Hung) -> Say:
    """Return what was assumed of a lamp."""
    facts = LampTaken(metres(hung.length_m), angle(hung.beam_deg))
    return Say.by("bright-taken", taken, facts)


def _doubts(hung: tuple[Hung, ...]) -> tuple[str, ...]:
    """Return why the light may be off, the widest doubt first, each once."""
    named = (doubt for one in hung for doubt in light_doubts(one.light))
    found = sorted(named, key=lambda doubt: -doubt.factor)
    return tuple(dict.fromkeys(str(doubt.name) for doubt in found))[:3]


def _cool(query: BrightQuery, hung: tuple[Hung, ...]) -> Lux | None:
    """Return the light at the cool end's floor, with the lamps over the middle of the warm half."""
    size = query.enclosure
    if size is None:
        return None
    highest_m = max(one.height_m for one in hung)
    drop_m = max(size.height_m, highest_m) - highest_m
    away_m = 0.625 * size.length_m

    def weak(one: Hung) -> Estimate:
        best = float(lux_field(one.lights, away_m, 0.0, -drop_m))
        # What walls send back counts most where little comes straight: twice the doubt.
        factor = combined_factor(light_doubts(one.light)) ** 2
        return Estimate(best / factor, best, best * factor)

    return lux(total_lux([weak(one) for one in hung]))
