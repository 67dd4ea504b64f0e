"""Files to install the bot on a machine of its own, printed so that nothing lies around."""

from enum import StrEnum
from pathlib import Path

__all__ = ["Kind", "deployment"]


class Kind(StrEnum):
    """What the bot is to be run by."""

    SYSTEMD = "systemd"
    CONTAINER = "container"


_SYSTEMD = """\
# /etc/systemd/system/noonstone.service
# 1. useradd --system --create-home --home-dir /var/lib/noonstone noonstone
# 2. put NOONSTONE_TOKEN=… into /etc/noonstone.env, then chmod 600 /etc/noonstone.env
# 3. systemctl daemon-reload && systemctl enable --now noonstone
[Unit]
Description=Noonstone, the lighting and heat bot of a reptile-keeping group
Wants=network-online.target
After=network-online.target

[Service]
User=noonstone
EnvironmentFile=/etc/noonstone.env
Environment=NOONSTONE_DATA_DIR=/var/lib/noonstone
WorkingDirectory={folder}
ExecStart={python} -m bot discord
KillSignal=SIGTERM
# Answers in flight are finished within ten seconds.
TimeoutStopSec=15
Restart=on-failure
RestartSec=5
# A refused token does not get better by trying again.
RestartPreventExitStatus=2
NoNewPrivileges=yes
PrivateTmp=yes
ProtectSystem=strict
ProtectHome=yes
ReadWritePaths=/var/lib/noonstone

[Install]
WantedBy=multi-user.target
"""

_CONTAINER = """\
# Containerfile; build beside the checkout: podman build -t noonstone -f Containerfile .
# run: podman run -d --env-file noonstone.env -v noonstone-data:/data noonstone
FROM docker.io/library/python:3.11-slim
WORKDIR /build
COPY pyproject.toml README.md ./
COPY .ci/constraints.txt .ci/constraints.txt
COPY bot bot
COPY calc calc
RUN pip install --no-cache-dir -c .ci/constraints.txt . \\
    && useradd --system --create-home noonstone \\
    && install -d -o noonstone /data \\
    && noonstone demo > /dev/null
# Not beside the copy: what was installed is compiled, and its tables are since the demo.
WORKDIR /data
USER noonstone
ENV NOONSTONE_DATA_DIR=/data PYTHONUNBUFFERED=1
VOLUME /data
STOPSIGNAL SIGTERM
CMD ["noonstone", "discord"]
"""


def deployment(kind: Kind, python: Path, folder: Path) -> str:
    """Return the text of the file for this kind, for this interpreter and checkout."""
    if kind is Kind.SYSTEMD:
        return _SYSTEMD.format(python=python, folder=folder)
    return _CONTAINER
