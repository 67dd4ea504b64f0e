"""A figure that cannot be believed spoils its own part of a check, and no other."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

RIGHT = (
    "check bearded dragon, 12% T5 HO, polished reflector, no screen, 17 in to his back, basking "
    "103F, cool end 79F, lamp was on for 3 hours, 66F at night, lights 12 hours a day, halogen"
)


def parts(reply: Reply) -> dict[str, tuple[str, str]]:
    assert reply.status == "ok", reply.answer
    assert reply.table is not None
    whys = {name: text for name, _, text in (told.partition(": ") for told in reply.why)}
    return {name: (verdict, whys[name]) for name, verdict, *_ in reply.table.rows}


@pytest.mark.parametrize(
    ("said", "instead", "part", "read", "accepted", "example"),
    [
        ("17 in to", "0 in to", "UV", "0 in (0 cm)", "from 2 in (5 cm)", "distance:16in"),
        ("17 in to", "1 in to", "UV", "1 in (2.5 cm)", "up to", "distance:16in"),
        ("103F", "400F", "Basking spot", "400 °F", "up to 302 °F (150 °C)", "basking:98F"),
        ("79F", "-40F", "Cool end", "-40 °F (-40 °C)", "from 14 °F (-10 °C)", "cool:78F"),
        ("79F,", "79F, warm end 500F,", "Warm end", "500 °F", "up to 302 °F", "warm:83F"),
        ("66F at", "200F at", "Night", "200 °F", "up to 113 °F (45 °C)", "night:64F"),
        ("halogen", "halogen lamp_on:80h", "Time the lamp was on", "80 h", "24 h", "lamp_on:"),
    ],
)
def test_one_figure_beyond_the_model_leaves_the_rest_judged(
    said: str, instead: str, part: str, read: str, accepted: str, example: str
) -> None:
    assert said in RIGHT
    told = parts(ask(RIGHT, Preferences()))
    reply = ask(RIGHT.replace(said, instead), Preferences())
    found = parts(reply)
    verdict, why = found.pop(part)
    assert verdict == "cannot tell"
    assert read in why
    assert accepted in why
    assert example in why
    # What hangs on the figure itself may go; what stays has the verdict it had.
    for name, (mark, _) in found.items():
        assert mark == told[name][0], name


def test_several_figures_beyond_the_model_are_each_told() -> None:
    reply = ask("check beardie basking 900F, cool end -60F, 300F at night, 12% tube", Preferences())
    found = parts(reply)
    for part in ("Basking spot", "Cool end", "Night"):
        assert found[part][0] == "cannot tell"
        assert "trusted" in found[part][1]


def test_a_strength_that_no_tube_has_is_asked_about_and_not_lost() -> None:
    reply = ask("check beardie 90% tube, humidity 40%, basking 103F", Preferences())
    unclear = "; ".join(row.text for row in reply.rows if row.label == "Unclear")
    assert "90% tube" in unclear
    assert "from 1% to 20%" in unclear
    assert "40%" not in unclear
    assert parts(reply)["Basking spot"][0] == "fine"


def test_a_distance_farther_than_any_lamp_hangs_is_asked_about_and_not_lost() -> None:
    reply = ask("check beardie 12% polished no screen, tube 200in to his back", Preferences())
    unclear = "; ".join(row.text for row in reply.rows if row.label == "Unclear")
    assert "200in" in unclear
    assert "16in" in unclear
