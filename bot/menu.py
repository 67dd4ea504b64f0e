"""Where a question stands in Discord's menu: alone, or as one of a group.

Everyday questions stand alone under their short names, so that a newcomer sees few; no name that
most bots use for themselves does. The console takes every question by both of its names.
"""

from typing import Final

__all__ = ["GROUPS", "STORED_GROUPS", "WORDS", "bare", "menu_name"]

GROUPS: Final = {
    "uv": (
        "More about UV: at a distance, which tube, your meter, a map, a day, a table",
        ("uvi", "tube", "meter", "decline", "section", "dose", "card"),
    ),
    "heat": (
        "More about heat and light: watts, air, surfaces, kinds of lamps, hours",
        ("watts", "air", "surface", "lamp", "hours"),
    ),
    "noonstone": (
        "About this bot: what you can ask, and a conversion",
        ("help", "about", "convert"),
    ),
}
"""The groups: what each is about, and its questions, which have names of one word."""

STORED_GROUPS: Final = {
    "mine": "Your own enclosures and readings, kept for you alone",
    "remind": "Reminders to read, replace or re-check",
    "server": "For moderators: the group's settings and its own figures",
    "board": "For moderators: pinned boards, kept up to date",
}
"""The first words of these questions, and what they are about."""

WORDS: Final = frozenset(f"{group} {name}" for group in ("uv", "heat") for name in GROUPS[group][1])
"""Names in the menu that somebody may also say, such as a heat lamp."""

_GROUP_OF: Final = {name: group for group, (_, names) in GROUPS.items() for name in names}


def menu_name(name: str) -> str:
    """Return what a question is called in the menu.

    >>> menu_name("meter"), menu_name("distance"), menu_name("mine save")
    ('uv meter', 'distance', 'mine save')
    """
    group = _GROUP_OF.get(name)
    return f"{group} {name}" if group else name


def bare(name: str) -> str:
    """Return a question's own name for the one that it has in the menu.

    >>> bare("uv meter"), bare("uv distance"), bare("mine save")
    ('meter', 'uv distance', 'mine save')
    """
    group, _, rest = name.partition(" ")
    return rest if _GROUP_OF.get(rest) == group else name
