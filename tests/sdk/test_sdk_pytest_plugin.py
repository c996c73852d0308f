"""The pytest plugin, as another project sees it."""

from importlib.metadata import entry_points

import pytest

pytest_plugins = ["pytester"]
# Installed, pytest finds the plugin by its entry point, and refuses to be told of it again.
INSTALLED = entry_points(group="pytest11", name="ringland")
LOADED = () if INSTALLED else ("-p", "ringland.pytest_plugin")


def test_the_fixture_answers_without_a_network(pytester: pytest.Pytester) -> None:
    pytester.makepyfile(
        """
        import socket

        def test_it(ringland_client, monkeypatch):
            def refuse(*args, **kwargs):
                raise AssertionError("a socket was opened")

            monkeypatch.setattr(socket, "socket", refuse)
            answer = ringland_client.displacement(bore="68 mm", stroke="66 mm")
            assert round(answer.result.displacement.value, 3) == 239.691
        """
    )
    result = pytester.runpytest_subprocess(*LOADED)
    result.assert_outcomes(passed=1)


def test_a_run_that_does_not_use_it_is_left_alone(pytester: pytest.Pytester) -> None:
    pytester.makepyfile(
        """
        import sys

        def test_it(request):
            assert request.fixturenames == ["request"]
            assert "requests" not in sys.modules
        """
    )
    result = pytester.runpytest_subprocess(
        *LOADED, "-p", "no:schemathesis", "-p", "no:hypothesispytest"
    )
    result.assert_outcomes(passed=1)


def test_the_fixture_is_listed_with_what_it_needs(pytester: pytest.Pytester) -> None:
    result = pytester.runpytest_subprocess(*LOADED, "--fixtures")
    result.stdout.fnmatch_lines(["ringland_client*", "*needs ``ringland?embedded?``*"])
