"""The question what an animal needs."""

from pydantic import Field

from bot.queries.options import AnimalName, Query

__all__ = ["NeedsQuery"]


class NeedsQuery(Query):
    """What an animal needs: UV, surfaces, air, nights and hours of light."""

    animal: AnimalName = Field(
        "", description="the animal, such as bearded dragon", examples=["bearded dragon"]
    )
