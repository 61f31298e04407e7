#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Takes extracts of a record with the program and checks them with both verifiers.

    test_extract.py WALKDOWN RECORD FOLDER
"""
import json
import re
import subprocess
import sys

from verify_record import verify, verify_extract


def walkdown(*arguments):
    done = subprocess.run([sys.argv[1], *arguments], capture_output=True, check=False)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def take(name, *arguments):
    path = f"{sys.argv[3]}/{name}.extract"
    status, _, err = walkdown("extract", sys.argv[2], *arguments, "-o", path)
    assert status == 0, err
    with open(path, "rb") as file:
        data = file.read()
    status, out, err = walkdown("verify", path, "--json")
    theirs, mine = json.loads(out), verify_extract(data)
    assert status == 0 and theirs["holds"] and mine["holds"], (theirs, mine, err)
    for member in ("entries", "withheld", "mark", "unchecked_sign_offs"):
        assert theirs[member] == mine[member], (member, theirs, mine)
    return path, data, mine


def names_of(record):
    enrolled = (json.loads(line) for line in record.splitlines() if b'"kind":"enrol"' in line)
    return {entry["body"]["name"] for entry in enrolled}


def strings_of(extract):
    """All strings and keys of the entries, as a reader would see them."""
    def walk(value):
        if isinstance(value, str):
            yield value
        elif isinstance(value, list):
            for each in value:
                yield from walk(each)
        elif isinstance(value, dict):
            yield from value
            yield from walk(list(value.values()))

    for line in extract.splitlines()[2::2]:
        if line.startswith(b'{"withheld":'):
            continue  # a hash, which may spell anything
        yield from walk(json.loads(line))


def main():
    with open(sys.argv[2], "rb") as file:
        record = file.read()
    mark, names = verify(record)[0]["mark"], names_of(record)
    assert len(names) > 2, names
    _, _, some = take("readings", "--where", "kind=reading,claim,rehook")
    assert some["mark"] == mark and some["entries"] > 100
    _, whole, all_of_it = take("whole", "--where", "n=0..")
    assert all_of_it["entries"] == verify(record)[0]["entries"]
    assert all_of_it["unchecked_sign_offs"] == 0
    # Nobody's name, nor a part of it, is left anywhere in what remains.
    _, hidden, counts = take("nameless", "--where", "n=1..", "--withhold-names")
    assert counts["withheld"] > 0 and counts["entries"] > 100
    assert counts["withheld"] + counts["entries"] == all_of_it["entries"] - 1
    said = "\n".join(strings_of(hidden))
    for name in names:
        for part in name.split():
            word = rf"(?<![^\W_]){re.escape(part)}(?![^\W_])"
            assert len(part) < 3 or not re.search(word, said, re.IGNORECASE), part
        assert name not in said
    one = sorted(names)[0]
    _, without, _ = take("without-one", "--where", "n=1..", "--withhold", one)
    assert one.encode() not in without and one.encode() in whole

    path, small, _ = take("small", "--where", "kind=release,second", "--where", "kind=enrol",
                          "--withhold", one)
    for bit in range(0, len(small) * 8, 29):
        forged = bytearray(small)
        forged[bit // 8] ^= 1 << (bit % 8)
        assert not verify_extract(bytes(forged))["holds"], f"bit {bit}"
    assert verify_extract(small, expected=mark.upper())["holds"]
    assert not verify_extract(small, expected="0000 0000 0000 0000")["holds"]
    assert walkdown("verify", path, "--mark", "0000 0000 0000 0000")[0] == 1
    with open(path, "wb") as file:
        file.write(bytes(forged))
    assert walkdown("verify", path)[0] == 1
    assert walkdown("extract", sys.argv[2], "--where", "kind=", "-o", path)[0] == 2
    print("both verifiers agree on extracts")


if __name__ == "__main__":
    main()
