"""The site in one language: its folder, its words, and how a page of it is laid out."""

from functools import cache
from typing import Any

from jinja2 import Template
from markupsafe import Markup

from bot import guide
from bot.facts import Say
from bot.preferences import FIRST, LANGUAGES, Language, Preferences
from bot.render.html import environment
from bot.saying.voice import voice

__all__ = ["Edition", "editions"]


class Edition:
    """One language of the site; with ``try_it`` its pages link to the page to try questions.

    ``address`` is where the site will be, ending in a slash, for what needs whole addresses.
    ``archived``: it is the copy that is taken away.
    """

    def __init__(
        self,
        language: Language,
        try_it: bool = False,
        address: str = "",
        archived: bool = False,
    ) -> None:
        self.language, self.try_it, self.address = language, try_it, address
        self.archived = archived
        self.folder = "" if language == FIRST else f"{language}/"
        self.voice = voice(language, Preferences(language=language).shown)

    def say(self, say: Say) -> str:
        """Return a message in the language of the edition."""
        return self.voice.text(say)

    def topic(self, topic: guide.Topic) -> str:
        """Return what a part of the guide is called."""
        return self.say(Say.by("page-topic", topic))

    def page(self, template: str, name: str, **values: Any) -> str:
        """Return the page that stands in the edition's folder under a name."""
        pages = guide.pages(self.language)
        topics = [(self.topic(t), [p for p in pages if p.topic is t]) for t in guide.Topic]
        up = "../" if self.folder else ""
        return _template(template).render(
            say=self._word,
            language=self.language,
            editions=[(e.language, e.own_name, f"{up}{e.folder}{name}") for e in editions()],
            up=up,
            try_it=self.try_it,
            archived=self.archived,
            parts=[part for part in topics if part[1]],
            site=self.address,
            folder=self.folder,
            here=f"{self.folder}{name.removesuffix('index.html')}",
            **{"contents": (), **values},
        )

    def illustration(self, figure: guide.Figure, picture: Markup) -> Markup:
        """Return a figure of the guide with its caption, and the question that draws it."""
        macros: Any = _template("macros.html").module
        told: Markup = macros.illustration(figure, picture, self._word, self.try_it)
        return told

    @property
    def own_name(self) -> str:
        """Return what the language calls itself."""
        return self.say(Say("page-language"))

    def _word(self, key: str) -> str:
        return self.voice.referred(key, None)


def _template(name: str) -> Template:
    return environment("bot.fronts.pages").get_template(name)


@cache
def editions(
    try_it: bool = False, address: str = "", archived: bool = False
) -> tuple[Edition, ...]:
    """Return the site in every language."""
    return tuple(Edition(language, try_it, address, archived) for language in LANGUAGES)
