"""Minutes of coverage-guided fuzzing by atheris: ``python -m tests.fuzz TARGET [SECONDS]``.

Needs the extra ``fuzz``. What it finds is printed with the text that did it; the inputs that
reached something new are kept in a folder of the system's temporary files for the next run.
"""

import sys
from pathlib import Path
from tempfile import gettempdir

import atheris

_SECONDS = 300
# A text takes at most 50 ms by itself; watching every branch makes that slower by far.
_HANGS_S = 20
_LONGEST_BYTES = 4000
_TRIED_FIRST = 200


def main(arguments: list[str]) -> None:
    """Fuzz one target until the time is over or something was found."""
    with atheris.instrument_imports(include=["bot", "calc"]):
        from tests.fuzz.seeds import dictionary, seeds_of
        from tests.fuzz.targets import TARGETS
    if not arguments or arguments[0] not in TARGETS:
        sys.exit(f"python -m tests.fuzz TARGET [SECONDS]; targets: {', '.join(TARGETS)}")
    target = TARGETS[arguments[0]]
    seconds = int(arguments[1]) if len(arguments) > 1 else _SECONDS
    corpus = Path(gettempdir()) / "noonstone-fuzz" / arguments[0]
    corpus.mkdir(parents=True, exist_ok=True)
    words = corpus.parent / "words.dict"
    words.write_text(dictionary(), encoding="ascii")
    for index, (number, text) in enumerate(seeds_of(arguments[0])):
        seed = number.to_bytes(2, "little") + text.encode("utf-8", "surrogatepass")
        (corpus / f"seed-{index}").write_bytes(seed)
        if index < _TRIED_FIRST:
            # What is loaded at the first use would otherwise be taken for a hang.
            target(number, text)

    def one_input(data: bytes) -> None:
        number = int.from_bytes(data[:2], "little")
        target(number, data[2:].decode("utf-8", "replace"))

    limits = [f"-max_total_time={seconds}", f"-timeout={_HANGS_S}", f"-max_len={_LONGEST_BYTES}"]
    limits.append(f"-dict={words}")
    atheris.Setup(
        [sys.argv[0], *limits, f"-artifact_prefix={corpus.parent}/", str(corpus)], one_input
    )
    atheris.Fuzz()


if __name__ == "__main__":
    main(sys.argv[1:])
