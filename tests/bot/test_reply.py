"""The reply as a value: its picture is worked out when somebody looks, and not before."""

import pickle
from unittest.mock import create_autospec

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Picture, Reply

LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


def told(words: str) -> Picture:
    return Picture(words)


def test_a_picture_is_worked_out_once_when_it_is_looked_at() -> None:
    work = create_autospec(told, side_effect=told)
    picture = Picture.later(work, "a curve")
    reply = Reply(command="x", status="ok", title="", answer="", picture=picture)
    work.assert_not_called()
    assert [picture.alt, reply.model_dump()["picture"], picture.drawing] == [
        "a curve",
        {"alt": "a curve"},
        None,
    ]
    work.assert_called_once_with("a curve")


def test_pictures_are_equal_by_what_they_show() -> None:
    assert Picture.later(told, "a") == Picture("a") == Picture.later(told, words="a")
    assert Picture("a") != Picture("b")
    assert len({Picture("a"), Picture.later(told, "a"), Picture("b")}) == 2


def test_a_reply_is_the_same_every_time_and_after_travelling() -> None:
    first, second = (ask(LINE, Preferences()) for _ in range(2))
    assert first == second
    assert hash(first) == hash(second)
    assert pickle.loads(pickle.dumps(first)) == second
    assert first.picture is not None
    assert first.picture.alt in repr(first)
