"""Pictures as files: each in its own place, and a failed one costs nothing but itself."""

from pathlib import Path

import pytest

from bot.ask import ask
from bot.drawing import Card, CardRow, Cell
from bot.fronts.gallery import keep_picture
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.reply import Picture

DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
# A row with a cell too few: what a mistake of our own would look like.
BROKEN = Card("a", "", "", ("one", "two"), (CardRow("row", (Cell("x"),)),))


def test_a_kept_picture_is_the_one_that_is_drawn(tmp_path: Path, anyone: Preferences) -> None:
    reply = ask(DISTANCE, anyone)
    path = keep_picture(reply, tmp_path)
    assert path is not None
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    assert path.read_bytes() == draw(reply.picture.drawing)


def test_a_picture_that_fails_is_logged_and_leaves_no_file(
    tmp_path: Path, anyone: Preferences, caplog: pytest.LogCaptureFixture
) -> None:
    broken = Picture(alt="x", drawing=BROKEN)
    reply = ask(DISTANCE, anyone).model_copy(update={"picture": broken})
    assert keep_picture(reply, tmp_path) is None
    assert list(tmp_path.iterdir()) == []
    assert len(caplog.records) == 1


@pytest.mark.slow
def test_two_pictures_in_one_folder_do_not_take_each_others_place(
    tmp_path: Path, anyone: Preferences
) -> None:
    lines = (DISTANCE, DISTANCE.replace("polished", "plain"), DISTANCE)
    kept = {keep_picture(ask(line, anyone), tmp_path / "new") for line in lines}
    assert len(kept) == 2
    assert {path.name for path in (tmp_path / "new").iterdir()} == {p.name for p in kept if p}


def test_the_file_of_a_question_of_two_words_is_named_without_a_space(
    tmp_path: Path, anyone: Preferences
) -> None:
    reply = ask(DISTANCE, anyone).model_copy(update={"command": "mine show"})
    path = keep_picture(reply, tmp_path)
    assert path is not None
    assert path.name.startswith("mine-show-")
