"""The image, its locks and the compose file, read as text: no container engine is needed."""

import json
import re
import shlex
import subprocess
import sys
import tomllib
from fnmatch import fnmatchcase
from pathlib import Path
from typing import Any

import pytest
import yaml  # type: ignore[import-untyped]
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
DOCKER = ROOT / "docker"
PYPROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text())
LOCKS = ["requirements.lock", "requirements-build.lock"]


def joined_lines(text: str) -> list[str]:
    """Return the lines without comments and blanks, continuations joined."""
    kept = [
        line for line in text.splitlines() if line.strip() and not line.lstrip().startswith("#")
    ]
    return [line.strip() for line in "\n".join(kept).replace("\\\n", " ").splitlines()]


def instructions(stage: str | None = None) -> list[tuple[str, str]]:
    """Return the Dockerfile's instructions, of one stage or of all."""
    found, current = [], None
    for line in joined_lines((DOCKER / "Dockerfile").read_text()):
        word, rest = line.split(maxsplit=1)
        if word == "FROM":
            current = rest.split(" AS ")[1]
        if stage in (None, current):
            found.append((word, " ".join(rest.split())))
    return found


def only(word: str, stage: str = "runtime") -> str:
    """Return the argument of the one instruction with this name in a stage."""
    (value,) = [rest for name, rest in instructions(stage) if name == word]
    return value


def context_copies() -> list[str]:
    """Return what the Dockerfile copies from the build context."""
    copies = [shlex.split(rest) for name, rest in instructions() if name == "COPY"]
    from_context = [words for words in copies if not words[0].startswith("--from")]
    return [w for words in from_context for w in words[:-1] if not w.startswith("--")]


def locked(name: str) -> dict[str, tuple[str, str]]:
    """Return name -> (version, options) of a lock."""
    pinned: dict[str, tuple[str, str]] = {}
    for line in joined_lines((DOCKER / name).read_text()):
        match = re.fullmatch(r"([A-Za-z0-9._-]+)==(\S+)\s+(.+)", line)
        assert match, f"{name}: not an exact pin with hashes: {line[:60]}"
        pinned[canonicalize_name(match[1])] = (match[2], match[3])
    return pinned


# The rules of hadolint, an open linter for Dockerfiles.
def test_linter_finds_nothing(tmp_path: Path) -> None:
    linter = str(Path(sys.executable).with_name("hadolint"))
    command = [linter, "--no-color", "--failure-threshold", "style", str(DOCKER / "Dockerfile")]
    run = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, timeout=60)
    assert (run.returncode, run.stdout, run.stderr) == (0, "", "")


def test_base_is_one_image_pinned_to_a_patch_release() -> None:
    bases = [rest for name, rest in instructions() if name == "FROM"]
    assert re.fullmatch(r"python:3\.12\.\d+-slim-[a-z]+ AS base", bases[0])
    assert bases[1:] == ["base AS build", "base AS runtime"]


def test_last_stage_runs_as_a_numbered_user_and_serves_with_our_settings() -> None:
    assert instructions()[-len(instructions("runtime")) :] == instructions("runtime")
    assert only("USER") == "10001:10001"
    assert only("STOPSIGNAL") == "SIGTERM"
    assert only("EXPOSE") == "8000"
    command = json.loads(only("CMD"))
    assert command[:2] == ["gunicorn", "--config"]
    assert only_copy_target("docker/gunicorn.conf.py") == command[2]


def only_copy_target(source: str) -> str:
    """Return where the runtime stage puts a file of the build context."""
    copies = [shlex.split(rest) for name, rest in instructions("runtime") if name == "COPY"]
    (target,) = [words[-1] for words in copies if source in words]
    return target


def test_every_install_is_hashed_or_offline() -> None:
    runs = " && ".join(rest for name, rest in instructions() if name == "RUN")
    steps = [step for step in runs.split(" && ") if re.search(r"\bpip\b.* (install|wheel) ", step)]
    assert len(steps) == 4
    for step in steps:
        assert ("--require-hashes" in step) != ("--no-index" in step)
        assert ("--no-index" in step) == ("--no-deps" in step)
    for name in LOCKS:
        assert f"--requirement docker/{name}" in runs


def test_context_lets_in_exactly_what_is_copied() -> None:
    lines = joined_lines((DOCKER / "Dockerfile.dockerignore").read_text())
    assert lines[0] == "*"
    let_in = {line[1:] for line in lines if line.startswith("!")}
    assert let_in == set(context_copies())
    shut_out = [line for line in lines[1:] if not line.startswith("!")]
    assert not [path for path in let_in for pattern in shut_out if fnmatchcase(path, pattern)]


def test_what_the_wheel_needs_is_copied() -> None:
    needed = {PYPROJECT["project"]["readme"], "pyproject.toml"}
    needed |= set(PYPROJECT["tool"]["setuptools"]["packages"]["find"]["where"])
    assert needed <= set(context_copies())
    assert [p for p in set(context_copies()) - needed if not (ROOT / p).exists()] == []


@pytest.mark.parametrize("name", LOCKS)
def test_lock_entries_carry_hashes_and_nothing_else(name: str) -> None:
    text = (DOCKER / name).read_text()
    assert "://" not in text
    assert "index" not in text
    for package, (_, options) in locked(name).items():
        assert re.fullmatch(r"(--hash=sha256:[0-9a-f]{64}\s*)+", options), package


@pytest.mark.parametrize(
    ("name", "stated"),
    [
        ("requirements.lock", PYPROJECT["project"]["dependencies"]),
        ("requirements-build.lock", PYPROJECT["build-system"]["requires"]),
    ],
)
def test_lock_satisfies_what_the_project_states(name: str, stated: list[str]) -> None:
    pinned = locked(name)
    for requirement in map(Requirement, stated):
        version, _ = pinned[canonicalize_name(requirement.name)]
        assert requirement.specifier.contains(version), f"{requirement}: locked at {version}"


@pytest.fixture(scope="module")
def compose() -> dict[str, Any]:
    loaded: dict[str, Any] = yaml.safe_load((DOCKER / "compose.yaml").read_text())
    return loaded


@pytest.mark.parametrize("name", ["service", "proxy"])
def test_container_is_hardened(compose: dict[str, Any], name: str) -> None:
    container = compose["services"][name]
    user, group = container["user"].split(":")
    assert int(user) > 0
    assert int(group) > 0
    assert container["read_only"] is True
    assert container["cap_drop"] == ["ALL"]
    assert container["security_opt"] == ["no-new-privileges:true"]
    assert all(re.match(r"/tmp:size=\d+m,", mount) for mount in container["tmpfs"])  # noqa: S108
    assert re.fullmatch(r"\d+m", container["mem_limit"])
    assert container["pids_limit"] > 0
    assert not {"privileged", "cap_add", "network_mode", "pid"} & set(container)
    assert re.search(r":\d+\.\d+\.\d+(-[a-z0-9.]+)?$", container["image"])


def test_only_the_proxy_is_reachable_and_only_from_this_machine(compose: dict[str, Any]) -> None:
    service, proxy = compose["services"]["service"], compose["services"]["proxy"]
    assert "ports" not in service
    assert [port.rsplit(":", 2)[0] for port in proxy["ports"]] == ["127.0.0.1"]
    assert list(service["networks"]) == ["inner"]
    assert compose["networks"]["inner"]["internal"] is True
    trusted = service["environment"]["RINGLAND_FORWARDED_ALLOW_IPS"]
    assert trusted == proxy["networks"]["inner"]["ipv4_address"]


def test_both_containers_have_a_health_check(compose: dict[str, Any]) -> None:
    assert only("HEALTHCHECK")
    assert "healthcheck" not in compose["services"]["service"]
    assert compose["services"]["proxy"]["healthcheck"]["test"][0] == "CMD"
    waits_for = compose["services"]["proxy"]["depends_on"]
    assert waits_for == {"service": {"condition": "service_healthy"}}


def test_compose_agrees_with_the_image_and_the_proxy(compose: dict[str, Any]) -> None:
    service, proxy = compose["services"]["service"], compose["services"]["proxy"]
    assert service["user"] == only("USER")
    assert service["image"] == f"ringland-service:{PYPROJECT['project']['version']}"
    assert (DOCKER / service["build"]["context"]).resolve() == ROOT
    assert (ROOT / service["build"]["dockerfile"]).exists()
    conf = (DOCKER / "nginx.conf").read_text()
    assert f"proxy_pass http://service:{only('EXPOSE')};" in conf
    assert f"listen {proxy['ports'][0].rsplit(':', 1)[1]};" in conf
    assert "proxy_request_buffering on;" in conf
    assert "proxy_buffering on;" in conf
