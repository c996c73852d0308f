"""Each class of error from a real problem of the service; the last two from a server."""

from collections.abc import Callable
from typing import Any

import pytest
from sdk_server import Scripted

import ringland
from ringland import Client, InvalidInput, RinglandError, ServiceError
from ringland._caller import raise_for_problem
from ringland._errors import from_problem
from ringland_service.api.app import create_app


def bare(client: Client, path: str, body: bytes | None = None, **headers: str) -> None:
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    method = "GET" if body is None else "POST"
    raise_for_problem(client.caller.transport.send(method, path, body=body, headers=named))


def broken(client: Client) -> None:
    app = create_app()

    def fails() -> Any:
        raise RuntimeError("on purpose")

    app.add_url_rule("/v1/broken", view_func=fails, methods=["POST"])
    Client.embedded(app).ask("broken")


def too_large(client: Client) -> None:
    app = create_app({"MAX_CONTENT_LENGTH": 20})
    Client.embedded(app).displacement(bore="68 mm", stroke="66 mm")


CASES: list[tuple[int, str, str, Callable[[Client], Any]]] = [
    (400, "BadRequest", "unreadable", lambda c: c.ask("displacement", nonsense=1)),
    (404, "NotFound", "not-found", lambda c: c.ask("no-such-calculation")),
    (405, "MethodNotAllowed", "method-not-allowed", lambda c: bare(c, "/v1/job-card")),
    (
        406,
        "NotAcceptable",
        "not-acceptable",
        lambda c: bare(c, "/v1/displacement?bore=68mm&stroke=66mm", Accept="image/png"),
    ),
    (413, "TooLarge", "too-large", too_large),
    (
        415,
        "UnsupportedMedia",
        "unsupported-media-type",
        lambda c: bare(c, "/v1/displacement", b"{}", Content_Type="text/plain"),
    ),
    (
        422,
        "Impossible",
        "impossible",
        lambda c: c.displacement(bore="68000 mm", stroke="66 mm"),
    ),
    (500, "ServerFault", "server-fault", broken),
]


@pytest.mark.parametrize(("status", "name", "slug", "fails"), CASES, ids=[c[1] for c in CASES])
def test_a_problem_of_the_service_becomes_its_error(
    ringland_client: Client, status: int, name: str, slug: str, fails: Callable[[Client], Any]
) -> None:
    with pytest.raises(ServiceError) as caught:
        fails(ringland_client)
    error = caught.value
    assert type(error) is getattr(ringland, name)
    assert (error.status, error.type) == (status, f"/problems/{slug}")
    assert error.title
    assert error.detail
    assert len(error.request_id) == 32
    assert error.request_id in str(error)
    assert repr(error) == f"{name}(status={status}, request_id={error.request_id!r})"


def test_every_fault_of_a_request_is_told(ringland_client: Client) -> None:
    with pytest.raises(ringland.BadRequest) as caught:
        ringland_client.ask(
            "piston-clearance", nonsense=1, bore_survey={"thrust_axis": {"unit": "mm"}}
        )
    by_field = {error.field: error for error in caught.value.errors}
    assert by_field["nonsense"].code == "unknown_field"
    assert "bore_largest" in by_field["nonsense"].allowed
    assert by_field["piston_size"].code == "missing_field"
    assert any(field.startswith("bore_survey.") for field in by_field)
    assert all(str(error) in str(caught.value) for error in caught.value.errors)


def test_what_many_faults_share_is_told_with_each(ringland_client: Client) -> None:
    """The service gives a list once and counts what is beyond fifty."""
    with pytest.raises(ringland.BadRequest) as caught:
        ringland_client.ask("displacement", **{f"nonsense_{i}": 1 for i in range(58)})
    found = caught.value
    assert len(found.errors) == 50
    assert found.more == 10
    assert str(found).split(" (request")[0].endswith("; and 10 more")
    listed = [one.allowed for one in found.errors if one.code == "unknown_field"]
    assert len(listed) > 40
    assert all(isinstance(one, list) and "bore" in one for one in listed)


def test_a_refusal_for_now_says_when_to_come_back(scripted: Scripted) -> None:
    problem = b'{"type": "/problems/too-many", "title": "t", "status": 429, "detail": "slower"}'
    scripted.answers("429 Too Many Requests", problem, Retry_After="3600")
    with Client(scripted.url) as client, pytest.raises(ringland.RateLimited) as caught:
        client.version()
    assert (caught.value.retry_after, caught.value.detail) == (3600.0, "slower")
    assert len(scripted.asked) == 1


def test_a_page_of_a_proxy_is_not_taken_for_the_service(scripted: Scripted) -> None:
    scripted.answers("500 Internal Server Error", b"<html>sorry</html>")
    with Client(scripted.url) as client, pytest.raises(ringland.ServerFault, match="500: the ans"):
        client.version()


def test_unknown_members_and_bad_entries_of_a_problem_are_ignored() -> None:
    problem = {"status": 400, "later": 1, "errors": [{"pointer": "#/a~1b/0", "new": 2}, "odd"]}
    error = from_problem(400, problem)
    assert [e.field for e in error.errors] == ["a/b.0"]
    assert from_problem(418, {"detail": "no"}).__class__ is ServiceError
    assert from_problem(400, {"errors": [{"pointer": "#"}]}).errors[0].field == "request"


@pytest.mark.parametrize(
    ("fields", "message"),
    [
        ({"bore": 68}, "bore: 68 is not a quantity: write '68.0 mm'"),
        ({"bore": "68"}, "bore: '68' has no unit"),
        ({"bore": "68,5 mm"}, "bore: '68,5 mm' is not a quantity"),
        ({"bore": (True, "mm")}, "bore: True is not a number"),
        ({"bore": (float("nan"), "mm")}, "bore: nan is not a number that can be computed with"),
        ({"bore": ("68", "mm")}, "bore: '68' is not a number"),
        ({"bore": (68, "mm", 0.01)}, "bore: .* is not a quantity"),
        ({"limits": {"class_limit": {"high": 250}}}, "limits.class_limit.high: 250 is not"),
        ({"limits": "250 cc"}, "limits: a mapping of fields is needed"),
    ],
)
def test_what_cannot_be_sent_is_refused_here_and_named(
    ringland_client: Client, fields: dict[str, Any], message: str
) -> None:
    with pytest.raises(InvalidInput, match=message):
        ringland_client.displacement(**{"bore": "68 mm", "stroke": "66 mm", **fields})


def test_the_tree() -> None:
    tree = {
        RinglandError: {"InvalidInput", "ServiceMissing", "UnreadableAnswer", "ConnectionFailed"},
        ringland.ConnectionFailed: {"TimedOut", "TlsFailed"},
        ServiceError: {case[1] for case in CASES} | {"RateLimited"},
    }
    for base, names in tree.items():
        assert all(issubclass(getattr(ringland, name), base) for name in names)
    assert issubclass(InvalidInput, ValueError)
    assert issubclass(ringland.ServiceMissing, ImportError)
