"""How long reading takes, beside pint's own parser on the nearest text it can read."""

import pint
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.ask import ask
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_length, read_temperature
from bot.language.words import split_line
from bot.preferences import Preferences
from tests.bot.language.hearing_score import (
    HELD_ASIDE,
    TUNED_ON,
    heard_in,
    score,
    sentences,
)

LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
OPTIONS = ("tube", "reflector", "screen", "animal", "uvi", "length", "age")


@pytest.mark.parametrize("text", ["14in", "1 ft 2 in", "35,5 cm", '10–12"'])
def test_read_a_length(benchmark: BenchmarkFixture, text: str) -> None:
    measure = benchmark(read_length, text)
    assert 0.2 < measure.low < 0.5


def test_read_a_temperature(benchmark: BenchmarkFixture) -> None:
    assert benchmark(read_temperature, "39,5 °C").low == 39.5


def test_plain_pint_reads_a_length(benchmark: BenchmarkFixture) -> None:
    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    quantity = benchmark(lambda: registry.Quantity("14 in").to("m"))
    assert round(quantity.magnitude, 6) == 0.3556


def test_plain_pint_makes_its_registry(benchmark: BenchmarkFixture) -> None:
    assert benchmark(pint.UnitRegistry) is not None


def test_take_a_line_apart(benchmark: BenchmarkFixture) -> None:
    assert len(benchmark(split_line, LINE, OPTIONS)[1]) == 4


@pytest.mark.parametrize("text", ["1" * 10_000, "½" * 10_000, "9**9**9", "@everyone **14** in"])
def test_refuse_hostile_text(benchmark: BenchmarkFixture, text: str) -> None:
    def refused() -> bool:
        try:
            read_length(text)
        except NotUnderstoodError:
            return True
        return False

    assert benchmark(refused)


def test_hear_a_long_message(benchmark: BenchmarkFixture) -> None:
    longest = max((row["text"] for row in sentences(TUNED_ON)), key=len)
    assert len(benchmark(heard_in, longest).facts) > 10


def test_hear_the_worst_message(benchmark: BenchmarkFixture) -> None:
    assert benchmark(heard_in, "18 mesh " * 250).questions


def test_how_much_is_heard(benchmark: BenchmarkFixture, capsys: pytest.CaptureFixture[str]) -> None:
    """Print precision and recall by fact, of the tuned sentences and of those held aside."""
    tuned = benchmark(score, TUNED_ON)
    aside = score(HELD_ASIDE)
    with capsys.disabled():
        for title, result in (("tuned on", tuned), ("held aside", aside)):
            print(f"\n\nHearing, sentences {title}\n{result.table()}")
            print("\n".join(result.slips))
    assert tuned.recall > 0.9


def test_check_a_set_up_through_the_door(benchmark: BenchmarkFixture) -> None:
    line = "check beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75"
    assert benchmark(ask, line, Preferences()).status == "ok"


def test_find_the_question_of_a_sentence(benchmark: BenchmarkFixture) -> None:
    words = "how far should a 12% tube be with a polished reflector and no screen, beardie"
    assert benchmark(ask, words, Preferences()).command == "distance"
