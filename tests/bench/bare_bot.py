"""The least bot that discord.py allows: one command that says nothing much. For comparison.

Run as: python tests/bench/bare_bot.py API-ADDRESS GATEWAY-ADDRESS
"""

import sys

import discord
import yarl
from discord import app_commands
from discord.gateway import DiscordWebSocket


class Bare(discord.Client):
    def __init__(self) -> None:
        super().__init__(intents=discord.Intents(guilds=True))
        self.tree = app_commands.CommandTree(self)
        self.tree.command(name="nothing", description="Says nothing much")(nothing)

    async def setup_hook(self) -> None:
        await self.tree.sync()


async def nothing(interaction: discord.Interaction[Bare]) -> None:
    await interaction.response.send_message("nothing")


if __name__ == "__main__":
    discord.http.Route.BASE = sys.argv[1]
    DiscordWebSocket.DEFAULT_GATEWAY = yarl.URL(sys.argv[2])
    Bare().run("loopback", log_handler=None)
