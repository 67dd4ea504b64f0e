"""How bright a basking place is: worked out from a reading, from lamps, or what it would take."""

from dataclasses import replace

from bot.facts import Bound, Name, Say, angle, hours, lumens, lux, metres, plain_number, share
from bot.language.light import COLOURED
from bot.language.light_lamps import LightLamp
from bot.preferences import Context
from bot.queries.light import BrightQuery
from bot.questions.animals import animal_asked
from bot.questions.light.brightness import (
    Asked,
    Bright,
    BrightLife,
    BrightPlants,
    BrightSky,
    BrightWords,
    Without,
    WithoutLux,
    bright_words,
)
from bot.questions.light.lights import (
    Hung,
    hung_light,
    hung_lights,
    kind_asked,
)
from bot.questions.light.lit import assumed_told, lamp_name, lit_told
from bot.questions.shared import animal_name
from calc.animal import Animal, State
from calc.light.bands import Bands, LightLife, bands_of, life_of
from calc.light.illuminance import BRIGHTEST_LX, light_doubts, lux_field, total_lux
from calc.light.outdoors import Outdoors, noon_outdoors, outdoors, room_lux
from calc.light.plants import day_sum, plant_class, plant_photons
from calc.light.readings import LX_PER_FOOT_CANDLE, LuxMeter, lux_read
from calc.setup.light import LEAST_LAMP_M
from calc.uncertainty import Estimate, combined_factor
from calc.validity import check

__all__ = ["bright"]

_HOURS = 12.0
_NEAREST = metres(LEAST_LAMP_M, bound=Bound.AT_LEAST)
_SPECTRUM_UNTOLD = Estimate(50.0, 62.0, 78.0)
_SOURCES = ("light_judgement", "light_bands", "daylight_polynomial", "sky_light")


def bright(query: BrightQuery, context: Context) -> Bright | WithoutLux:
    """Work out the brightness from a reading, else from lamps, else what it would take."""
    if query.reading is not None:
        value = query.reading.value * (LX_PER_FOOT_CANDLE if query.reading.is_foot_candles else 1.0)
        meter = LuxMeter(query.by or "meter")
        asked = Asked.PHONE if meter is LuxMeter.PHONE else Asked.METER
        return _bright(query, context, lux_read(value, meter), asked, (), ())
    if query.lamp == COLOURED:
        return _without(Without.COLOURED, query, context)
    lights = query.lights
    if not lights or any(one.distance is None and query.distance is None for one in lights):
        return _nothing_told(query, context)
    if (near := _burning(query, context)) is not None:
        return near
    hung, left_out = hung_lights(query)
    if hung:
        spot = total_lux([one.spot_lx for one in hung])
        check("illuminance", spot.best, 0.0, BRIGHTEST_LX, "lx")
        return _bright(query, context, spot, Asked.LAMP, hung, left_out)
    if len(lights) > 1:
        return _nothing_told(query, context)
    if kind_asked(lights[0].kind).lm_per_w is None:
        return _without(Without.NO_LUMENS, query, context)
    return _how_many(query, context, lights[0])


def _bright(
    query: BrightQuery,
    context: Context,
    spot: Estimate,
    asked: Asked,
    hung: tuple[Hung, ...],
    left_out: tuple[str, ...],
) -> Bright:
    named, life, bands, is_pale = _life(query, context)
    words = bright_words(spot, bands)
    is_short = bands is not None and words in (BrightWords.DIM, BrightWords.DIM_OR_FAIR)
    # Of several lamps none is the one to be brighter.
    alone = hung[0] if len(hung) == 1 and not left_out else None
    flux = None
    if alone is not None and bands is not None and is_short:
        flux = lumens(_lumens_for(alone, bands.fair.spot_lx))
    return Bright(
        spot=lux(spot),
        asked=asked,
        words=words,
        life=life,
        animal=named,
        is_of_the_night=life is not None and life.life is LightLife.NIGHT,
        sky=_sky(query, spot),
        lit=lit_told(query, hung, left_out) if hung else None,
        plants=_plants(query, spot, hung),
        retreat=lux(_retreat_lx(spot, life)),
        for_fair=flux,
        is_pale=is_pale,
        sources=_sources(hung),
    )


def _sources(hung: tuple[Hung, ...]) -> tuple[str, ...]:
    kinds = dict.fromkeys(one.kind.source for one in hung)
    own = (*kinds, "light_forms", "beam_shapes") if hung else ("lux_meters",)
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


def _plants(query: BrightQuery, spot: Estimate, hung: tuple[Hung, ...]) -> BrightPlants:
    photons = plant_photons(spot, _lx_per_umol(hung) if hung else _SPECTRUM_UNTOLD)
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


def _lx_per_umol(hung: tuple[Hung, ...]) -> Estimate:
    """Return what lux make a photon in the light of all lamps together [lx m² s/umol]."""
    given = [(one.spot_lx.best, one.kind.lx_per_umol) for one in hung]
    whole = sum(light for light, _ in given)
    if whole <= 0.0:
        return given[0][1]
    ends = ("low", "best", "high")
    return Estimate(*(whole / sum(e / getattr(ratio, end) for e, ratio in given) for end in ends))


def _lumens_for(hung: Hung, wanted_lx: float) -> Estimate:
    """Return how many lumens of such lamps make a place so bright [lm]."""
    each = hung.light.flux_lm.best * len(hung.lights)
    best = wanted_lx / (float(lux_field(hung.lights, 0.0, 0.0, 0.0)) / each)
    factor = combined_factor(light_doubts(hung.light))
    return Estimate(best / factor, best, best * factor)


def _how_many(query: BrightQuery, context: Context, told: LightLamp) -> WithoutLux:
    """Return the lumens that a kind of lamp needs for a fair and for a bright place."""
    _, life, bands, _ = _life(query, context)
    if life is not None and life.life is LightLife.NIGHT:
        return _without(Without.HOW_MANY_NIGHT, query, context)
    levels = bands or bands_of(LightLife.SUN)
    assert levels is not None
    hung = hung_light(query, replace(told, lumens=1000.0), Estimate.exact(1000.0))
    return replace(
        _without(Without.HOW_MANY, query, context),
        lamp=lamp_name(told.kind),
        fair_flux=lumens(_lumens_for(hung, levels.fair.spot_lx)),
        bright_flux=lumens(_lumens_for(hung, levels.bright.spot_lx)),
        distance=metres(hung.height_m),
        assumed=tuple(assumed_told(one, hung) for one in hung.taken),
        sources=_sources((hung,)),
    )


def _burning(query: BrightQuery, context: Context) -> WithoutLux | None:
    """Return that a lamp for heat hangs so near that it burns, however bright it is."""
    for one in query.lights:
        away = one.distance or query.distance
        warms = one.kind != COLOURED and kind_asked(one.kind).warms
        if away is not None and warms and away.low < LEAST_LAMP_M:
            found = _without(Without.TOO_NEAR, query, context)
            named, at = lamp_name(one.kind), metres(away.low)
            return replace(found, lamp=named, distance=at, nearest=_NEAREST)
    return None


def _nothing_told(query: BrightQuery, context: Context) -> WithoutLux:
    found = _without(Without.NOTHING_TOLD, query, context)
    of_the_night = found.life is not None and found.life.life is LightLife.NIGHT
    return replace(found, why=Without.HOW_MANY_NIGHT) if of_the_night else found


def _without(why: Without, query: BrightQuery, context: Context) -> WithoutLux:
    named, life, _, _ = _life(query, context)
    lamp = query.lamp if query.lamp not in (None, COLOURED) else None
    return WithoutLux(
        why=why,
        animal=named,
        life=life,
        sky=_sky(query, None),
        lamp=lamp_name(lamp) if lamp else None,
        fair_flux=None,
        bright_flux=None,
        distance=None,
        nearest=None,
        assumed=(),
        sources=_SOURCES,
    )
