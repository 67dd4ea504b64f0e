"""The driver: a stand-in of Discord on 127.0.0.1 in which people ask, press and fill in."""

import asyncio
from collections.abc import AsyncIterator, Mapping, Sequence
from contextlib import asynccontextmanager

import discord
import yarl
from aiohttp import web

from tests.discord.answers import Answer, post_buttons, post_rows
from tests.discord.app import MESSAGE_MENU, Filled, form_data, leaf_options, registered, slash_data
from tests.discord.cast import FERN, GARDEN, Person, Place, Server, Upload, in_server
from tests.discord.exchanges import AUTOCOMPLETE, COMMAND, COMPONENT, MODAL
from tests.discord.gateway import Gateway
from tests.discord.http import BASE, Api
from tests.discord.limits import Json
from tests.discord.payloads import bot_user, interaction, member, message, snowflake, user
from tests.discord.platform import Exchange, Platform, Post

__all__ = ["World"]

DEFERRED = {5}


class World:
    """A running stand-in and what people do in it."""

    def __init__(self, servers: Sequence[Server] = (GARDEN,)) -> None:
        self.platform = Platform(servers)
        self.gateway = Gateway(self.platform)
        self.url = ""
        self._runner: web.AppRunner | None = None
        self._uploads: dict[str, bytes] = {}

    async def open(self) -> None:
        """Listen on a free port of 127.0.0.1."""
        api = Api(self.platform, lambda: self.gateway.url)
        app = web.Application(middlewares=[api.front], client_max_size=30 * 1024 * 1024)
        app.add_routes(api.routes())
        root = web.Application()
        root.router.add_get("/gateway/", self.gateway.handle)
        root.router.add_get("/uploads/{name}", self._uploaded)
        root.router.add_get("/files/{key:.+}", self._attached)
        root.add_subapp(BASE, app)
        self._runner = web.AppRunner(root, shutdown_timeout=1.0)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", 0)
        await site.start()
        port = self._runner.addresses[0][1]
        self.url = f"http://127.0.0.1:{port}{BASE}"
        self.platform.files_at = f"http://127.0.0.1:{port}/files"
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
        try:
            await self.platform.until(
                lambda: task.done() or self.gateway.identifies > before, "the client to identify"
            )
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
        given: Mapping[str, Filled] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Use a slash command and wait for what the asker gets to see."""
        data = slash_data(self.platform.commands[None], name, given or {})
        return await self._ask(COMMAND, data, user, where, locale)

    async def begin(
        self,
        name: str,
        given: Mapping[str, Filled] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Exchange:
        """Use a slash command without waiting for an answer."""
        data = slash_data(self.platform.commands[None], name, given or {})
        return await self._send(COMMAND, data, user, where or in_server(), locale)

    async def type(
        self,
        name: str,
        option: str,
        typed: str,
        given: Mapping[str, Filled] | None = None,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Type into an option of a slash command and wait for what is offered."""
        data = slash_data(
            self.platform.commands[None], name, {**(given or {}), option: typed}, partial=True
        )
        for part in leaf_options(data):
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
        command = registered(self.platform.commands[None], name, MESSAGE_MENU)
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
        data = _pressed(post, label, user)
        return await self._ask(COMPONENT, data, user, place, locale, source=post)

    async def begin_press(self, source: Answer, label: str, *, user: Person = FERN) -> Exchange:
        """Press a button without waiting for what happens."""
        data, place = _pressed(source.post, label, user), source.exchange.place
        return await self._send(COMPONENT, data, user, place, "en-GB", source.post)

    async def pick(
        self,
        source: Answer | Post,
        value: str,
        *,
        user: Person = FERN,
        where: Place | None = None,
        locale: str = "en-GB",
    ) -> Answer:
        """Pick a value from the list of a message."""
        post = source if isinstance(source, Post) else source.post
        assert post.seen_by in (None, user.id), "nobody else sees an ephemeral message"
        parts = [part for row in post_rows(post) for part in row]
        lists = [part for part in parts if part["type"] == 3]
        select = next(p for p in lists if value in [option["value"] for option in p["options"]])
        data = {"custom_id": select["custom_id"], "component_type": 3, "values": [value]}
        place = where or (source.exchange.place if isinstance(source, Answer) else None)
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
        data = form_data(form, values)
        place, source = form.exchange.place, form.exchange.source
        return await self._ask(MODAL, data, user, place, locale, source=source)

    async def begin_form(self, form: Answer, *, user: Person = FERN) -> Exchange:
        """Send a form as it is without waiting for an answer."""
        data = form_data(form, {})
        place, source = form.exchange.place, form.exchange.source
        return await self._send(MODAL, data, user, place, "en-GB", source)

    def says(self, person: Person, text: str, where: Place | None = None) -> Post:
        """Let a person write a message in a channel."""
        place = where or in_server()
        payload = message(place.channel_id, user(person), content=text)
        post = Post(payload, None, frozenset())
        self.platform.posts[post.id] = post
        return post

    async def writes(
        self,
        person: Person,
        text: str,
        where: Place | None = None,
        *,
        to: Post | None = None,
        mentions: bool = True,
    ) -> Post:
        """Let a person write a message that Discord tells the bot of, as a reply or by itself."""
        place = where or in_server()
        post = self.says(person, text, place)
        if mentions:
            post.payload["mentions"] = [bot_user()]
            post.payload["content"] = f"<@{bot_user()['id']}> {text}"
        guild_id = place.server.id if place.server else None
        if guild_id is not None:
            post.payload["guild_id"] = str(guild_id)
            # Of a member a message tells no rights.
            told = member(person)
            post.payload["member"] = {k: told[k] for k in told if k not in ("user", "permissions")}
        if to is not None:
            post.payload["type"] = 19
            post.payload["referenced_message"] = to.payload
        await self.gateway.dispatch("MESSAGE_CREATE", post.payload, guild_id)
        return post

    async def shows_a_photo(self, person: Person, where: Place | None = None) -> Post:
        """Let a person send the bot a photo without a word."""
        place = where or in_server()
        post = self.says(person, f"<@{bot_user()['id']}>", place)
        photo = {"id": str(snowflake()), "filename": "box.jpg", "content_type": "image/jpeg"}
        post.payload |= {"mentions": [bot_user()], "attachments": [photo]}
        guild_id = place.server.id if place.server else None
        if guild_id is not None:
            post.payload["guild_id"] = str(guild_id)
        await self.gateway.dispatch("MESSAGE_CREATE", post.payload, guild_id)
        return post

    def attaches(self, name: str, content: bytes) -> Upload:
        """Let a person choose a file to attach."""
        self._uploads[name] = content
        address = self.url.removesuffix(BASE)
        return Upload(name, f"{address}/uploads/{name}", len(content))

    async def _uploaded(self, request: web.Request) -> web.Response:
        return web.Response(body=self._uploads[request.match_info["name"]])

    async def _attached(self, request: web.Request) -> web.Response:
        return web.Response(body=self.platform.files[request.match_info["key"]])

    def posted(self, channel_id: int) -> list[Post]:
        """Return the messages of a channel that are still there, oldest first."""
        posts = (p for p in self.platform.posts.values() if not (p.deleted or p.ephemeral))
        return [p for p in posts if int(p.payload["channel_id"]) == channel_id]

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
        exchange = Exchange(payload, person, place, self.platform.now(), source=source)
        self.platform.exchanges[token] = exchange
        self.platform.people[person.id] = person
        if place.context == 1:
            self.platform.direct_channels[place.channel_id] = person
        joined = place.server is not None and place.server.has_bot
        guild_id = place.server.id if place.server is not None and joined else None
        await self.gateway.dispatch("INTERACTION_CREATE", payload, guild_id)
        return exchange


def _pressed(post: Post, label: str, user: Person) -> Json:
    assert post.seen_by in (None, user.id), "nobody else sees an ephemeral message"
    button = post_buttons(post)[label]
    assert not button.get("disabled"), "a disabled button cannot be pressed"
    return {"custom_id": button["custom_id"], "component_type": 2}
