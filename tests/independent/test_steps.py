#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Follows a report's own steps, "How to check this record", as a stranger would: every command is
run as it is printed, and what the step says it must print has to be there.

    test_steps.py WALKDOWN RECORD FOLDER

In FOLDER stand the record and what the source has in `tests/independent`, and nothing else. The
words that a step leaves to the reader are filled in: MARK, FILE, A and B. Then the record is
altered, and every step that is about the whole of it has to say so.
"""
import base64
import html
import json
import os
import pathlib
import re
import shlex
import shutil
import subprocess
import sys

WALKDOWN, RECORD, FOLDER = (pathlib.Path(each).resolve() for each in sys.argv[1:4])
SOURCE = pathlib.Path(__file__).resolve().parent


def run(command):
    path = f"{WALKDOWN.parent}{os.pathsep}{os.environ['PATH']}"
    done = subprocess.run(["sh", "-c", command], capture_output=True, check=False, cwd=FOLDER,
                          env={**os.environ, "PATH": path})
    return done.returncode, done.stdout.decode() + done.stderr.decode()


def printed(page):
    """The commands of the last section, in its order."""
    section = page[page.index("How to check this record</h2>"):]
    codes = [html.unescape(each) for each in re.findall(r"<code>(.*?)</code>", section, re.DOTALL)]
    return [code for code in codes if " " in code and code.split()[0] in ("walkdown", "python3", "sh", "tail")]


def steps_of(name):
    code, said = run(f"walkdown report {shlex.quote(name)} -o report.html")
    assert code in (0, 1), said
    return printed((FOLDER / "report.html").read_text())


def the(steps, words):
    found = [step for step in steps if words in step]
    assert len(found) == 1, (words, steps)
    return found[0]


def earlier_mark(record):
    """Of the checkpoint in the middle, by the form's own words."""
    heads = [json.loads(line)["checkpoint"] for line in record.read_text().splitlines()
             if line.startswith('{"checkpoint"')]
    lines = heads[len(heads) // 2].split("\n")
    digits = base64.b64decode(lines[2]).hex()[:16]
    return " ".join(digits[i:i + 4] for i in range(0, 16, 4)), int(lines[1])


def follow(name):
    """The mark and the number of entries, as the first step says them."""
    steps = steps_of(name)
    assert len(steps) == 7, steps
    code, said = run(steps[0])
    assert code == 0 and " holds: " in said, said
    mark = re.search(r"mark ([0-9a-f]{4}(?: [0-9a-f]{4}){3})", said)[1]
    entries = int(re.search(r"(\d+) entries", said)[1])
    with_mark = the(steps, '--mark "MARK"')
    assert run(with_mark.replace("MARK", mark))[0] == 0
    early, count = earlier_mark(FOLDER / name)
    code, said = run(with_mark.replace("MARK", early))
    assert code == 0 and f"first {count} entries" in said, said
    assert run(with_mark.replace("MARK", "0000 0000 0000 0000"))[0] == 1
    assert run(the(steps, "--keys").replace("FILE", "known.keys"))[0] == 0
    shutil.copy(FOLDER / name, FOLDER / "other.record")
    against = the(steps, "--against").replace(" A ", f" {shlex.quote(name)} ").replace(" B", " other.record")
    assert run(against)[0] == 0

    other = the(steps, "verify_record.py")
    code, said = run(other)
    told = json.loads(said)
    assert code == 0 and told["holds"] and (told["entries"], told["mark"]) == (entries, mark), said
    code, said = run(f"{other} --mark '{early}' --keys known.keys")
    assert code == 0 and json.loads(said)["mark_given_is_of_the_first"] == count, said
    assert run(f"{other} --mark '0000 0000 0000 0000'")[0] == 1
    code, said = run(the(steps, "openssl_check.sh"))
    assert code == 0 and said.count("Signature Verified Successfully") == 2, said
    code, said = run(the(steps, "tail"))
    assert code == 0 and "".join(said.split()) == mark.replace(" ", ""), said
    return steps


def altered(name, steps):
    """One digit of a reading, long before the end."""
    data = bytearray((FOLDER / name).read_bytes())
    at = data.index(b'"kind":"reading"') - 30
    while not 0x30 <= data[at] <= 0x38:
        at -= 1
    data[at] += 1
    (FOLDER / name).write_bytes(data)
    for words in ("--mark", "--keys", "verify_record.py"):
        step = the(steps, words).replace("MARK", "0" * 16).replace("FILE", "known.keys")
        assert run(step)[0] == 1, step
    assert run(steps[0])[0] == 1


def main():
    shutil.rmtree(FOLDER, ignore_errors=True)
    (FOLDER / "tests").mkdir(parents=True)
    shutil.copytree(SOURCE, FOLDER / "tests" / "independent")
    (FOLDER / "known.keys").write_text("# nobody told a key\n")
    for name in ("day.record", "the lead's day.record"):
        shutil.copy(RECORD, FOLDER / name)
        steps = follow(name)
        altered(name, steps)
    print(f"{len(steps)} commands of the report, run as printed")


if __name__ == "__main__":
    main()
