"""How a heat lamp hangs by a tube, heard in free words; what is denied or said twice is not."""

import pytest

from bot.language.arranged import LampBeside, lamp_beside_in


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("halogen right next to the uvb", LampBeside.SIDE_BY_SIDE),
        ("they hang side-by-side over his rock", LampBeside.SIDE_BY_SIDE),
        ("both are on the same side", LampBeside.SIDE_BY_SIDE),
        ("Strahler neben der Röhre", LampBeside.SIDE_BY_SIDE),
        ("lamp then tube, end to end", LampBeside.IN_A_ROW),
        ("hängen in einer Reihe", LampBeside.IN_A_ROW),
        ("uvb is over the cool side", LampBeside.APART),
        ("they are at opposite ends", LampBeside.APART),
        ("die Röhre hängt über der kühlen Seite", LampBeside.APART),
        ("not side by side", None),
        ("side by side or in a row?", None),
        ("12% tube, 16in to his back, cool side 75F", None),
        ("heat lamp is beside the uvb tube, 16in up", LampBeside.SIDE_BY_SIDE),
        ("beside the tube", LampBeside.SIDE_BY_SIDE),
        ("the uvb and the basking lamp are on the same side of the tank", LampBeside.SIDE_BY_SIDE),
        ("halogen is not beside the tube", None),
        ("thermometer probe next to the basking spot, cool 75F, basking 98F", None),
        ("12% tube 16in to his back, a hide next to the water bowl", None),
        ("2 tubes side by side, 12%, shiny hood, no mesh, 16in to his back", None),
        ("beardie, 12%, hides at opposite ends of the tank, 16in to back", None),
        ("", None),
    ],
)
def test_where_the_lamp_hangs_is_heard(text: str, found: LampBeside | None) -> None:
    assert lamp_beside_in(text) is found
