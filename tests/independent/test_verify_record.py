#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Tries the independent verifier on a record that the program made, and on damaged copies of it.

    test_verify_record.py RECORD
"""
import sys

from verify_record import verify


def line_of(data, byte):
    return data.count(b"\n", 0, byte) + 1


def first_line_of_commit(data, line):
    lines = data.split(b"\n")
    while line > 1 and not lines[line - 2].startswith(b'{"checkpoint"'):
        line -= 1
    return line


def main():
    with open(sys.argv[1], "rb") as file:
        data = file.read()
    result, _ = verify(data)
    assert result["holds"], result
    # 37 shares no factor with 8, so that all bits of a byte get their turn.
    for bit in range(0, len(data) * 8, 37):
        forged = bytearray(data)
        forged[bit // 8] ^= 1 << (bit % 8)
        result, _ = verify(bytes(forged))
        line = line_of(data, bit // 8)
        assert not result["holds"], f"bit {bit}"
        assert first_line_of_commit(data, line) <= result["first_bad"] <= line, (bit, line, result)
    ends = 0
    for size in range(0, len(data), 11):
        ends += verify(data[:size])[0]["holds"]
    assert ends <= 6, ends
    mark = verify(data)[0]["mark"]
    assert verify(data, mark.upper())[0]["holds"]
    assert not verify(data, "0000 0000 0000 0000")[0]["holds"]
    print("the independent verifier agrees")


if __name__ == "__main__":
    main()
