"""Lengths, temperatures, differences, watts and times as people type them."""

import pytest

from bot.language.errors import NotUnderstoodError
from bot.language.quantities import (
    Dimension,
    Units,
    convert,
    read_convertible,
    read_duration,
    read_length,
    read_number,
    read_number_range,
    read_percent,
    read_power,
    read_surface_temperature,
    read_temperature,
    read_temperature_difference,
    read_volume,
    single,
)
from tests.bot.refusing import refused, sentence

LENGTHS = [
    ("14in", 0.3556, "in"),
    ('14 "', 0.3556, "in"),
    ("14”", 0.3556, "in"),
    ("14″", 0.3556, "in"),
    ("14''", 0.3556, "in"),
    ("14 in.", 0.3556, "in"),
    ("14 Inches", 0.3556, "in"),
    ("1'2\"", 0.3556, "ft"),
    ("1’2”", 0.3556, "ft"),
    ("1'2", 0.3556, "ft"),
    ("1 ft 2 in", 0.3556, "ft"),
    ("1ft2in", 0.3556, "ft"),
    ("1 foot and 2 inches", 0.3556, "ft"),
    ("2 ft 6 in", 0.762, "ft"),
    ("1.5ft", 0.4572, "ft"),
    ("14 1/2 in", 0.3683, "in"),
    ("14-1/2 in", 0.3683, "in"),
    ("14½ in", 0.3683, "in"),
    ("1⁄2 in", 0.0127, "in"),
    ('¾"', 0.01905, "in"),
    ("1½ in", 0.0381, "in"),
    (".5 in", 0.0127, "in"),
    ("35cm", 0.35, "cm"),
    ("35,5 cm", 0.355, "cm"),
    ("35,55cm", 0.3555, "cm"),
    ("0,350 m", 0.35, "m"),
    ("0.35 m", 0.35, "m"),
    ("1 m 20 cm", 1.2, "m"),
    ("350mm", 0.35, "mm"),
    ("３５ｃｍ", 0.35, "cm"),
    ("35 ㎝", 0.35, "cm"),
    ("35\u00a0cm", 0.35, "cm"),
    ("35\u202fcm", 0.35, "cm"),
    ("~14 in", 0.3556, "in"),
    ("about 14 in", 0.3556, "in"),
    ("two feet", 0.6096, "ft"),
    ("a foot", 0.3048, "ft"),
    ("0 in", 0.0, "in"),
]


@pytest.mark.parametrize(("text", "metres", "unit"), LENGTHS)
def test_a_length_is_read_exactly(text: str, metres: float, unit: str) -> None:
    measure = read_length(text)
    assert (measure.low, measure.high, measure.unit) == (metres, metres, unit)
    assert measure.dimension is Dimension.LENGTH
    assert not measure.assumed


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("10 to 12 inches", 0.254, 0.3048),
        ('10–12"', 0.254, 0.3048),
        ("10-12in", 0.254, 0.3048),
        ("10 — 12 in", 0.254, 0.3048),
        ("10〜12in", 0.254, 0.3048),
        ("12-10in", 0.254, 0.3048),
        ("10 in - 12", 0.254, 0.3048),
        ("10in to 30cm", 0.254, 0.3),
        ("between 10 and 12 in", 0.254, 0.3048),
        ("from 10 to 12 in", 0.254, 0.3048),
        ("10 - 12 1/2 in", 0.254, 0.3175),
        ("1'2\" - 1'6\"", 0.3556, 0.4572),
        ("1-2 ft", 0.3048, 0.6096),
    ],
)
def test_a_range_stays_a_range(text: str, low: float, high: float) -> None:
    measure = read_length(text)
    assert (measure.low, measure.high) == (low, high)


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("104F", 40.0),
        ("104 °F", 40.0),
        ("104 ℉", 40.0),
        ("104ºF", 40.0),
        ("104 deg F", 40.0),
        ("104 degrees fahrenheit", 40.0),
        ("95 F.", 35.0),
        ("39.5C", 39.5),
        ("39,5 °C", 39.5),
        ("40 ℃", 40.0),
        ("40 celcius", 40.0),
        ("-5 C", -5.0),
        ("−5 °C", -5.0),
        ("-273.15 C", -273.15),
    ],
)
def test_a_temperature_is_read_without_dust(text: str, celsius: float) -> None:
    assert read_temperature(text).low == celsius


def test_a_range_of_temperatures_may_cross_zero_and_holds_both_ends() -> None:
    assert (read_temperature("-5 to 5 C").low, read_temperature("-5-5 C").high) == (-5.0, 5.0)
    basking = read_temperature("95-110F")
    assert (basking.low, round(basking.high, 2)) == (35.0, 43.33)


def test_a_difference_is_no_temperature() -> None:
    assert read_temperature_difference("9F").low == 5.0
    assert read_temperature_difference("difference of 9 F").low == 5.0
    assert read_temperature_difference("5 K").low == 5.0
    assert read_convertible("9F difference").dimension is Dimension.TEMPERATURE_DIFFERENCE
    assert read_convertible("9F").dimension is Dimension.TEMPERATURE


def test_a_bare_number_takes_a_unit_only_from_the_caller() -> None:
    for read in (read_length, read_temperature, read_temperature_difference):
        with pytest.raises(NotUnderstoodError):
            read("40")
        assert read("40", Units.CM).assumed
    assert read_length("14", Units.IN).low == 0.3556
    assert read_length("10-12", Units.CM).high == 0.12
    assert read_temperature("104", Units.IN).low == 40.0
    assert read_temperature("104°", Units.IN).low == 40.0
    assert read_temperature_difference("9", Units.IN).low == 5.0
    assert not read_length("14 cm", Units.IN).assumed


def test_a_temperature_that_could_be_either_is_asked_for_in_both_units() -> None:
    with refused("45F or 45C, whichever your thermometer shows"):
        read_surface_temperature("45")


def test_a_bare_number_to_convert_is_asked_about_even_with_a_setting() -> None:
    with refused("with its unit"):
        read_convertible("14", Units.IN)


@pytest.mark.parametrize(
    ("text", "one", "other"),
    [
        ("1,200 mm", "1200", "1.2"),
        ("１，２００ mm", "1200", "1.2"),
        ("1.200 mm", "1200", "1.2"),
        ("2,540 cm", "2540", "2.54"),
        ("10 to 1,200 mm", "1200", "1.2"),
    ],
)
def test_thousands_are_asked_about_with_both_readings(text: str, one: str, other: str) -> None:
    for read in (read_length, read_convertible):
        with pytest.raises(NotUnderstoodError) as caught:
            read(text)
        assert f"may be {one} or {other}" in sentence(caught.value)
        assert read_length(caught.value.example).low > 0


@pytest.mark.parametrize(
    "text",
    [
        *("95F", "14 kg", "14 in 3", "1 ft 14 in", "1.5 ft 2 in", "2 in 1 ft", "1 ft 2", "-3 in"),
        *("1 200 mm", "1.200,5 mm", "1.2.3 in", "4/3 in", "95/110 in", "14 in; 2", "1,2,3 in"),
        *("between 10 in", "10 to in", "10 or 12 in", "to 12 in", "in", "", "   ", "half"),
    ],
)
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_length(text)


@pytest.mark.parametrize("text", ["-273.16 C", "-460F", "-500 C"])
def test_nothing_is_colder_than_absolute_zero(text: str) -> None:
    with refused("absolute zero"):
        read_temperature(text)


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        *(("12 hours", 12), ("12h", 12), ("1 h 30 min", 1.5), ("90 minutes", 1.5), ("3600 s", 1)),
        *(("2 weeks", 336), ("a day", 24), ("2 to 3 hrs", 2)),
    ],
)
def test_a_time_is_read(text: str, hours: float) -> None:
    assert read_duration(text).low == hours * 3600


def test_months_and_years_agree() -> None:
    assert read_duration("12 months").low == read_duration("1 year").low
    assert read_duration("half a year").low == read_duration("6 mo").low
    assert read_duration("1 year 6 months").low == read_duration("18 months").low
    assert read_duration("6", bare="month").low == read_duration("6 months").low
    with pytest.raises(NotUnderstoodError):
        read_duration("6m")


def test_watts_percentages_volumes_and_numbers() -> None:
    assert (read_power("75W").low, read_power("75 watts").low, read_power("75").low) == (75,) * 3
    assert read_power("75").assumed
    assert not read_power("50-75w").assumed
    assert read_percent("80%") == read_percent("80") == read_percent("80 percent") == 0.8
    assert read_volume("40 gallons").low == pytest.approx(0.1514164714, abs=1e-9)
    assert read_volume("100 l").low == 0.1
    assert read_number("4,5") == 4.5
    assert read_number_range("3-5") == read_number_range("3 to 5") == (3.0, 5.0)
    assert read_number_range("UVI 4") == (4.0, 4.0)


@pytest.mark.parametrize("text", ["120%", "-5%", "1,200%", "x"])
def test_what_is_no_percentage_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_percent(text)


@pytest.mark.parametrize("text", ["-1", "-3-5", "nan", "3-5-7", "1,234", "3 in"])
def test_what_is_no_number_of_a_uv_index_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_number_range(text)


def test_one_number_is_wanted_where_a_range_would_not_do() -> None:
    with pytest.raises(NotUnderstoodError):
        read_number("3-5")
    with refused("one value"):
        single(read_length("10-12 in"))
    measure = read_length("10 in")
    assert single(measure) is measure


def test_a_measure_knows_the_system_it_was_written_in() -> None:
    assert read_length("1 ft 2 in").system is Units.IN
    assert read_length("35 cm").system is Units.CM
    assert read_temperature("104F").system is Units.IN
    assert read_power("75W").system is None


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_is_no_number_is_not_converted(value: float) -> None:
    with pytest.raises(ValueError, match=r"nan|inf"):
        convert(value, "in", "m")
