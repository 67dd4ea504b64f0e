"""How an interaction may be answered: once, in time, with a fitting type; then edited."""

from tests.discord.cast import USE_EXTERNAL_APPS
from tests.discord.limits import Json, autocomplete_breaches
from tests.discord.message_limits import modal_breaches
from tests.discord.messages import EPHEMERAL, Files, edit, placeholder, store
from tests.discord.payloads import asked_by
from tests.discord.platform import ApiError, Exchange, Platform, Post, refuse_breaches

__all__ = ["AUTOCOMPLETE", "COMMAND", "COMPONENT", "MODAL", "follow_up", "original", "respond"]

COMMAND, COMPONENT, AUTOCOMPLETE, MODAL = 2, 3, 4, 5
MESSAGE, LATER, LATER_UPDATE, UPDATE, CHOICES, FORM = 4, 5, 6, 7, 8, 9
FITTING = {
    COMMAND: {MESSAGE, LATER, FORM},
    COMPONENT: {MESSAGE, LATER, LATER_UPDATE, UPDATE, FORM},
    AUTOCOMPLETE: {CHOICES},
    MODAL: {MESSAGE, LATER, LATER_UPDATE, UPDATE},
}
ACKNOWLEDGE_WITHIN_S = 3.0
TOKEN_LASTS_S = 15 * 60.0
MOST_FOLLOW_UPS_OF_USER_APP = 5


def respond(platform: Platform, interaction_id: str, token: str, body: Json, files: Files) -> Json:
    """Take the one callback; return what Discord tells about it."""
    exchange = platform.exchanges.get(token)
    if exchange is None or exchange.payload["id"] != interaction_id:
        raise ApiError(404, 10062, "Unknown interaction")
    if exchange.callback is not None:
        raise ApiError(400, 40060, "Interaction has already been acknowledged.")
    if platform.now() - exchange.born > ACKNOWLEDGE_WITHIN_S:
        raise ApiError(404, 10062, "Unknown interaction")
    kind, data = body["type"], body.get("data") or {}
    if kind not in FITTING[exchange.payload["type"]]:
        raise ApiError(400, 50035, f"type {kind} does not fit this interaction")
    resource = _take(platform, exchange, kind, data, files)
    exchange.callback = body
    platform.changed()
    return _told(exchange, kind, resource)


def _take(
    platform: Platform, exchange: Exchange, kind: int, data: Json, files: Files
) -> Post | None:
    channel_id = exchange.place.channel_id
    if kind == MESSAGE:
        reader = _reader(exchange, data)
        exchange.original = store(
            platform, channel_id, data, files, seen_by=reader, **_metadata(exchange)
        )
    elif kind == LATER:
        exchange.original = placeholder(
            platform, channel_id, _reader(exchange, data), **_metadata(exchange)
        )
    elif kind == UPDATE:
        assert exchange.source is not None, "an update needs the message it updates"
        exchange.original = edit(platform, exchange.source, data, files)
    elif kind == LATER_UPDATE:
        exchange.original = exchange.source
    elif kind == CHOICES:
        refuse_breaches(autocomplete_breaches(data["choices"]))
    else:
        refuse_breaches(modal_breaches(data))
    return exchange.original


def _reader(exchange: Exchange, data: Json) -> int | None:
    """Return the only person who sees a new message, or None for everybody."""
    place, person = exchange.place, exchange.person
    barred = place.user_install and place.server and not person.rights & USE_EXTERNAL_APPS
    asked = bool((data.get("flags") or 0) & EPHEMERAL)
    return person.id if asked or barred else None


def _metadata(exchange: Exchange) -> Json:
    return {"interaction_metadata": asked_by(exchange.payload, exchange.person)}


def _told(exchange: Exchange, kind: int, post: Post | None) -> Json:
    interaction: Json = {"id": exchange.payload["id"], "type": exchange.payload["type"]}
    if post is None:
        return {"interaction": interaction}
    interaction |= {
        "response_message_id": post.payload["id"],
        "response_message_loading": post.loading,
        "response_message_ephemeral": post.ephemeral,
    }
    if kind in (MESSAGE, UPDATE):
        return {
            "interaction": interaction,
            "resource": {"type": kind, "message": post.payload},
        }
    return {"interaction": interaction}


def _live(platform: Platform, token: str) -> Exchange:
    exchange = platform.exchanges.get(token)
    if exchange is None or exchange.callback is None:
        raise ApiError(404, 10015, "Unknown Webhook")
    if platform.now() - exchange.born > TOKEN_LASTS_S:
        raise ApiError(401, 50027, "Invalid Webhook Token")
    return exchange


def follow_up(platform: Platform, token: str, body: Json, files: Files) -> Post:
    """Send a further message; the first after a deferral fills the placeholder."""
    exchange = _live(platform, token)
    if exchange.original is not None and exchange.original.loading:
        return edit(platform, exchange.original, body, files)
    if exchange.place.user_install and len(exchange.follow_ups) >= MOST_FOLLOW_UPS_OF_USER_APP:
        raise ApiError(400, 40094, "Maximum number of follow-up messages reached")
    reader = _reader(exchange, body)
    channel_id = exchange.place.channel_id
    post = store(platform, channel_id, body, files, seen_by=reader, **_metadata(exchange))
    exchange.follow_ups.append(post)
    platform.changed()
    return post


def original(platform: Platform, token: str, which: str = "@original") -> Post:
    """Return the first answer, or a follow-up by its id."""
    exchange = _live(platform, token)
    mine = [post for post in (exchange.original, *exchange.follow_ups) if post is not None]
    for post in mine:
        wanted = post is exchange.original if which == "@original" else str(post.id) == which
        if wanted and not post.deleted:
            return post
    raise ApiError(404, 10008, "Unknown Message")
