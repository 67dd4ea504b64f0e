"""The HTTP half of the stand-in: routes, rate-limit headers, multipart, faults."""

import asyncio
import json
from collections.abc import Awaitable, Callable, Mapping
from typing import Any, cast

from aiohttp import web
from aiohttp.multipart import BodyPartReader

from tests.discord import exchanges, messages
from tests.discord.cast import Place, in_thread
from tests.discord.command_limits import command_breaches
from tests.discord.limits import Json
from tests.discord.messages import Files
from tests.discord.payloads import APPLICATION_ID, application, bot_user, channel, snowflake
from tests.discord.platform import ApiError, Fault, Platform, Post, Seen, refuse_breaches

__all__ = ["BASE", "Api"]

Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]
BASE = "/api/v10"
# A dictionary, except for commands, which come as a list.
BODY: web.RequestKey[Json] = web.RequestKey("body", dict)
FILES: web.RequestKey[Files] = web.RequestKey("files", dict)
RATE_HEADERS = {
    "X-RateLimit-Limit": "50",
    "X-RateLimit-Remaining": "49",
    "X-RateLimit-Reset": "4102444800",
    "X-RateLimit-Reset-After": "0.1",
    "X-RateLimit-Bucket": "loopback",
}


class Api:
    """The routes over a platform's state."""

    def __init__(self, platform: Platform, gateway_url: Callable[[], str]) -> None:
        self.platform = platform
        self.gateway_url = gateway_url

    def routes(self) -> list[web.RouteDef]:
        """Return every route that the bot may use."""
        get, post, put = web.get, web.post, web.put
        patch, delete = web.patch, web.delete
        app = f"/applications/{APPLICATION_ID}"
        callback = "/interactions/{interaction}/{token}/callback"
        hook = f"/webhooks/{APPLICATION_ID}/{{token}}"
        channel = "/channels/{channel}/messages"
        return [
            get("/users/@me", self.me),
            get("/applications/@me", self.application),
            get("/oauth2/applications/@me", self.application),
            get("/gateway/bot", self.gateway),
            get(f"{app}/commands", self.list_commands),
            put(f"{app}/commands", self.put_commands),
            get(f"{app}/guilds/{{guild}}/commands", self.list_commands),
            put(f"{app}/guilds/{{guild}}/commands", self.put_commands),
            post(callback, self.callback),
            post(hook, self.follow_up),
            get(f"{hook}/messages/{{message}}", self.get_answer),
            patch(f"{hook}/messages/{{message}}", self.edit_answer),
            delete(f"{hook}/messages/{{message}}", self.delete_answer),
            post("/users/@me/channels", self.open_direct),
            get(f"{channel}/pins", self.list_pins),
            put(f"{channel}/pins/{{message}}", self.pin),
            delete(f"{channel}/pins/{{message}}", self.unpin),
            get("/channels/{channel}", self.get_channel),
            post(channel, self.send),
            get(channel, self.list_messages),
            get(f"{channel}/{{message}}", self.get_message),
            patch(f"{channel}/{{message}}", self.edit_message),
            delete(f"{channel}/{{message}}", self.delete_message),
        ]

    # --- what every request passes through ---------------------------------------------------

    @web.middleware
    async def front(self, request: web.Request, handler: Handler) -> web.StreamResponse:
        """Record the request, apply a fault if one waits, and shape the errors."""
        path = request.path.removeprefix(BASE)
        self._note_answer(path)
        body, files = await _read(request)
        request[BODY], request[FILES] = body or {}, files
        fault = next((f for f in self.platform.faults if f.strikes(request.method, path)), None)
        response = await self._answer(request, handler, fault)
        status = 0 if response is None else response.status
        self.platform.seen.append(Seen(request.method, path, body, status))
        self.platform.changed()
        if response is None:
            assert request.transport is not None
            request.transport.abort()
            return web.Response(status=500)
        return response

    def _note_answer(self, path: str) -> None:
        token = path.removesuffix("/callback").rpartition("/")[2]
        exchange = self.platform.exchanges.get(token)
        if exchange is not None and exchange.answered is None:
            exchange.answered = self.platform.now()

    async def _answer(
        self, request: web.Request, handler: Handler, fault: Fault | None
    ) -> web.StreamResponse | None:
        if fault is not None:
            self.platform.changed()
        if fault is not None and fault.kind == "drop":
            return None
        if fault is not None and fault.kind == "hold":
            await fault.released.wait()
        if fault is not None and fault.kind == "status":
            return _faulty(fault)
        try:
            self._check_token(request)
            if self.platform.answer_delay_s and "/channels" in request.path:
                await asyncio.sleep(self.platform.answer_delay_s)
            response = await handler(request)
        except ApiError as error:
            response = _json(error.body, error.status, RATE_HEADERS)
        except Exception as error:
            self.platform.broken.append(error)
            raise
        return None if fault is not None and fault.kind == "lose" else response

    def _check_token(self, request: web.Request) -> None:
        by_token = "/interactions/" in request.path or "/webhooks/" in request.path
        if not by_token and request.headers.get("Authorization") != f"Bot {self.platform.token}":
            raise ApiError(401, 0, "401: Unauthorized")

    # --- the bot and its commands ------------------------------------------------------------

    async def me(self, request: web.Request) -> web.Response:
        """Answer who the bot is."""
        return _ok(bot_user())

    async def application(self, request: web.Request) -> web.Response:
        """Answer what the application is."""
        return _ok(application())

    async def gateway(self, request: web.Request) -> web.Response:
        """Answer where the gateway is."""
        limit = {"total": 1000, "remaining": 999, "reset_after": 1, "max_concurrency": 1}
        wanted = self.platform.shards_wanted
        return _ok({"url": self.gateway_url(), "shards": wanted, "session_start_limit": limit})

    async def list_commands(self, request: web.Request) -> web.Response:
        """Answer the registered commands."""
        return _ok(self.platform.commands.get(_guild(request), []))

    async def put_commands(self, request: web.Request) -> web.Response:
        """Overwrite the commands of a scope after checking every limit."""
        body = cast(list[Json], request[BODY])
        refuse_breaches(command_breaches(body))
        fixed: Json = {"application_id": APPLICATION_ID, "default_member_permissions": None}
        fixed |= {"type": 1, "description": ""}
        guild = _guild(request)
        self.platform.commands[guild] = [
            {**fixed, **command, "id": snowflake(), "version": snowflake()} for command in body
        ]
        self.platform.syncs.append(guild)
        return _ok(self.platform.commands[guild])

    # --- answers to interactions -------------------------------------------------------------

    async def callback(self, request: web.Request) -> web.Response:
        """Take the one callback of an interaction."""
        where = request.match_info
        told = exchanges.respond(
            self.platform, where["interaction"], where["token"], request[BODY], request[FILES]
        )
        if request.query.get("with_response") == "1":
            return _ok(told)
        return web.Response(status=204, headers=RATE_HEADERS)

    async def follow_up(self, request: web.Request) -> web.Response:
        """Take a follow-up message."""
        token = request.match_info["token"]
        body, files = request[BODY], request[FILES]
        return _ok(exchanges.follow_up(self.platform, token, body, files).payload)

    async def get_answer(self, request: web.Request) -> web.Response:
        """Answer an own answer."""
        return _ok(self._own_answer(request).payload)

    async def edit_answer(self, request: web.Request) -> web.Response:
        """Edit an own answer."""
        post = self._own_answer(request)
        return _ok(messages.edit(self.platform, post, request[BODY], request[FILES]).payload)

    async def delete_answer(self, request: web.Request) -> web.Response:
        """Delete an own answer."""
        self._own_answer(request).deleted = True
        return web.Response(status=204, headers=RATE_HEADERS)

    def _own_answer(self, request: web.Request) -> Post:
        where = request.match_info
        return exchanges.original(self.platform, where["token"], where["message"])

    # --- channels ----------------------------------------------------------------------------

    async def open_direct(self, request: web.Request) -> web.Response:
        """Open direct messages with a person."""
        person = self.platform.people[int(request[BODY]["recipient_id"])]
        channel_id = person.id + 1_000_000_000_000_000
        self.platform.direct_channels[channel_id] = person
        return _ok({"id": str(channel_id), "type": 1, "recipients": [], "flags": 0})

    async def send(self, request: web.Request) -> web.Response:
        """Send a message to a channel."""
        body, files = request[BODY], request[FILES]
        channel_id = _number(request, "channel")
        return _ok(messages.post_in_channel(self.platform, channel_id, body, files).payload)

    async def list_messages(self, request: web.Request) -> web.Response:
        """Answer the messages of a channel, newest first."""
        channel_id, most = _number(request, "channel"), int(request.query.get("limit", 50))
        return _ok([p.payload for p in messages.newest(self.platform, channel_id, most)])

    async def get_message(self, request: web.Request) -> web.Response:
        """Answer a message of a channel."""
        return _ok(self._post(request).payload)

    async def edit_message(self, request: web.Request) -> web.Response:
        """Edit an own message of a channel."""
        post, files = self._post(request), request[FILES]
        messages.refuse_files(self.platform, _number(request, "channel"), files)
        return _ok(messages.edit(self.platform, post, request[BODY], files).payload)

    async def delete_message(self, request: web.Request) -> web.Response:
        """Delete a message of a channel, which unpins it."""
        messages.remove(self.platform, self._post(request))
        return web.Response(status=204, headers=RATE_HEADERS)

    async def get_channel(self, request: web.Request) -> web.Response:
        """Return a channel of a server, or a thread of one."""
        number = int(request.match_info["channel"])
        for server in self.platform.servers:
            if number in (server.channel_id, in_thread(server).channel_id):
                return _ok(channel(Place(number, 0, server)))
        raise ApiError(404, 10003, "Unknown Channel")

    async def list_pins(self, request: web.Request) -> web.Response:
        """Answer the pinned messages, newest first, fifty a page."""
        pinned = self.platform.pins.get(_number(request, "channel"), [])
        rows = [self.platform.posts[number].payload for number in pinned[:50]]
        at = "2026-01-01T00:00:00+00:00"
        items = [{"pinned_at": at, "message": row} for row in rows]
        return _ok({"items": items, "has_more": len(pinned) > 50})

    async def pin(self, request: web.Request) -> web.Response:
        """Pin a message."""
        messages.pin(self.platform, _number(request, "channel"), _number(request, "message"))
        return web.Response(status=204, headers=RATE_HEADERS)

    async def unpin(self, request: web.Request) -> web.Response:
        """Unpin a message."""
        messages.unpin(self.platform, _number(request, "channel"), _number(request, "message"))
        return web.Response(status=204, headers=RATE_HEADERS)

    def _post(self, request: web.Request) -> Post:
        return self.platform.post(_number(request, "message"), _number(request, "channel"))


def _ok(body: Any) -> web.Response:
    return _json(body, 200, RATE_HEADERS)


def _json(body: Any, status: int, headers: Mapping[str, str]) -> web.Response:
    # Discord names no charset, and discord.py compares the whole header.
    kind = "application/json"
    text = json.dumps(body).encode()
    return web.Response(body=text, status=status, headers=headers, content_type=kind)


def _number(request: web.Request, name: str) -> int:
    return int(request.match_info[name])


def _guild(request: web.Request) -> int | None:
    guild = request.match_info.get("guild")
    return None if guild is None else int(guild)


def _faulty(fault: Fault) -> web.Response:
    headers = dict(RATE_HEADERS)
    body: Json = {"code": 0, "message": f"{fault.status}: a fault"}
    if fault.status == 429:
        body = {"message": "You are being rate limited.", "retry_after": fault.retry_after}
        body["global"] = False
        headers["Retry-After"] = str(fault.retry_after)
        headers |= {"Via": "1.1 loopback"} if fault.through_proxy else {}
    return _json(body, fault.status, headers)


async def _read(request: web.Request) -> tuple[Json | None, Files]:
    if not request.can_read_body:
        return None, {}
    if request.content_type == "application/json":
        return await request.json(), {}
    body: Json | None = None
    files: Files = {}
    async for part in await request.multipart():
        assert isinstance(part, BodyPartReader)
        if part.name == "payload_json":
            body = json.loads(await part.text())
        else:
            assert part.filename is not None
            files[part.filename] = bytes(await part.read())
    return body, files
