"""Limits of the service's batches, as the client meets them: rows, problems, time."""

import json
from typing import Any

import pytest
from sdk_server import Scripted, serving

from ringland import Answer, Client, ServerFault, ServiceError, TooLarge
from ringland._batch import RowLimit
from ringland._errors import from_problem
from ringland_service.api.app import create_app
from ringland_service.api.reading.row_budget import most_rows
from ringland_service.core.calculations import BY_NAME


class Looks:
    """A clock that goes on by a second each time that it is looked at."""

    def __init__(self) -> None:
        self.count = 0.0

    def __call__(self) -> float:
        self.count += 1.0
        return self.count


def hurried(seconds: float) -> Client:
    """Return a client of a service that has time for so many rows in a request."""
    return Client.embedded(create_app({"BATCH_SECONDS": seconds + 0.5, "CLOCK": Looks()}))


def test_the_service_says_how_many_rows_it_takes(ringland_client: Client) -> None:
    """More rows than one request may have are cut by the number in the refusal."""
    most = most_rows(BY_NAME["piston-clearance"])
    assert most < 10_000
    count = 2 * most + 5
    pistons: list[float | None] = [67.95] * count
    pistons[most] = None
    found = ringland_client.piston_clearance.batch(
        columns={"piston_size": (pistons, "mm")},
        shared={"bore_largest": "68 mm", "cycle": "four_stroke"},
    )
    assert (found.rows, found.answered, found.refused, found.not_reached) == (
        count, count - 1, 1, 0,
    )  # fmt: skip
    assert found.status.count("ok") == count - 1
    assert found.status[most] == "refused"
    assert [problem.row for problem in found.problems] == [most + 1]
    listed = {one.name: one.most_rows for one in ringland_client.calculations()}
    assert listed["piston-clearance"] == most


def test_lines_are_cut_by_the_number_in_the_refusal_too(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("ringland_service.api.reading.batch_lines.most_rows", lambda of: 3)
    with Client.embedded(create_app()) as client:
        rows = [{"bore": (60 + i, "mm"), "stroke": "66 mm"} for i in range(8)]
        found = client.displacement.many(rows)
    sizes = [one.result.displacement.value for one in found if isinstance(one, Answer)]
    assert len(sizes) == 8
    assert sizes == sorted(sizes)


def test_rows_that_were_not_reached_are_sent_again() -> None:
    with hurried(3) as client:
        rows = [{"bore": (60 + i, "mm"), "stroke": "66 mm"} for i in range(8)]
        rows[4] = {"bore": (60_000, "mm"), "stroke": "66 mm"}
        found = client.displacement.many(rows)
    assert [type(one) is Answer for one in found] == [True] * 4 + [False] + [True] * 3
    refused = found[4]
    assert isinstance(refused, ServiceError)
    assert (refused.status, refused.errors[0].field) == (422, "bore.value")
    # By hand: pi/4 x 6.7^2 x 6.6 = 232.693 cc for the last.
    last = found[-1]
    assert isinstance(last, Answer)
    assert last.result.displacement.value == pytest.approx(232.693, abs=5e-4)


def test_no_time_for_a_single_row_is_an_error() -> None:
    with hurried(0) as client, pytest.raises(ServerFault, match="no time for a single row"):
        client.displacement.many([{"bore": "68 mm", "stroke": "66 mm"}])


def test_columns_say_which_rows_were_not_reached() -> None:
    with hurried(1) as client:
        found = client.displacement.batch(
            columns={"bore": ([68.0, 68.0, 2.0], "mm"), "new_bore": ([None, 68.5, None], "mm")},
            shared={"stroke": "66 mm"},
        )
    assert found.status == ("ok", "not_reached", "refused")
    assert (found.answered, found.not_reached, found.refused) == (1, 1, 1)


def test_problems_are_counted_through_all_requests(ringland_client: Client) -> None:
    count = 12_500
    found = ringland_client.displacement.batch(
        columns={"bore": ([2.0] * count, "mm")}, shared={"stroke": "66 mm"}
    )
    assert found.refused == count
    assert [problem.row for problem in found.problems[:2]] == [1, 2]
    assert [problem.row for problem in found.problems[1000:1002]] == [10_001, 10_002]
    [more] = found.more_problems
    assert (more.code, more.count) == ("out_of_bounds", count - 2000)


def test_a_whole_job_in_a_line_has_its_form() -> None:
    with Client.embedded() as client:
        [found] = client.job_card.many([{}])
        alone = client.job_card()
    assert isinstance(found, Answer)
    opened = found.result.measure_next
    assert [one.opens for one in opened] == [one.opens for one in alone.result.measure_next]
    assert [[[r.field for r in way] for way in one.ways] for one in opened] == [
        [[r.field for r in way] for way in one.ways] for one in alone.result.measure_next
    ]
    assert found.basis == ()
    assert found.cautions == alone.cautions
    assert found.raw["row"] == 1


def wrong_count(**allowed: Any) -> ServiceError:
    fault = {"code": "wrong_count", "pointer": "#", "detail": "too many", "allowed": allowed}
    return from_problem(422, {"errors": [fault]})


def test_a_limit_is_learned_from_its_own_refusal_alone() -> None:
    limit = RowLimit()
    for error in (wrong_count(), wrong_count(most=10_000), wrong_count(most=0), TooLarge(413)):
        assert not limit.learns(error)
    assert limit.learns(wrong_count(most=130))
    assert limit.most == 130
    # The same refusal again would go round for ever.
    assert not limit.learns(wrong_count(most=130))


def test_a_refusal_of_another_kind_is_raised() -> None:
    body = json.dumps({"title": "x", "errors": [{"code": "wrong_count", "allowed": 3}]}).encode()
    app = Scripted().answers("422 Unprocessable Content", body)
    with serving(app) as url, Client(url) as client, pytest.raises(ServiceError):
        client.many("displacement", [{}])
    assert len(app.asked) == 1
