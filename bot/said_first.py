"""What every text at the door is listened to for, and the reply behind what was heard."""

from collections.abc import Iterable, Mapping
from functools import cache

from bot.brief import brief_of, fitted
from bot.command import Command
from bot.dangers import listen
from bot.facts import Say
from bot.language.units import Units
from bot.language.uv_lamps import WARM, UvLamp, find_uv_lamp
from bot.preferences import FIRST, LANGUAGES, Preferences
from bot.reply import LABELLED, Alarm, Line, PageLink, Reply, Role, Row
from bot.saying.voice import Voice, voice

__all__ = ["heard_in", "of_its_lamp", "said_first"]

_KIND = "kind"
_CALLED = ("who", "else_who", "also_who")
# Where a phone has no room for whom the group calls, these stand in the parts alone.
_GIVE_WAY = ((Role.CAUTION, 0), (Role.ASSUMED, 0), (Role.RANGE, 0), (Role.STEP, 0))


def heard_in(command: Command | None, given: Mapping[str, str]) -> tuple[Alarm, ...]:
    """Return what cannot wait in the texts of the options.

    A file is not listened to, nor a choice that was offered, nor the name of an animal, nor the
    guide's own name of a page or a part: who opens the page on a danger tells of none.
    """
    options = command.query.options() if command else ()
    files = {option.name for option in options if option.document}
    names = {_plain(choice) for o in options if o.name != _KIND for choice in o.choices}
    names |= {_plain(kind.value) for kind in UvLamp}
    told = (given.get(option.name, "") for option in options if option.completes == "animal")
    names |= {_plain(text) for text in told if _is_name(text)}
    if any(option.completes == "page" for option in options):
        names |= _guide_names()
    heard = (
        # The bare name of a kind is asked about, and tells of nothing that runs.
        alarm.model_copy(update={"asked": True}) if name == _KIND and alarm.words == text else alarm
        for name, text in given.items()
        if name not in files and _plain(text) not in names
        for alarm in listen(text)
    )
    return of_its_lamp(heard, given)


def _is_name(text: str) -> bool:
    """Say whether a text is the name of an animal and nothing more."""
    from calc.naming import Unplaced, named

    found = named(text.strip())
    return not isinstance(found.what, Unplaced) and found.end - found.start == len(text.strip())


def of_its_lamp(
    alarms: Iterable[Alarm], given: Mapping[str, str], kept: Iterable[UvLamp] = ()
) -> tuple[Alarm, ...]:
    """Return alarms that know whether UV and warmth come out of the lamp that was told.

    ``kept`` are the kinds of the group's own lamps that were named.
    """
    alarms = tuple(alarms)
    if not alarms or WARM.isdisjoint((*map(find_uv_lamp, given.values()), *kept)):
        return alarms
    return tuple(alarm.model_copy(update={"one_lamp": True}) for alarm in alarms)


@cache
def _guide_names() -> frozenset[str]:
    """Return the slug and title of every page of the guide, and the headings of its parts."""
    from bot import guide

    pages = [page for language in LANGUAGES for page in guide.pages(language)]
    lines = (line for page in pages for line in page.body.splitlines())
    headings = (line.removeprefix("## ") for line in lines if line.startswith("## "))
    titles = (name for page in pages for name in (page.slug, page.title))
    return frozenset(_plain(name) for name in (*titles, *headings))


def _plain(text: str) -> str:
    return " ".join(text.lower().split())


def said_first(reply: Reply, heard: Iterable[Alarm], preferences: Preferences) -> Reply:
    """Return the reply behind what cannot wait, if anything was heard or found, with its brief."""
    speaker = voice(preferences.spoken, _units(reply, preferences))
    told = _behind(reply, (*heard, *reply.alarms), preferences, speaker)
    labels = tuple(speaker.text(Say.of("part", name)) for name in LABELLED)
    made = {"brief": brief_of(told), "labels": labels, "around": speaker.language}
    told = _with_vets(told.model_copy(update=made), preferences.vets, speaker)
    if told.language == preferences.spoken:
        return told
    note = Say("only-english-rest") if told.dangers else Say("only-english")
    line = Line(role=Role.ASSUMED, text=speaker.text(note))
    return told.model_copy(update={"brief": (*told.brief, line)})


def _behind(
    reply: Reply, alarms: tuple[Alarm, ...], preferences: Preferences, speaker: Voice
) -> Reply:
    """Return the reply behind what alarms, or as it is where nothing does."""
    if not alarms:
        return reply
    from bot.dangers.first import first
    from bot.linking import page_links

    def link(slug: str) -> PageLink:
        return page_links((slug,), preferences.guide_url, preferences.spoken)[0]

    def heading(slug: str, part: str) -> str:
        if preferences.spoken == FIRST:
            return part
        from bot.guide import heading_in

        return heading_in(slug, part, preferences.spoken)

    return first(reply, alarms, link, speaker, heading)


def _with_vets(reply: Reply, vets: str, speaker: Voice) -> Reply:
    """Return a reply that calls a vet with whom the asker's group calls, right behind the call."""
    if not vets or not reply.dangers:
        return reply
    from bot.dangers.first import Quoted
    from bot.dangers.table import Who

    called = {danger.call.get(who) for danger in reply.dangers for who in _CALLED}
    if Who.VET.value not in called:
        return reply
    line = Line(role=Role.CALL, text=speaker.text(Say("door-vets", Quoted(vets))))
    calls = [i for i, each in enumerate(reply.brief) if each.role in (Role.DANGER, Role.CALL)]
    place = calls[-1] + 1 if calls else 0
    brief = fitted((*reply.brief[:place], line, *reply.brief[place:]), _GIVE_WAY)
    row = Row(label=speaker.text(Say("door-label-vets")), text=vets)
    return reply.model_copy(update={"brief": brief, "rows": (row, *reply.rows)})


def _units(reply: Reply, preferences: Preferences) -> Units:
    """Return the unit that stands first: the reply's own, else what is known of the asker."""
    return Units(reply.units) if reply.units else preferences.shown
