"""Where the program begins: nothing else is loaded before it runs lightly."""

from collections.abc import Sequence

from bot.operating.lightly import lightly

__all__ = ["main"]


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command of the command line and return its exit code."""
    with lightly():
        from bot.command_line import run

        return run(arguments)
    return 0


if __name__ == "__main__":
    import sys

    sys.exit(main())
