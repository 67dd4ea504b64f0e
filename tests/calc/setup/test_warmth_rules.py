"""The rules of a planned set-up's heat, each against the sentence that states it."""

import pytest

from calc.animal import Target
from calc.animals import animals
from calc.heat.box import Spot, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.held import judge_held
from calc.heat.night import NightDecision, night_plan
from calc.judgement import Judged, Verdict
from calc.limits import limits_of
from calc.setup.warmth import HeatKind, plan_warmth
from calc.uncertainty import Estimate

BOX = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
DRAGON = animals()["bearded-dragon"]
GENTLE = [a for a in animals().values() if a.basking_surface_c is None and a.warm_air_c is not None]
ROOMS_C = range(12, 31, 2)


def test_who_does_not_bask_is_warmed_to_the_warm_end_and_who_does_to_the_cool_end() -> None:
    assert GENTLE
    for animal in (*GENTLE, DRAGON):
        target = animal.warm_air_c if animal in GENTLE else animal.cool_air_c
        assert target is not None
        found = plan_warmth(animal, BOX, 0.2, 18.0)
        spot = Spot.MIDDLE if animal in GENTLE else Spot.WARM_END
        assert found.need == watts_to_hold(BOX, target.aim, 18.0, spot)


def test_who_does_not_bask_and_has_no_lamp_lacks_all_that_holds_the_air() -> None:
    for animal in GENTLE:
        found = plan_warmth(animal, BOX, 0.2, 18.0)
        assert found.kind is HeatKind.GENTLE
        assert found.need is not None
        assert found.short_w == (found.need.total_w if found.need.total_w.best > 0.0 else None)
        short = found.short_w.high if found.short_w else 0.0
        assert found.extra_w is None or found.extra_w >= short


def test_what_the_air_lacks_is_the_need_less_what_the_lamp_leaves_inside() -> None:
    seen = set()
    for room_c in ROOMS_C:
        for watts in (5.0, 25.0, 50.0, 75.0, 100.0, 150.0):
            found = plan_warmth(DRAGON, BOX, 0.2, float(room_c), owned_w=watts)
            assert found.need is not None
            lacks = found.need.total_w.best - watts * found.lamp_place.value
            assert found.air is not None
            cold = not found.air.is_fine and found.air.value.best < found.air.low
            short = None if found.short_w is None else found.short_w.best
            assert short == (pytest.approx(lacks) if cold and lacks > 0.0 else None)
            seen.add(found.air.verdict)
    assert {Verdict.LOW, Verdict.FINE} <= seen
    assert seen & {Verdict.HIGH, Verdict.DANGEROUS}
    assert seen & {Verdict.PROBABLY_LOW, Verdict.CANNOT_TELL}
    assert seen & {Verdict.PROBABLY_HIGH, Verdict.CANNOT_TELL}


SLACK_K = 5.0 / 18.0


def holds(judged: Judged, held: Estimate, cool: Target) -> bool:
    """Return whether a verdict says what its range says: sure only where nine in ten agree."""
    match judged.verdict:
        case Verdict.HIGH:
            return held.low > cool.high
        case Verdict.LOW | Verdict.FAR_TOO_LOW:
            return held.high < cool.low
        case Verdict.FINE:
            return cool.low - SLACK_K <= held.best <= cool.high + SLACK_K
        case Verdict.DANGEROUS:
            caution = limits_of(DRAGON).caution_c
            return caution is not None and held.best >= caution.value
        case Verdict.PROBABLY_LOW:
            return held.best < cool.low <= held.high + SLACK_K
        case Verdict.PROBABLY_HIGH:
            return held.low - SLACK_K <= cool.high < held.best
        case _:
            return held.low <= cool.high and held.high >= cool.low


def test_the_air_is_judged_by_where_its_range_lies() -> None:
    assert DRAGON.cool_air_c is not None
    seen = set()
    for room_c in ROOMS_C:
        for watts in (5.0, 25.0, 50.0, 75.0, 100.0, 150.0):
            found = plan_warmth(DRAGON, BOX, 0.2, float(room_c), owned_w=watts)
            assert found.held_c is not None
            assert found.air == judge_held(found.held_c, DRAGON.cool_air_c, limits_of(DRAGON))
            assert found.air is not None
            assert holds(found.air, found.held_c, DRAGON.cool_air_c), found.air
            seen.add(found.air.verdict)
    assert len(seen) >= 4


@pytest.mark.slow
def test_a_night_gets_an_emitter_where_heat_is_needed_or_keepers_differ_and_nowhere_else() -> None:
    decisions = set()
    for animal in animals().values():
        for night_c in range(0, 31, 2):
            found = plan_warmth(animal, BOX, 0.2, 22.0, float(night_c))
            plan = night_plan(animal, float(night_c))
            assert found.night == plan
            heats = plan.decision in (NightDecision.HEAT, NightDecision.KEEPERS_DIFFER)
            assert (found.emitter is not None) == heats
            decisions.add(plan.decision)
        assert plan_warmth(animal, BOX, 0.2, 22.0).emitter is None
    assert {NightDecision.HEAT, NightDecision.KEEPERS_DIFFER, NightDecision.NOTHING} <= decisions
