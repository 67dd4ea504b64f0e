"""How a file is handed over to moderators."""

from bot.kept.values import Kept
from bot.questions.saved.files import document_of
from bot.reply import Reply

__all__ = ["exported"]


def exported(command: str, title: str, name: str, value: Kept) -> Reply:
    """Return the reply that hands a file over."""
    return Reply(
        command=command,
        status="ok",
        title=title,
        answer=f"Here is the file, {name}. Keep it where only you can read it.",
        document=document_of(name, value),
        steps=(f"Take it back with: {command.split()[0]} import file:{name}",),
    )
