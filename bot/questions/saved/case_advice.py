"""What a helper advises, read into values and held against the limits of the animal.

Words: ``words/<language>/cases.ftl``.
"""

from collections.abc import Iterator
from datetime import date

from pydantic import ValidationError

from bot.dangers.past_limits import alarms_past
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.cases import AdviseQuery
from bot.queries.saved import NEW
from bot.queries.uv import UviQuery
from bot.questions.past_limit import alarms_of
from bot.questions.saved.beside import MET
from bot.questions.saved.setup import question_of
from bot.questions.saved.unable import Unable, tell_unable, unable
from bot.questions.shared import limits_for
from bot.questions.uv.uvi import UVI
from bot.refusal import RefusedError
from bot.reply import Alarm
from bot.saved.cases import Advice, Advised
from bot.saved.keeper import KEPT_AS, Enclosure, kept_quantity
from calc.animals import animal_name
from calc.quantities import Quantity
from calc.uv.placement import SAFE_MINIMUM_M
from calc.validity import OutsideModelError

__all__ = ["advice_of"]

_BROUGHT = (
    Quantity.BASKING_SURFACE,
    Quantity.WARM_AIR,
    Quantity.COOL_AIR,
    Quantity.NIGHT_AIR,
)


def advice_of(
    query: AdviseQuery, kept: Enclosure, day: date, context: Context
) -> tuple[Advice, ...]:
    """Return what is advised; what would lead past a limit is refused, with why."""
    example = f"cases advise number:{query.number} measure:cool"
    try:
        advice = tuple(_advice(query, day))
    except ValidationError as error:
        raise unable("cases advise", Say("cases-cannot-be"), example=example) from error
    if not advice:
        raise unable("cases advise", Say("cases-nothing"), example=example)
    alarms = tuple(a for one in advice for a in _past(one, kept, context))
    near = any(
        one.what is Advised.HANG and one.value is not None and one.value < SAFE_MINIMUM_M
        for one in advice
    )
    if alarms or near:
        why = (Say("cases-past-limit"),)
        raise RefusedError(Unable("cases advise", why, example, alarms), tell_unable, "")
    return advice


def _advice(query: AdviseQuery, day: date) -> Iterator[Advice]:
    if query.vet:
        yield Advice(day=day, what=Advised.VET)
    if query.distance:
        yield Advice(day=day, what=Advised.HANG, value=query.distance.low)
    if query.tube is not None:
        percent = None if query.tube == NEW else float(query.tube)
        yield Advice(day=day, what=Advised.TUBE, value=percent)
    if query.screen:
        yield Advice(day=day, what=Advised.UNSCREEN)
    for of in _BROUGHT:
        measure = getattr(query, KEPT_AS[of])
        if measure is not None:
            yield Advice(day=day, what=Advised.BRING, of=of, value=measure.low)
    if query.measure:
        yield Advice(day=day, what=Advised.READ, of=kept_quantity(query.measure))


def _past(one: Advice, kept: Enclosure, context: Context) -> tuple[Alarm, ...]:
    """Return the hazards that an advice would lead to, as far as the set-up tells."""
    animal = animal_name(kept.setup.animal) if kept.setup.animal else ""
    if one.what is Advised.BRING:
        return alarms_past(
            limits_for(animal, context),
            MET[one.of or Quantity.COOL_AIR](one.value or 0.0),
            asked=True,
        )
    changed: dict[str, object] = {}
    if one.what is Advised.HANG:
        changed = {"distance_m": one.value}
    elif one.what is Advised.TUBE and one.value is not None:
        changed = {"tube_percent": one.value, "lamp": None, "tube_since": None}
    elif one.what is Advised.UNSCREEN:
        changed = {"screen": {}}
    return _under_the_tube(kept, changed, context) if changed else ()


def _under_the_tube(
    kept: Enclosure, changed: dict[str, object], context: Context
) -> tuple[Alarm, ...]:
    """Return the hazards of the UV at the back once that is changed, where it can be told."""
    setup = type(kept.setup).model_validate(kept.setup.model_dump() | changed)
    line = question_of(setup)
    if not line.startswith("uvi "):
        return ()
    assert UVI.facts is not None
    assert UVI.tell is not None
    try:
        texts = UviQuery.texts_in(line.removeprefix("uvi "))
        query = UviQuery.model_validate(texts, context={"own": context.own})
        found = UVI.tell(UVI.facts(query, context)).alarms
    except NotUnderstoodError as error:
        found = alarms_of(error)
    except (ValidationError, OutsideModelError):
        return ()
    return tuple(alarm.model_copy(update={"asked": True}) for alarm in found)
