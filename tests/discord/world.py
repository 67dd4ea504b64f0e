"""The driver: a stand-in of Discord on 127.0.0.1 in which people ask, press and fill in."""

import asyncio
from collections.abc import AsyncIterator, Mapping, Sequence
from contextlib import asynccontextmanager

import discord
import yarl
from aiohttp import web

from tests.discord.answers import Answer, post_buttons
from tests.discord.cast import FERN, GARDEN, Person, Place, Server, in_server
from tests.discord.exchanges import AUTOCOMPLETE, COMMAND, COMPONENT, MODAL
from tests.discord.gateway import Gateway
from tests.discord.http import BASE, Api
from tests.discord.limits import Json
from tests.discord.payloads import interaction, member, message, snowflake, user
from tests.discord.platform import Exchange, Platform, Post

__all__ = ["World"]

STRING, USER = 3, 6
CHAT_INPUT, MESSAGE_MENU = 1, 3
DEFERRED = {5}


class World:
    """A running stand-in and what people do in it."""

    def __init__(self, servers: Sequence[Server] = (GARDEN,)) -> None:
        self.platform = Platform(servers)
        self.gateway = Gateway(self.platform)
        self.url = ""
        self._runner: web.AppRunner | None = None

    async def open(self) -> None:
        """Listen on a free port of 127.0.0.1."""
        api = Api(self.platform, lambda: self.gateway.url)
        app = web.Application(middlewares=[api.front], client_max_size=30 * 1024 * 1024)
        app.add_routes(api.routes())
        root = web.Application()
        root.router.add_get("/gateway/", self.gateway.handle)
        root.add_subapp(BASE, app)
        self._runner = web.AppRunner(root, shutdown_timeout=1.0)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", 0)
        await site.start()
        port = self._runner.addresses[0][1]
        self.url = f"http://127.0.0.1:{port}{BASE}"
        self.gateway.url = f"ws://127.0.0.1:{port}/gateway/"

    async def close(self) -> None:
        """Stop listening."""
        assert self._runner is not None
        await self._runner.cleanup()

    @asynccontextmanager
    async def running(self, client: discord.Client) -> AsyncIterator[asyncio.Task[None]]:
        """Run a client in the world until the block ends."""
        before = self.gateway.identifies
        task = asyncio.create_task(client.start(self.platform.token))
        task.add_done_callback(lambda _: self.platform.changed())
        await self.platform.until(
            lambda: task.done() or self.gateway.identifies > before, "the client to identify"
        )
        try:
            if task.done():
                await task
            yield task
        finally:
            await client.close()
            await asyncio.gather(task, return_exceptions=True)

    @property
    def gateway_address(self) -> yarl.URL:
        """Return the gateway's address."""
        return yarl.URL(self.gateway.url)

    # --- what people do ----------------------------------------------------------------------

    async def slash(
        self,
        name: str,
        given: Mapping[str, str | Person] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Use a slash command and wait for what the asker gets to see."""
        data = self._slash_data(name, given or {})
        return await self._ask(COMMAND, data, user, where, locale)

    async def begin(
        self,
        name: str,
        given: Mapping[str, str | Person] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Exchange:
        """Use a slash command without waiting for an answer."""
        data = self._slash_data(name, given or {})
        return await self._send(COMMAND, data, user, where or in_server(), locale)

    async def type(
        self,
        name: str,
        option: str,
        typed: str,
        given: Mapping[str, str | Person] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Type into an option of a slash command and wait for what is offered."""
        data = self._slash_data(name, {**(given or {}), option: typed}, partial=True)
        for part in _leaf_options(data):
            if part["name"] == option:
                part["focused"] = True
        return await self._ask(AUTOCOMPLETE, data, user, where, locale)

    async def menu(
        self,
        name: str,
        target: Post,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Use a message's context menu."""
        command = self._registered(name, MESSAGE_MENU)
        resolved = {"messages": {target.payload["id"]: target.payload}}
        data = {"id": command["id"], "name": name, "type": MESSAGE_MENU}
        data |= {"target_id": target.payload["id"], "resolved": resolved}
        return await self._ask(COMMAND, data, user, where, locale)

    async def press(
        self,
        source: Answer | Post,
        label: str,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Press a button of a message and wait for what happens."""
        post = source if isinstance(source, Post) else source.post
        place = where or (source.exchange.place if isinstance(source, Answer) else None)
        assert post.seen_by in (None, user.id), "nobody else sees an ephemeral message"
        button = post_buttons(post)[label]
        assert not button.get("disabled"), "a disabled button cannot be pressed"
        data = {"custom_id": button["custom_id"], "component_type": 2}
        return await self._ask(COMPONENT, data, user, place, locale, source=post)

    async def submit(
        self,
        form: Answer,
        values: Mapping[str, str],
        *,
        user: Person = FERN,
        locale: str = "en-GB",
    ) -> Answer:
        """Fill in a form by custom id, keep what is pre-filled, and send it."""
        parts = []
        assert values.keys() <= form.fields.keys()
        for custom_id, field in form.fields.items():
            value = values.get(custom_id, field.get("value") or "")
            assert value or not field.get("required", True), f"{custom_id} must be filled in"
            filled = {"type": field["type"], "custom_id": custom_id, "value": value}
            parts.append({"type": 18, "component": filled})
        data = {"custom_id": form.modal["custom_id"], "components": parts}
        place, source = form.exchange.place, form.exchange.source
        return await self._ask(MODAL, data, user, place, locale, source=source)

    def says(self, person: Person, text: str, where: Place | None = None) -> Post:
        """Let a person write a message in a channel."""
        place = where or in_server()
        payload = message(place.channel_id, user(person), content=text)
        post = Post(payload, None, frozenset())
        self.platform.posts[post.id] = post
        return post

    # --- how it is sent ----------------------------------------------------------------------

    async def _ask(
        self,
        kind: int,
        data: Json,
        person: Person,
        where: Place | None,
        locale: str,
        source: Post | None = None,
    ) -> Answer:
        exchange = await self._send(kind, data, person, where or in_server(), locale, source)
        await self.platform.until(lambda: exchange.callback, f"an answer to {data}")
        answer = Answer(self.platform, exchange)
        if answer.kind in DEFERRED:
            await self.platform.until(lambda: not answer.post.loading, f"the answer to {data}")
        return answer

    async def _send(
        self,
        kind: int,
        data: Json,
        person: Person,
        place: Place,
        locale: str = "en-GB",
        source: Post | None = None,
    ) -> Exchange:
        token = f"token-{snowflake()}"
        payload = interaction(kind, person, place, locale=locale, data=data, token=token)
        if source is not None:
            payload["message"] = source.payload
        exchange = Exchange(payload, person, place, self.platform.now(), source)
        self.platform.exchanges[token] = exchange
        self.platform.people[person.id] = person
        if place.context == 1:
            self.platform.direct_channels[place.channel_id] = person
        joined = place.server is not None and place.server.has_bot
        guild_id = place.server.id if place.server is not None and joined else None
        await self.gateway.dispatch("INTERACTION_CREATE", payload, guild_id)
        return exchange

    def _registered(self, name: str, kind: int) -> Json:
        for command in self.platform.commands[None]:
            if command["name"] == name and command.get("type", CHAT_INPUT) == kind:
                return command
        raise AssertionError(f"there is no command {name}")

    def _slash_data(
        self, name: str, given: Mapping[str, str | Person], *, partial: bool = False
    ) -> Json:
        """Return a slash command's data, as far as Discord's own client would let it be sent."""
        first, *path = name.split()
        command = self._registered(first, CHAT_INPUT)
        declared: list[Json] = command.get("options") or []
        steps = []
        for step in path:
            found = next(o for o in declared if o["name"] == step and o["type"] in (1, 2))
            steps.append({"name": step, "type": found["type"]})
            declared = found.get("options") or []
        options = [_filled(declared, key, value, partial) for key, value in given.items()]
        missing = {o["name"] for o in declared if o.get("required")} - given.keys()
        assert partial or not missing, f"{name} needs {missing}"
        for step in reversed(steps):
            options = [{**step, "options": options}]
        data: Json = {"id": command["id"], "name": first, "type": CHAT_INPUT, "options": options}
        people = [value for value in given.values() if isinstance(value, Person)]
        if people:
            users = {str(p.id): user(p) for p in people}
            members = {str(p.id): _without_user(member(p)) for p in people}
            data["resolved"] = {"users": users, "members": members}
        return data


def _filled(declared: list[Json], name: str, value: str | Person, partial: bool) -> Json:
    option = next((o for o in declared if o["name"] == name), None)
    assert option is not None, f"there is no option {name}"
    if isinstance(value, Person):
        assert option["type"] == USER
        return {"name": name, "type": USER, "value": str(value.id)}
    assert option["type"] == STRING, f"{name} is not a text"
    choices = [choice["value"] for choice in option.get("choices") or []]
    assert partial or not choices or value in choices, f"{name} offers only {choices}"
    assert len(value) <= option.get("max_length", 6000)
    return {"name": name, "type": STRING, "value": value}


def _leaf_options(data: Json) -> list[Json]:
    options: list[Json] = data["options"]
    while options and options[0]["type"] in (1, 2):
        options = options[0].get("options") or []
    return options


def _without_user(body: Json) -> Json:
    return {key: value for key, value in body.items() if key != "user"}
