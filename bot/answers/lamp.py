"""What a kind of heat source is good for, and why."""

from bot.answers.heat_parts import HEAT_CAUTIONS
from bot.answers.linking import page_links, source_lines
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.uv_lamps import UvLamp
from bot.preferences import Context
from bot.queries.heat import LampQuery
from bot.reply import Reply, Row, Table
from calc.heat.sources_of_heat import (
    Basking,
    HeatSource,
    find_heat_source,
    heat_source_names,
    heat_sources,
)

__all__ = ["answer_lamp"]

_GUIDE = ("basking-lamps", "heat-sources", "fire-and-electrical-safety")
_VERDICTS = {
    Basking.GOOD: "good for the basking spot",
    Basking.NOT_FOR_BASKING: "not for the basking spot",
    Basking.BY_METER: "only for who has a UV index meter",
    Basking.NOT_AT_ALL: "not for this set-up at all",
}
_SCOPE = "for an animal that basks under a lamp, with its UV from a separate tube"


def answer_lamp(query: LampQuery, context: Context) -> Reply:
    """Answer for one kind, or list them all."""
    if not query.kind.strip():
        return _every_kind(context)
    kind = find_heat_source(query.kind)
    if kind is None:
        near = closest(query.kind.lower(), _every_name())
        wish = f"perhaps {near}; " if near else ""
        raise NotUnderstoodError(
            shown(query.kind),
            f"a kind of lamp or heater ({wish}{', '.join(heat_source_names())})",
            f"lamp kind:{near or 'halogen flood'}",
            "kind",
        )
    return _one_kind(kind, context)


def _with_article(name: str) -> str:
    """Return the name behind the article that is said before it: an LED, but a UV lamp."""
    is_an = name.startswith("LED") or (name[0].lower() in "aeiou" and not name.startswith("UV"))
    return f"{'An' if is_an else 'A'} {name}"


def _one_kind(kind: HeatSource, context: Context) -> Reply:
    return Reply(
        command="lamp",
        status="ok",
        title=kind.name[0].upper() + kind.name[1:],
        answer=f"{_with_article(kind.name)} is {_VERDICTS[kind.basking]}. {kind.why}",
        rows=(
            Row(label="Its place", text=kind.place),
            Row(label="UV", text=kind.uv),
            Row(label="Heat", text=kind.heat),
            Row(label="Light", text="yes" if kind.gives_light else "none"),
            Row(label="Said of", text=_SCOPE),
        ),
        steps=_steps(kind),
        cautions=(kind.caution, *HEAT_CAUTIONS),
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((kind.source, "common_practice", "fire_service_lamps")),
    )


_UV_LAMPS = {
    "t8-tube": UvLamp.OTHER_TUBE,
    "compact-uv": UvLamp.COMPACT,
    "metal-halide": UvLamp.METAL_HALIDE,
    "mercury-vapour": UvLamp.MERCURY,
    "uv-led": UvLamp.LED,
}
_NIGHT_LAMPS = ("night-lamp", "red-lamp")
_OFF_TONIGHT = (
    "Leave it off tonight: the night should be dark. Ask night with your room's temperature to "
    "learn whether any heat is needed."
)


def _steps(kind: HeatSource) -> tuple[str, ...]:
    if kind.slug == "t5-ho-tube":
        return ("Ask distance with its strength, fixture and screen to learn where it hangs.",)
    if uv_lamp := _UV_LAMPS.get(kind.slug):
        return (f"If you have one, ask: distance lamp:{uv_lamp.value} animal:bearded dragon",)
    if kind.basking is Basking.GOOD:
        return (
            "Ask watts for a first size, then basking to set its distance from your own reading.",
        )
    if kind.basking is Basking.NOT_AT_ALL and not kind.gives_light:
        return (
            (
                "If you have one: unplug it and take it out today, and look at the animal's belly. "
                "A burn needs a reptile vet. A flat stone under a white flood lamp does the job."
            ),
        )
    if kind.basking is Basking.NOT_AT_ALL:
        return (
            *((_OFF_TONIGHT,) if kind.slug in _NIGHT_LAMPS else ()),
            (
                "If you have one: do not panic. Keep the animal warm today, and plan the change to "
                "a white flood lamp for the basking spot and a T5 HO tube for the UV."
            ),
        )
    return ("For the basking spot take a white flood lamp; use this one only in its own place.",)


def _every_kind(context: Context) -> Reply:
    kinds = heat_sources().values()
    return Reply(
        command="lamp",
        status="ok",
        title="Heat sources, one by one",
        answer=(
            "For the basking spot take a white flood lamp, incandescent or halogen; the others "
            "have their place elsewhere or none here."
        ),
        table=Table(
            columns=("Kind", "Basking spot", "Light"),
            rows=tuple(
                (kind.name, _VERDICTS[kind.basking], "yes" if kind.gives_light else "none")
                for kind in kinds
            ),
        ),
        rows=(Row(label="Said of", text=_SCOPE),),
        steps=("Name one to learn why: lamp ceramic heat emitter.",),
        cautions=HEAT_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(kind.source for kind in kinds),
    )


def _every_name() -> list[str]:
    return [name for kind in heat_sources().values() for name in (kind.name, *kind.aliases)]
