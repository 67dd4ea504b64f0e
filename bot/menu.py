"""Every question by its name in Discord's menu, with the module in which it stands.

Everyday questions stand alone under their short names, so that a newcomer sees few; no name that
most bots use for themselves does. The console takes every question by both of its names: without
the group's, unless it is about saved data. Words: ``menu.ftl``, ``summary.ftl``, ``option.ftl``.
"""

from typing import Final

from bot.facts import Say

__all__ = [
    "GROUPS",
    "MODULES",
    "STORED_GROUPS",
    "WORDS",
    "about_group",
    "about_option",
    "about_question",
    "bare",
    "menu_name",
    "topic_of",
]

_MENU: Final = {
    "distance": "questions.uv.distance",
    "uv uvi": "questions.uv.uvi",
    "uv tube": "questions.uv.tube",
    "uv meter": "questions.uv.meter",
    "uv decline": "questions.uv.decline",
    "uv dose": "questions.uv.dose",
    "uv card": "questions.uv.card",
    "uv outdoors": "questions.uv.outdoors",
    "temps": "questions.heat.temps",
    "basking": "questions.heat.basking",
    "heat watts": "questions.heat.watts",
    "heat air": "questions.heat.air",
    "night": "questions.heat.night",
    "heat hours": "questions.heat.hours",
    "heat surface": "questions.heat.surface",
    "heat lamp": "questions.heat.lamp",
    "heat bright": "questions.light.bright",
    "ask": "routes.ask",
    "check": "questions.setup.check",
    "plan": "questions.setup.plan",
    "needs": "questions.general.needs",
    "noonstone compare": "questions.uv.compare",
    "noonstone convert": "questions.general.convert",
    "guide": "questions.general.guide",
    "noonstone help": "questions.general.help",
    "noonstone about": "questions.general.about",
    "noonstone next": "questions.setup.next",
    "noonstone arrange": "questions.setup.arrange",
    "noonstone section": "questions.setup.section",
    # Their examples work one after the other, beginning with a store in which there is nothing.
    "mine save": "questions.saved.saving",
    "mine reading": "questions.saved.reading",
    "mine show": "questions.saved.showing",
    "mine sheet": "questions.saved.sheet",
    "mine spare": "questions.saved.stock",
    "mine lamps": "questions.saved.stock",
    "mine boxes": "questions.saved.boxes",
    "mine timer": "questions.saved.timer",
    "mine compare": "questions.saved.comparing",
    "mine share": "questions.saved.case_keeper",
    "cases list": "questions.saved.case_helper",
    "cases advise": "questions.saved.case_helper",
    "cases show": "questions.saved.case_helper",
    "mine case": "questions.saved.case_keeper",
    "cases end": "questions.saved.case_helper",
    "mine unshare": "questions.saved.case_keeper",
    "mine unread": "questions.saved.reading",
    "mine offer": "questions.saved.offer",
    "mine withdraw": "questions.saved.offer",
    "mine group": "questions.saved.pool",
    "mine list": "questions.saved.listing",
    "mine remove": "questions.saved.enclosures",
    "mine prefer": "questions.saved.person",
    "mine export": "questions.saved.person",
    "mine import": "questions.saved.person",
    "mine forget": "questions.saved.person",
    "remind me": "questions.saved.reminding",
    "remind list": "questions.saved.reminding",
    "remind snooze": "questions.saved.reminding",
    "remind off": "questions.saved.reminding",
    "server show": "questions.saved.group",
    "server set": "questions.saved.group",
    "server answers": "questions.saved.group",
    "server lamp": "questions.saved.own_uv",
    "server screen": "questions.saved.own_uv",
    "server target": "questions.saved.own_targets",
    "server animal": "questions.saved.own_animals",
    "server remove": "questions.saved.own_removed",
    "server changes": "questions.saved.log",
    "server vets": "questions.saved.whom",
    "server helpers": "questions.saved.whom",
    "server wrong": "questions.saved.wrongs",
    "server readings": "questions.saved.pool",
    "server public": "questions.saved.public",
    "server posts": "questions.saved.public",
    "server stats": "questions.saved.stats",
    "server export": "questions.saved.group_files",
    "server import": "questions.saved.group_files",
    "server forget": "questions.saved.group_files",
    "board preview": "questions.saved.boards",
    "board post": "questions.saved.boards",
    "board list": "questions.saved.board_list",
    "board refresh": "questions.saved.board_list",
    "board remove": "questions.saved.boards",
}

STORED_GROUPS: Final = ("mine", "remind", "cases", "server", "board")
"""The first words of the questions about saved data, without which they have no name."""

_OWN: Final = {
    shown: shown if shown.startswith(STORED_GROUPS) else shown.rpartition(" ")[2] for shown in _MENU
}
_SHOWN: Final = {name: shown for shown, name in _OWN.items()}

MODULES: Final = {name: f"bot.{_MENU[shown]}" for name, shown in _SHOWN.items()}
"""The module of each question by the question's own name, in the order in which they are listed."""

GROUPS: Final = {
    group: tuple(name for name, shown in _SHOWN.items() if shown == f"{group} {name}")
    for group in ("uv", "heat", "noonstone")
}
"""The groups of questions that have names of their own."""

WORDS: Final = frozenset(f"{group} {name}" for group in ("uv", "heat") for name in GROUPS[group])
"""Names in the menu that somebody may also say, such as a heat lamp."""


def menu_name(name: str) -> str:
    """Return what a question is called in the menu.

    >>> menu_name("meter"), menu_name("distance"), menu_name("mine save")
    ('uv meter', 'distance', 'mine save')
    """
    return _SHOWN.get(name, name)


def bare(name: str) -> str:
    """Return a question's own name for the one that it has in the menu.

    >>> bare("uv meter"), bare("uv distance"), bare("mine save")
    ('meter', 'uv distance', 'mine save')
    """
    return _OWN.get(name, name)


def topic_of(name: str) -> str:
    """Return what a question without saved data is about: its group, or else its room.

    >>> topic_of("meter"), topic_of("night"), topic_of("plan")
    ('uv', 'heat', 'setup')
    """
    group = _SHOWN[name].rpartition(" ")[0]
    return group or _MENU[_SHOWN[name]].split(".")[1]


def about_group(group: str) -> Say:
    """Return what the questions of a group are about."""
    return Say.of("menu", group)


def about_question(name: str) -> Say:
    """Return what a question answers."""
    return Say.of("summary", _slug(name))


def about_option(name: str, option: str) -> Say:
    """Return what an option of a question is for."""
    return Say.of("option", _slug(name), option)


def _slug(name: str) -> str:
    return name.replace(" ", "-")
