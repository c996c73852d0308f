"""The command: what it prints, in which words and colours, and its exit codes."""

import io
import json
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Any, get_args

import pytest
from sdk_server import PATIENCE_S, Scripted, serving

from ringland import Client, cli
from ringland._generated._words import VerdictWord
from ringland_service.api.app import create_app

ASK = ["ask", "displacement", "bore=68mm", "stroke=66mm"]


def run(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str, str]:
    code = cli.main(arguments)
    out, err = capsys.readouterr()
    return code, out, err


@pytest.fixture
def job(tmp_path: Path, document: dict[str, Any]) -> Path:
    """Write the job card's own example request to a file."""
    body = document["paths"]["/v1/job-card"]["post"]["requestBody"]["content"]
    file = tmp_path / "job.json"
    file.write_text(json.dumps(body["application/json"]["example"]), encoding="utf-8")
    return file


def test_one_question_in_text(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, *ASK, "limit.class_limit.high=230 cc")
    assert (code, err) == (0, "")
    assert "displacement  239.7 cc" in out
    assert "FAIL: 239.7 cc" in out
    assert out.endswith("\n")
    assert "\x1b" not in out


def test_one_question_in_json_and_other_units(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, *ASK, "--json", "--units", "us")
    assert code == 0
    # By hand: 239.691 cc / 16.387064 = 14.627 cu in.
    answer = json.loads(out)["result"]["displacement"]
    assert (round(answer["value"], 3), answer["unit"]) == (14.627, "in3")


def test_a_uncertainty_and_a_word_with_an_equals_sign_arrive(
    capsys: pytest.CaptureFixture[str],
) -> None:
    code, out, _ = run(
        capsys,
        *["ask", "displacement", "bore=68 mm +/- 0.01", "stroke=66mm", "--json"],
        *["limit.class_limit.high=250cc", "limit.class_limit.source=rules=2026 & more"],
    )
    answer = json.loads(out)
    assert code == 0
    assert answer["inputs"]["bore"]["uncertainty"] == pytest.approx(0.01)
    assert answer["verdicts"][0]["limit"]["source"] == "rules=2026 & more"


def test_a_whole_job(capsys: pytest.CaptureFixture[str], job: Path, document: Any) -> None:
    code, out, err = run(capsys, "job", str(job))
    assert (code, err) == (0, "")
    with Client.embedded() as client:
        assert out == client.text("job-card", **json.loads(job.read_text("utf-8")))
    assert "Cautions" in out
    code, out, _ = run(capsys, "job", str(job), "--json")
    assert json.loads(out)["calculation"] == "job-card"


def test_a_job_from_standard_input(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, job: Path
) -> None:
    _, from_file, _ = run(capsys, "job", str(job), "--units", "us")
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(job.read_bytes())))
    assert run(capsys, "job", "-", "--units", "us") == (0, from_file, "")


def test_a_calculation_of_readings_is_asked_from_a_file(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "spread.json"
    file.write_text('{"readings": {"values": [900, 840], "unit": "kPa"}}', encoding="utf-8")
    code, out, _ = run(capsys, "ask", "cylinder-spread", "--file", str(file))
    assert code == 0
    # By hand: 60 / 900 = 6.7 %.
    assert re.search(r"spread +6\.7 %", out)


@pytest.mark.parametrize(
    ("arguments", "lines"),
    [
        (
            ["ask", "displacement", "bore=68", "strok=66mm"],
            [r"bore: a number alone has no unit.*", r"strok: no such parameter.*"],
        ),
        (["ask", "displacement", "bore=68mm", "stroke=66kPa"], [r"stroke.*: .*"]),
        (["ask", "displacement", "bore=99999mm", "stroke=66mm"], [r"bore.*: .*"]),
        (["ask", "displacement", "bore"], ["bore: write field=value, bore=68mm say"]),
        (["ask", "no-such-thing"], ["The path names no calculation.*"]),
        (["ask", "../version"], ["'../version' is no calculation; ringland list shows them"]),
        (["ask", "job-card"], ["job-card takes more than single values: .*--file request.json"]),
        (["ask", "displacement", "bore=68mm", "--file", "x"], ["fields and --file: .*"]),
        (["job", "no-such-file.json"], ["no-such-file.json: No such file or directory"]),
        (["list", "--url", "localhost:8000"], ["base_url: 'localhost:8000' is no address.*"]),
    ],
)
def test_what_is_wrong_is_told_a_line_a_fault(
    capsys: pytest.CaptureFixture[str], arguments: list[str], lines: list[str]
) -> None:
    code, out, err = run(capsys, *arguments)
    assert (code, out) == (2, "")
    assert len(err.splitlines()) == len(lines)
    for said, wanted in zip(err.splitlines(), lines, strict=True):
        assert re.fullmatch(wanted, said)


def test_a_file_that_is_not_json_is_told_by_the_service(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "job.json"
    file.write_text('{"engine": ,}', encoding="utf-8")
    code, _, err = run(capsys, "job", str(file))
    assert code == 2
    assert "not JSON: Expecting value at line 1 column 12" in err


def test_arguments_that_are_none_show_the_usage(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit, match="2"):
        cli.main([])
    assert "usage: ringland" in capsys.readouterr().err


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


@pytest.mark.parametrize(
    ("bore", "shown"),
    [
        ("60mm", "\x1b[1;32mPASS\x1b[0m:"),
        ("80mm", "\x1b[1;31mFAIL\x1b[0m:"),
        ("69.7mm +/- 0.2", "\x1b[1;33mTOO CLOSE TO CALL\x1b[0m:"),
    ],
)
def test_a_terminal_gets_colour_and_keeps_the_words(
    monkeypatch: pytest.MonkeyPatch, bore: str, shown: str
) -> None:
    # By hand: the bore of 250 cc at a stroke of 66 mm is 69.45 mm; 252 +/- 1.4 cc is outside,
    # so the third limit is 251 cc, within the uncertainty.
    limit = "251cc" if "+/-" in bore else "250cc"
    arguments = ["ask", "displacement", f"bore={bore}", "stroke=66mm"]
    arguments.append(f"limit.class_limit.high={limit}")
    screen = Terminal()
    monkeypatch.setattr(sys, "stdout", screen)
    assert cli.main(arguments) == 0
    assert shown in screen.getvalue()
    monkeypatch.setenv("NO_COLOR", "1")
    plain = Terminal()
    monkeypatch.setattr(sys, "stdout", plain)
    assert cli.main(arguments) == 0
    assert "\x1b" not in plain.getvalue()
    assert re.sub(r"\x1b\[[0-9;]*m", "", screen.getvalue()) == plain.getvalue()


def test_only_verdicts_are_coloured() -> None:
    text = "the PASS over the ridge, FAIL-safe, UNFAIL:"
    assert cli.coloured(text) == text


@pytest.mark.parametrize("word", get_args(VerdictWord))
def test_each_outcome_has_its_colour(word: str) -> None:
    """Before a value or a reason, and broken over two lines where the name before it is long."""
    printed = word.replace("_", " ").upper()
    for after in (": 448 kPa", " (a decompressor may have let pressure off)", "\n   (a reason)"):
        for said in {printed, printed.replace(" ", "\n      ", 1)}:
            text = f"compression  {said}{after}\n"
            shown = cli.coloured(text)
            assert f"m{said}\x1b[0m{after}" in shown
            assert re.sub(r"\x1b\[[0-9;]*m", "", shown) == text


def test_the_list(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = run(capsys, "list")
    assert code == 0
    assert re.search(r"(?m)^geometry\n(  .+\n)*  displacement +Displacement$", out)
    assert re.search(r"(?m)^engine tests$", out)


def test_a_server_is_asked_where_one_is_named(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    here = run(capsys, *ASK)
    with serving(create_app()) as url:
        assert run(capsys, *ASK, "--url", url) == here
        monkeypatch.setenv("RINGLAND_URL", url)
        assert run(capsys, *ASK) == here
    code, out, err = run(capsys, *ASK)
    assert (code, out) == (3, "")
    assert f"{url}: no answer" in err


def test_a_fault_of_the_server_names_the_request(
    capsys: pytest.CaptureFixture[str], scripted: Scripted
) -> None:
    scripted.answers("500 Oh", b'{"detail": "it broke", "request_id": "r7", "status": 500}')
    assert run(capsys, *ASK, "--url", scripted.url) == (3, "", "it broke\nrequest: r7\n")


def test_serving_needs_the_service(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(cli, "find_spec", lambda name: None)
    code, _, err = run(capsys, "serve")
    assert (code, err) == (
        3,
        "the service is not installed here; pip install 'ringland[embedded]'\n",
    )


def test_serving(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "ringland.cli", "serve", "--port", "0"]
    log: list[str] = []
    with subprocess.Popen(command, cwd=tmp_path, stderr=subprocess.PIPE, text=True) as server:
        try:
            assert server.stderr is not None
            found = None
            while found is None:
                line = server.stderr.readline()
                assert line, f"the server ended: {log}"
                log.append(line)
                found = re.search(r"Listening at: (http://127\.0\.0\.1:[0-9]+)", line)
            with Client(found[1]) as client:
                assert client.displacement(bore="68 mm", stroke="66 mm").calculation
            server.terminate()
            server.communicate(timeout=PATIENCE_S)
            assert server.returncode == 0
        finally:
            server.kill()


def test_a_reader_that_goes_away_is_no_fault() -> None:
    reader, writer = os.pipe()
    os.close(reader)
    command = [sys.executable, "-m", "ringland.cli", "list"]
    try:
        done = subprocess.run(command, stdout=writer, stderr=subprocess.PIPE, text=True)
    finally:
        os.close(writer)
    assert (done.returncode, done.stderr) == (0, "")


def test_a_console_without_the_signs_still_gets_the_answer() -> None:
    command = [sys.executable, "-m", "ringland.cli", *ASK[:2], "bore=68mm±0.01", "stroke=66mm"]
    env = {**os.environ, "PYTHONIOENCODING": "ascii"}
    done = subprocess.run(command, capture_output=True, text=True, env=env)
    assert (done.returncode, done.stderr) == (0, "")
    assert "239.7 ? 0.1 cc" in done.stdout
