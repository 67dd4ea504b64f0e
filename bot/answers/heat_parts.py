"""The cautions of the answers about heat that still make their own sentences."""

__all__ = ["HEAT_CAUTIONS"]

HEAT_CAUTIONS = (
    (
        "Heat lamps burn skin and start fires: guard, ceramic holder, two supports, nothing near "
        "that burns."
    ),
    (
        "Switch off and let it cool before you move or change a lamp; follow your local electrical "
        "codes."
    ),
    (
        "An animal that gapes and stays in the coolest corner, lies limp or is burnt needs a "
        "reptile vet."
    ),
)
