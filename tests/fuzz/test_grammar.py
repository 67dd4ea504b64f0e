"""Every question with options that work, nearly work or are meant badly, in any mixture."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.command import Command
from bot.commands import ALL_COMMANDS
from tests.fuzz.grammar import asked_in_full
from tests.fuzz.pool import examples_of, pool
from tests.some import some


@st.composite
def mixtures(draw: st.DrawFn, command: Command) -> dict[str, str]:
    """Draw an example of the command with some options changed, added or taken away."""
    mixed = dict(draw(st.sampled_from([*examples_of(command), {}])))
    for option in command.query.options():
        change = draw(st.sampled_from(["keep", "keep", "keep", "keep", "put", "take"]))
        if change == "put":
            mixed[option.name] = draw(st.sampled_from(pool(command, option.name)))
        elif change == "take":
            mixed.pop(option.name, None)
    return mixed


@pytest.mark.parametrize("command", ALL_COMMANDS, ids=lambda command: command.name)
@settings(max_examples=some(10))
@given(data=st.data())
def test_any_mixture_of_options_is_answered_or_refused_with_a_way_on(
    command: Command, data: st.DataObject
) -> None:
    asked_in_full(command, data.draw(mixtures(command)))
