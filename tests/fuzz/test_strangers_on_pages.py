"""The pages on a real socket: one test, because the site takes its time to be drawn."""

import pytest
from hypothesis import example, given, settings

from tests.bot.language.test_hostile import ENDLESS, HOSTILE
from tests.fuzz.pages import asked_on_the_page, sent_to_the_server
from tests.fuzz.test_strangers import NUMBERS, SALADS
from tests.some import some


@pytest.mark.slow
@settings(max_examples=some(150))
@given(number=NUMBERS, text=SALADS)
@example(number=0, text="".join(HOSTILE)[:1900])
@example(number=1, text=ENDLESS[0])
@example(number=2, text=ENDLESS[2])
def test_the_pages_take_anything(number: int, text: str) -> None:
    asked_on_the_page(number, text)
    sent_to_the_server(number, text)
