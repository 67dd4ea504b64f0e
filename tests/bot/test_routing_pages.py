"""Free words find the guide page of what they ask about."""

import pytest

from bot.command import Routed
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.setup import AskQuery
from bot.routes.routing import route


@pytest.mark.parametrize(
    ("words", "page"),
    [("whats a reflector?", "reflectors"), ("whats a screen", "screens")],
)
def test_a_page_is_found_by_one_of_what_it_tells_of(words: str, page: str) -> None:
    found = route(AskQuery(question=words), Context(Units.IN))
    assert isinstance(found, Routed)
    assert (found.command, found.given["page"]) == ("guide", page)
