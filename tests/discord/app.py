"""What Discord's own app lets a person send: commands as registered, forms as shown."""

from collections.abc import Mapping

from bot.menu import menu_name
from tests.discord.answers import Answer
from tests.discord.cast import Person, Upload
from tests.discord.limits import Json
from tests.discord.payloads import member, user

__all__ = [
    "CHAT_INPUT",
    "MESSAGE_MENU",
    "SELECT",
    "Filled",
    "form_data",
    "leaf_options",
    "registered",
    "slash_data",
]

STRING, USER, ATTACHMENT = 3, 6, 11
SELECT = 3
Filled = str | Person | Upload
CHAT_INPUT, MESSAGE_MENU = 1, 3


def registered(commands: list[Json], name: str, kind: int) -> Json:
    """Return a registered command."""
    for command in commands:
        if command["name"] == name and command.get("type", CHAT_INPUT) == kind:
            return command
    raise AssertionError(f"there is no command {name}")


def slash_data(
    commands: list[Json], name: str, given: Mapping[str, Filled], *, partial: bool = False
) -> Json:
    """Return a slash command's data; ``partial`` while it is still being typed."""
    known = {command["name"] for command in commands}
    # A bot of a test's own may have a command that stands in a group here.
    first, *path = (name if name in known else menu_name(name)).split()
    command = registered(commands, first, CHAT_INPUT)
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
    uploads = [value for value in given.values() if isinstance(value, Upload)]
    if uploads:
        data["resolved"] = {"attachments": {_upload_id(u): _attachment(u) for u in uploads}}
    return data


def _upload_id(upload: Upload) -> str:
    return str(8_000 + len(upload.name))


def _attachment(upload: Upload) -> Json:
    return {
        "id": _upload_id(upload),
        "filename": upload.name,
        "size": upload.size,
        "url": upload.url,
        "proxy_url": upload.url,
        "content_type": "application/json",
    }


def _filled(declared: list[Json], name: str, value: Filled, partial: bool) -> Json:
    option = next((o for o in declared if o["name"] == name), None)
    assert option is not None, f"there is no option {name}"
    if isinstance(value, Person):
        assert option["type"] == USER
        return {"name": name, "type": USER, "value": str(value.id)}
    if isinstance(value, Upload):
        assert option["type"] == ATTACHMENT
        return {"name": name, "type": ATTACHMENT, "value": _upload_id(value)}
    assert option["type"] == STRING, f"{name} is not a text"
    choices = [choice["value"] for choice in option.get("choices") or []]
    assert partial or not choices or value in choices, f"{name} offers only {choices}"
    assert len(value) <= option.get("max_length", 6000)
    return {"name": name, "type": STRING, "value": value}


def leaf_options(data: Json) -> list[Json]:
    """Return the options of the command or sub-command itself."""
    options: list[Json] = data["options"]
    while options and options[0]["type"] in (1, 2):
        options = options[0].get("options") or []
    return options


def _without_user(body: Json) -> Json:
    return {key: value for key, value in body.items() if key != "user"}


def form_data(form: Answer, values: Mapping[str, str]) -> Json:
    """Return a form's data: what is filled in, and what was pre-filled."""
    assert values.keys() <= form.fields.keys()
    parts = []
    for custom_id, field in form.fields.items():
        offered = field.get("options") or []
        usual = next((o["value"] for o in offered if o.get("default")), field.get("value") or "")
        value = values.get(custom_id, usual)
        assert value or not field.get("required", True), f"{custom_id} must be filled in"
        filled = {"type": field["type"], "custom_id": custom_id}
        if field["type"] == SELECT:
            assert not value or value in [o["value"] for o in offered], f"{value} is not offered"
            filled["values"] = [value] if value else []
        else:
            filled["value"] = value
        parts.append({"type": 18, "component": filled})
    return {"custom_id": form.modal["custom_id"], "components": parts}
