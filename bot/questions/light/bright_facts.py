"""How bright a basking place is: worked out from a reading, from lamps, or what it would take."""

from dataclasses import replace

from bot.facts import Lux, Name, Say, angle, hours, lumens, lux, metres, plain_number, share
from bot.language.light import COLOURED
from bot.preferences import Context
from bot.queries.light import BrightQuery
from bot.questions.animals import animal_asked
from bot.questions.light.brightness import (
    Asked,
    Bright,
    BrightLamp,
    BrightLife,
    BrightPlants,
    BrightSky,
    BrightWords,
    LampTaken,
    Without,
    WithoutLux,
)
from bot.questions.light.lights import Hung, Taken, hung_lights, kind_asked, patch_widths
from bot.questions.shared import animal_name
from calc.animal import Animal, State
from calc.light.bands import Bands, Brightness, LightLife, bands_of, brightness_of, life_of
from calc.light.illuminance import light_doubts, lux_at, lux_field
from calc.light.kinds import LightKind
from calc.light.outdoors import Outdoors, noon_outdoors, outdoors, room_lux
from calc.light.plants import day_sum, plant_class, plant_photons
from calc.light.readings import LX_PER_FOOT_CANDLE, LuxMeter, lux_read
from calc.uncertainty import Estimate, combined_factor

__all__ = ["bright_of"]

_HOURS = 12.0
_SPECTRUM_UNTOLD = Estimate(50.0, 62.0, 78.0)
_SOURCES = ("light_judgement", "light_bands", "daylight_polynomial", "sky_light")


def bright_of(query: BrightQuery, context: Context) -> Bright | WithoutLux:
    """Work out the brightness from a reading, else from lamps, else what it would take."""
    if query.reading is not None:
        value = query.reading.value * (LX_PER_FOOT_CANDLE if query.reading.is_foot_candles else 1.0)
        meter = LuxMeter(query.by or "meter")
        asked = Asked.PHONE if meter is LuxMeter.PHONE else Asked.METER
        return _bright(query, context, lux_read(value, meter), asked, None)
    if query.lamp == COLOURED:
        return _without(Without.COLOURED, query, context)
    if query.lamp is None or query.distance is None:
        return _without(Without.NOTHING_TOLD, query, context)
    kind = kind_asked(query.lamp)
    hung = hung_lights(query, kind)
    if hung is not None:
        return _bright(query, context, _spot(hung), Asked.LAMP, hung)
    if kind.lm_per_w is None:
        return _without(Without.NO_LUMENS, query, context)
    return _how_many(query, context, kind)


def _spot(hung: Hung, z_m: float = 0.0, x_m: float = 0.0) -> Estimate:
    """Return the light of lamps of one kind, whose doubts hang together, at a place [lx]."""
    each = [lux_at(one, x_m, 0.0, z_m) for one in hung.lights]
    return Estimate(*(sum(getattr(e, end) for e in each) for end in ("low", "best", "high")))


def _bright(
    query: BrightQuery, context: Context, spot: Estimate, asked: Asked, hung: Hung | None
) -> Bright:
    named, life, bands, is_pale = _life(query, context)
    words = _words(spot, bands)
    flux = None
    if (
        hung is not None
        and bands is not None
        and words in (BrightWords.DIM, BrightWords.DIM_OR_FAIR)
    ):
        flux = lumens(_lumens_for(hung, bands.fair.spot_lx))
    return Bright(
        spot=lux(spot),
        asked=asked,
        words=words,
        life=life,
        animal=named,
        is_of_the_night=life is not None and life.life is LightLife.NIGHT,
        sky=_sky(query, spot),
        lamp=None if hung is None else _lamp(query, hung),
        plants=_plants(query, spot, hung),
        retreat=lux(_retreat_lx(spot, life)),
        for_fair=flux,
        is_pale=is_pale,
        sources=_sources(query, hung),
    )


def _sources(query: BrightQuery, hung: Hung | None) -> tuple[str, ...]:
    own = ("lux_meters",) if hung is None else (hung.kind.source, "light_forms", "beam_shapes")
    return (*own, *_SOURCES, "rooms_for_work", "lux_per_umol", "plant_light_sums")


def _is_pale(animal: Animal) -> bool:
    return bool({State.PALE, State.YOUNG} & set(animal.states))


def _life(
    query: BrightQuery, context: Context
) -> tuple[Name | None, BrightLife | None, Bands | None, bool]:
    if not (query.animal.strip() or context.default_animal):
        return None, None, None, False
    animal = animal_asked(query.animal, context)
    named, life = animal_name(animal), life_of(animal)
    bands = None if life is None else bands_of(life)
    if life is None:
        return named, None, None, _is_pale(animal)
    told = bands or bands_of(LightLife.FOREST)
    assert told is not None
    levels = (told.fair.spot_lx, told.bright.spot_lx, told.fair.half_lx, told.fair.retreat_lx)
    return named, BrightLife(named, life, *map(lux, levels)), bands, _is_pale(animal)


def _retreat_lx(spot: Estimate, life: BrightLife | None) -> float:
    """Return what a retreat stays under [lx]: a twentieth of the spot, and its own level."""
    own = spot.best if life is None else life.retreat.best
    return min(spot.best / 20.0, own)


_WORDS = {
    (Brightness.DIM, Brightness.DIM): BrightWords.DIM,
    (Brightness.DIM, Brightness.FAIR): BrightWords.DIM_OR_FAIR,
    (Brightness.FAIR, Brightness.FAIR): BrightWords.FAIR,
    (Brightness.FAIR, Brightness.BRIGHT): BrightWords.FAIR_OR_BRIGHT,
    (Brightness.BRIGHT, Brightness.BRIGHT): BrightWords.BRIGHT,
}


def _words(spot: Estimate, bands: Bands | None) -> BrightWords:
    if bands is None:
        return BrightWords.NO_BAND
    return _WORDS.get(brightness_of(spot, bands), BrightWords.CANNOT_TELL)


def _sky(query: BrightQuery, spot: Estimate | None) -> BrightSky:
    found: Outdoors | None = None
    if query.latitude is not None and query.month is not None:
        found = noon_outdoors(query.latitude, query.month)
    outside = found or outdoors()
    return BrightSky(
        sun=lux(outside.sun_lx),
        shade=lux(outside.shade_lx),
        overcast=lux(outside.overcast_lx),
        room=lux(room_lux()),
        of_sun=share((spot.best if spot else 0.0) / outside.sun_lx.best),
        of_shade=plain_number((spot.best if spot else 0.0) / outside.shade_lx.best),
        noon=angle(query.latitude) if found and query.latitude is not None else None,
        month=Say.of("figures-month", str(query.month)) if found else None,
    )


def _lamp(query: BrightQuery, hung: Hung) -> BrightLamp:
    light = hung.lights[0].light
    along, across = patch_widths(hung)
    return BrightLamp(
        lamp=Name(f"bright-lamp-{hung.kind.slug}"),
        uv=hung.kind.uv,
        count=query.lamps,
        flux=lumens(light.flux_lm),
        by_watts=light.by_watts,
        distance=metres(hung.height_m),
        assumed=tuple(_assumed(one, hung) for one in hung.taken),
        doubts=tuple(Say.of("bright-doubt", name) for name in _doubts(hung)),
        along=metres(along),
        across=metres(across),
        cool=_cool(query, hung),
        is_behind_glass=query.is_behind_glass,
    )


def _assumed(taken: Taken, hung: Hung) -> Say:
    facts = LampTaken(metres(hung.length_m), angle(hung.beam_deg))
    return Say.by("bright-taken", taken, facts)


def _doubts(hung: Hung) -> tuple[str, ...]:
    """Return why the light may be off, the widest doubt first, each once."""
    found = sorted(light_doubts(hung.lights[0].light), key=lambda doubt: -doubt.factor)
    return tuple(dict.fromkeys(str(doubt.name) for doubt in found))[:3]


def _cool(query: BrightQuery, hung: Hung) -> Lux | None:
    """Return the light at the cool end's floor, with the lamps over the middle of the warm half."""
    size = query.enclosure
    if size is None:
        return None
    lid_m = max(size.height_m, hung.height_m)
    drop_m = lid_m - hung.height_m
    away_m = 0.625 * size.length_m
    best = float(lux_field(hung.lights, away_m, 0.0, -drop_m))
    # What walls send back counts most where little comes straight: twice the doubt.
    factor = combined_factor(light_doubts(hung.lights[0].light)) ** 2
    return lux(Estimate(best / factor, best, best * factor))


def _plants(query: BrightQuery, spot: Estimate, hung: Hung | None) -> BrightPlants:
    ratio = _SPECTRUM_UNTOLD if hung is None else hung.kind.lx_per_umol
    photons = plant_photons(spot, ratio)
    long_h = query.hours.low / 3600.0 if query.hours else _HOURS
    ends = (photons.low, photons.best, photons.high)
    day = Estimate(*(day_sum(min(value, 3000.0), long_h) for value in ends))
    return BrightPlants(
        photons=plain_number(photons),
        day=plain_number(day),
        hours=hours(long_h),
        told=query.hours is not None,
        least=plant_class(day.low),
        most=plant_class(day.high),
    )


def _lumens_for(hung: Hung, wanted_lx: float) -> Estimate:
    """Return how many lumens of such lamps make a place so bright [lm]."""
    each = hung.lights[0].light.flux_lm.best * len(hung.lights)
    per_lumen = float(lux_field(hung.lights, 0.0, 0.0, 0.0)) / each
    return _rounded(Estimate.exact(wanted_lx / per_lumen), hung)


def _rounded(best: Estimate, hung: Hung) -> Estimate:
    factor = combined_factor(light_doubts(hung.lights[0].light))
    return Estimate(best.best / factor, best.best, best.best * factor)


def _how_many(query: BrightQuery, context: Context, kind: LightKind) -> WithoutLux:
    """Return the lumens that a kind of lamp needs for a fair and for a bright place."""
    _, life, bands, _ = _life(query, context)
    if life is not None and life.life is LightLife.NIGHT:
        return _without(Without.HOW_MANY_NIGHT, query, context)
    levels = bands or bands_of(LightLife.SUN)
    hung = hung_lights(query, kind, Estimate.exact(1000.0))
    assert levels is not None
    assert hung is not None
    return replace(
        _without(Without.HOW_MANY, query, context),
        lamp=Name(f"bright-lamp-{kind.slug}"),
        fair_flux=lumens(_lumens_for(hung, levels.fair.spot_lx)),
        bright_flux=lumens(_lumens_for(hung, levels.bright.spot_lx)),
        distance=metres(hung.height_m),
        assumed=tuple(_assumed(one, hung) for one in hung.taken),
        sources=_sources(query, hung),
    )


def _without(why: Without, query: BrightQuery, context: Context) -> WithoutLux:
    named, life, _, _ = _life(query, context)
    lamp = query.lamp if query.lamp not in (None, COLOURED) else None
    return WithoutLux(
        why=why,
        animal=named,
        life=life,
        sky=_sky(query, None),
        lamp=Name(f"bright-lamp-{lamp.replace(' ', '-')}") if lamp else None,
        fair_flux=None,
        bright_flux=None,
        distance=None,
        assumed=(),
        sources=_SOURCES,
    )
