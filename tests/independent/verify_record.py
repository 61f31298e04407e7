#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Checks a walkdown record, or an extract of one, without walkdown.

Written from checklist/record/FORMAT.md alone, in another language and with other libraries, and
kept simple rather than quick: it holds all leaf hashes in memory. It shares no line with the program.

    verify_record.py RECORD [--keys FILE] [--mark "1a2b 3c4d 5e6f 7081"]

Prints {"holds":...,"entries":...,"mark":...,"first_bad":...,"why":...}. A mark may have been
written down at an earlier moment of the record: then its number of entries is told as well, and
nothing that came after is shown by it.
Exit status: 0 it holds, 1 it does not, 2 it could not be looked at.
"""
import argparse
import base64
import datetime
import hashlib
import json
import re
import sys
import unicodedata

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

MOST = 2**53 - 1
LIFE_MS = 600_000
PACE_MS = 2000
KEPT = 32768
DASH = "\u2014 "
KIND = re.compile(r"[a-z][a-z0-9-]{0,39}")


class Bad(Exception):
    """Something does not hold. `line` is its place where it is another than the line at hand."""

    def __init__(self, why, line=None):
        super().__init__(why)
        self.line = line


def need(condition, why, line=None):
    if not condition:
        raise Bad(why, line)


# --- spelling ---------------------------------------------------------------------------------


def whole(digits):
    number = int(digits)
    need(-MOST <= number <= MOST, "a number is beyond 2^53 - 1")
    return number


def no_fraction(_):
    raise Bad("a number is not whole")


def plain_object(pairs):
    need(len({key for key, _ in pairs}) == len(pairs), "a key comes twice")
    return dict(pairs)


def parse_json(text):
    try:
        return json.loads(text, parse_int=whole, parse_float=no_fraction, parse_constant=no_fraction,
                          object_pairs_hook=plain_object)
    except (json.JSONDecodeError, RecursionError) as error:
        raise Bad(f"the line is no JSON: {error}") from None


def compact(value, sort):
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), sort_keys=sort)


def depth(value):
    if isinstance(value, dict):
        return 1 + max(map(depth, value.values()), default=0)
    if isinstance(value, list):
        return 1 + max(map(depth, value), default=0)
    return 0


def unbase64(text):
    try:
        data = base64.b64decode(text, validate=True)
    except (ValueError, TypeError):
        raise Bad("this is no base64") from None
    need(base64.b64encode(data).decode() == text, "base64 in another spelling than its own")
    return data


def parse_hash(text):
    data = unbase64(text)
    need(len(data) == 32, "a hash has another length")
    return data


def printable(text):
    return all(ord(c) >= 0x20 and ord(c) != 0x7F for c in text)


def plain_line(text, most):
    return (isinstance(text, str) and 0 < len(text.encode()) <= most and text == text.strip(" ")
            and printable(text))


def is_name(text):
    spaces = any(unicodedata.category(c) in ("Zs", "Zl", "Zp") or c == "\x85" for c in text)
    return plain_line(text, 200) and "+" not in text and not spaces


def parse_at(text):
    need(re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z", text, re.ASCII), "this is no time")
    try:
        at = datetime.datetime.fromisoformat(text[:-1])
    except ValueError:
        raise Bad("this is no time") from None
    span = at - datetime.datetime(1970, 1, 1)
    need(span.days >= 0, "the time is before 1970")
    return (span.days * 86400 + span.seconds) * 1000 + span.microseconds // 1000


# --- keys and notes ---------------------------------------------------------------------------


class Key:
    def __init__(self, vkey):
        need(isinstance(vkey, str) and vkey.count("+") >= 2, "this is no public key")
        self.text = vkey
        self.name, id_hex, data = vkey.split("+", 2)
        data = unbase64(data)
        need(is_name(self.name) and len(data) == 33 and data[0] in (1, 4), "this is no public key")
        self.type, self.raw = data[0], data[1:]
        need(self.id().hex() == id_hex, "the key's id is not that of its name and key")

    def id(self, of_type=None):
        kind = bytes([self.type if of_type is None else of_type])
        return hashlib.sha256(self.name.encode() + b"\n" + kind + self.raw).digest()[:4]

    def signed(self, message, signature):
        try:
            Ed25519PublicKey.from_public_bytes(self.raw).verify(signature, message)
            return True
        except InvalidSignature:
            return False


class Note:
    """A signed note with exactly one signature, which is all that a record has."""

    def __init__(self, text):
        need(isinstance(text, str) and printable(text.replace("\n", "")), "this is no note")
        need("\n\n" in text and text.endswith("\n"), "this is no note")
        self.text, line = text.rsplit("\n\n", 1)
        self.text += "\n"
        need(line.startswith(DASH) and line.count("\n") == 1, "the note has not one signature")
        self.name, _, data = line[len(DASH):-1].partition(" ")
        need(is_name(self.name), "the signature has no name")
        data = unbase64(data)
        need(len(data) > 4, "the signature was cut")
        self.id, self.signature = data[:4], data[4:]

    def by(self, key):
        return (self.name == key.name and self.id == key.id() and len(self.signature) == 64
                and key.signed(self.text.encode(), self.signature))

    def cosigned_by(self, key):
        if self.name != key.name or self.id != key.id(4) or len(self.signature) != 72:
            return False
        time = int.from_bytes(self.signature[:8], "big")
        message = f"cosignature/v1\ntime {time}\n{self.text}".encode()
        return time < 2**63 and key.signed(message, self.signature[8:])


def parse_head(text):
    lines = text.split("\n")
    need(len(lines) == 4 and lines[3] == "", "this is no checkpoint")
    origin, size, root = lines[:3]
    need(is_name(origin) and re.fullmatch(r"0|[1-9]\d{0,19}", size, re.ASCII), "this is no checkpoint")
    return origin, int(size), parse_hash(root)


# --- time-stamps ------------------------------------------------------------------------------

SHA256 = bytes.fromhex("0609608648016503040201")  # 2.16.840.1.101.3.4.2.1 in DER


def der(data, at=0):
    """(tag, content, behind) of the object at `at`; definite lengths only."""
    need(len(data) >= at + 2, "the DER was cut")
    tag, size, at = data[at], data[at + 1], at + 2
    if size >= 0x80:
        count = size & 0x7F
        need(0 < count <= 4 and len(data) >= at + count, "the DER was cut")
        size, at = int.from_bytes(data[at:at + count], "big"), at + count
    need(len(data) >= at + size, "the DER was cut")
    return tag, data[at:at + size], at + size


def parts(data):
    """The objects in a SEQUENCE's content, as (tag, content)."""
    found, at = [], 0
    while at < len(data):
        tag, content, at = der(data, at)
        found.append((tag, content))
    return found


def sequence(data):
    tag, content, behind = der(data)
    need(tag == 0x30 and behind == len(data), "the DER is no sequence, or goes on behind it")
    return parts(content)


def sha256_imprint(content):
    (_, algorithm), (tag, hash_) = parts(content)
    need(algorithm.startswith(SHA256) and tag == 4 and len(hash_) == 32, "the imprint is no SHA-256")
    return hash_


def stamp_request(data):
    """TimeStampReq of RFC 3161 2.4.1: the imprint and the nonce."""
    fields = sequence(data)
    numbers = [content for tag, content in fields[2:] if tag == 2]
    need(len(numbers) == 1, "the request has no nonce")
    return sha256_imprint(fields[1][1]), numbers[0]


def stamp_token(data):
    """TimeStampResp of 2.4.2, granted: imprint and nonce of the TSTInfo in its SignedData."""
    fields = sequence(data)
    need(parts(fields[0][1])[0][1] in (b"\0", b"\1") and len(fields) == 2, "no time-stamp was granted")
    content_info = parts(fields[1][1])             # OID signedData, [0]
    signed = parts(der(content_info[1][1])[1])     # version, digests, encapContentInfo, ...
    inside = parts(signed[2][1])                   # OID TSTInfo, [0]
    info = sequence(der(inside[1][1])[1])          # in an OCTET STRING
    numbers = [content for tag, content in info[5:] if tag == 2]
    need(len(numbers) == 1, "the token has no nonce")
    return sha256_imprint(info[2][1]), numbers[0]


# --- tree -------------------------------------------------------------------------------------


def leaf(line):
    return hashlib.sha256(b"\0" + line).digest()


def node(left, right):
    return hashlib.sha256(b"\1" + left + right).digest()


def split(count):
    return 1 << ((count - 1).bit_length() - 1)


class Tree:
    def __init__(self):
        self.size, self.full = 0, []

    def add(self, hash_):
        bits = self.size
        while bits & 1:
            hash_ = node(self.full.pop(), hash_)
            bits >>= 1
        self.full.append(hash_)
        self.size += 1

    def root(self):
        if not self.full:
            return hashlib.sha256(b"").digest()
        root = self.full[-1]
        for left in reversed(self.full[:-1]):
            root = node(left, root)
        return root


def climb(leaf_hash, index, size, path):
    """The root that RFC 6962's audit path leads to, by its recursive definition."""
    if size == 1:
        need(not path, "the proof is too long")
        return leaf_hash
    need(path, "the proof is too short")
    k = split(size)
    if index < k:
        return node(climb(leaf_hash, index, k, path[:-1]), path[-1])
    return node(path[-1], climb(leaf_hash, index - k, size - k, path[:-1]))


def subproof(m, n, path, old_root, whole_tree):
    """(old, new) roots by RFC 6962 2.1.2, read backwards."""
    if m == n:
        if whole_tree:
            need(not path, "the proof is too long")
            return old_root, old_root
        need(len(path) == 1, "the proof has another length")
        return path[0], path[0]
    need(path, "the proof is too short")
    k, side = split(n), path[-1]
    if m <= k:
        old, new = subproof(m, k, path[:-1], old_root, whole_tree)
        return old, node(new, side)
    old, new = subproof(m - k, n - k, path[:-1], old_root, False)
    return node(side, old), node(side, new)


def consistent(m, old_root, n, new_root, path):
    return 0 < m <= n and subproof(m, n, path, old_root, True) == (old_root, new_root)


# --- sign-offs --------------------------------------------------------------------------------


def between(line, before, behind):
    need(line.startswith(before) and line.endswith(behind)
         and len(line) > len(before) + len(behind), "a sentence of the sign-off is another")
    value = line[len(before):len(line) - len(behind)]
    need(plain_line(value, 2000), "a sentence of the sign-off says nothing")
    return value


def parse_sign_off(text):
    lines = text.split("\n")
    need(len(lines) >= 9 and lines[-1] == "", "the sign-off is too short")
    need(lines[0] == "This is a sign-off in a walkdown record.", "this is no sign-off")
    facts = {}
    for line in lines[4:-5]:
        name, found, value = between(line, "The ", ".").partition(" is ")
        need(found and KIND.fullmatch(name) and name not in ("time", "record") and name not in facts
             and plain_line(value, 2000), "a fact of the sign-off is not one")
        facts[name] = value
    need(len(facts) <= 32, "the sign-off has too many facts")
    role = between(lines[2], "My role is ", ".")
    need(KIND.fullmatch(role), "the role is not spelled as one")
    between(lines[3], "I state: ", ".")
    origin = between(lines[-4], "The record is ", ".")
    size = between(lines[-3], "It has ", " entries.")
    root = between(lines[-2], "Its root is ", ".")
    head = parse_head(f"{origin}\n{size}\n{root}\n")
    return between(lines[1], "I am ", "."), role, parse_at(between(lines[-5], "The time is ", ".")), head


# --- the record -------------------------------------------------------------------------------


class Entry:
    def __init__(self, raw, tree):
        need(list(tree) == ["n", "at", "up_ms", "kind", "body"], "the entry has other members")
        self.raw, self.body = raw, tree["body"]
        self.n, self.up, self.kind = tree["n"], tree["up_ms"], tree["kind"]
        need(type(self.n) is int and self.n >= 0, "the entry has no number")
        need(type(self.up) is int and self.up >= 0, "the entry has no boot clock")
        need(isinstance(tree["at"], str), "the entry has no time")
        self.at = parse_at(tree["at"])
        need(isinstance(self.kind, str) and KIND.fullmatch(self.kind), "the entry has no kind")
        need(isinstance(self.body, dict) and depth(self.body) <= 32, "the body is no plain object")
        again = (f'{{"n":{self.n},"at":"{tree["at"]}","up_ms":{self.up},"kind":"{self.kind}",'
                 f'"body":{compact(self.body, True)}}}')
        need(again.encode() == raw, "the line has another spelling than its own")


class Record:
    def __init__(self):
        self.tree, self.lines, self.sealed = Tree(), 0, 0
        self.pending = []          # (line number, entry) since the last checkpoint
        self.root = None
        self.origin, self.stations, self.people = None, [], []
        self.heads, self.used, self.stamps = {}, set(), []
        self.at = self.up = self.pace = 0
        self.marks = {}            # mark -> number of entries
        self.closed = False

    def line(self, raw):
        self.lines += 1
        need(len(raw) <= (2**28 if self.lines == 1 else 2**20), "the line is too long")
        try:
            text = raw.decode("utf-8", "strict")
        except UnicodeDecodeError:
            raise Bad("the line is not UTF-8") from None
        tree = parse_json(text)
        need(isinstance(tree, dict), "the line is no object")
        if "checkpoint" in tree:
            need(compact(tree, False).encode() == raw and len(tree) == 1, "the line has another spelling")
            self.checkpoint(Note(tree["checkpoint"]))
        else:
            entry = Entry(raw, tree)
            need(entry.n == self.tree.size + len(self.pending), "the entries are not in a row")
            if entry.n == 0:
                self.open(entry)
            self.pending.append((self.lines, entry))

    def open(self, entry):
        need(entry.kind == "open" and entry.body.get("format") == 1
             and type(entry.body["format"]) is int, "the record does not begin with an opening")
        need(isinstance(entry.body.get("origin"), str) and is_name(entry.body["origin"])
             and "show" in entry.body, "the opening is not complete")
        self.origin, self.stations = entry.body["origin"], [Key(entry.body.get("station"))]
        need(self.stations[0].type == 1, "the station's key is not for notes")

    def checkpoint(self, note):
        need(self.pending, "a checkpoint with nothing to seal")
        origin, size, root = parse_head(note.text)
        need(any(note.by(key) for key in self.stations), "the checkpoint is not signed by a station")
        for _, entry in self.pending:
            self.tree.add(leaf(entry.raw))
        need(size == self.tree.size, "the checkpoint seals another number of entries")
        if root != self.tree.root():
            first, last = self.pending[0][0], self.pending[-1][0]
            raise Bad(f"the root is another: a line from {first} to {last} was changed", first)
        need(origin == self.origin, "the checkpoint is of another record")
        for number, entry in self.pending:
            try:
                self.accept(entry)
            except Bad as bad:
                raise Bad(str(bad), bad.line or number) from None
        self.heads[size] = (root, self.pending[-1][1].up)
        if len(self.heads) > KEPT:
            del self.heads[next(iter(self.heads))]
        self.stations = self.stations[:1] + [key for key, _, role in self.people if role == "station"]
        self.pending, self.root, self.sealed = [], root, self.tree.size
        self.marks[mark_of(root)] = self.sealed

    def accept(self, entry):
        need(not self.closed, "an entry behind the close")
        need((entry.kind == "open") == (entry.n == 0), "an opening that is not the first entry")
        self.times(entry)
        if entry.kind == "resumed":
            self.heads = {}
        if entry.kind == "close":
            self.closed = True
        if entry.kind == "enrol":
            self.enrol(entry.body)
        if entry.kind == "cosign":
            self.cosign(entry.body)
        if entry.kind == "timestamp":
            self.time_stamp(entry.body)
        notes = [entry.body["signoff"]] if "signoff" in entry.body else []
        if "signoffs" in entry.body:
            need(isinstance(entry.body["signoffs"], list) and entry.body["signoffs"], "signoffs is no list")
            notes += entry.body["signoffs"]
        if entry.n > 0:
            for text in notes:
                self.sign_off(entry, text)

    def times(self, entry):
        off = entry.at - entry.up - self.pace
        if entry.kind == "resumed":
            need(entry.at >= self.at or entry.body.get("back_ms") == self.at - entry.at, "time went back")
        elif entry.n > 0:
            need(entry.up >= self.up, "the boot clock went back")
            if entry.kind == "clock-step":
                need(entry.body.get("by_ms") == off, "the clock stepped by another time than told")
            else:
                need(entry.at >= self.at and abs(off) <= PACE_MS, "the clock stepped, and nothing tells it")
        if entry.n == 0 or entry.kind in ("resumed", "clock-step"):
            self.pace = entry.at - entry.up
        self.at, self.up = entry.at, entry.up

    def enrol(self, body):
        key, name, role = Key(body.get("vkey")), body.get("name"), body.get("role")
        need(plain_line(name, 200), "the enrolment has no name")
        need(isinstance(role, str) and KIND.fullmatch(role), "the enrolment has no role")
        for other, other_name, other_role in self.people:
            if other.raw == key.raw:
                need(other_name == name, "a key with two names")
                need(other_role != role or other.text != key.text, "the same enrolment twice")
            else:
                need(other.name != key.name, "two keys of one name")
        self.people.append((key, name, role))

    def sign_off(self, entry, text):
        note = Note(text)
        person, role, at, (origin, size, root) = parse_sign_off(note.text)
        need(any(note.by(key) and (name, as_role) == (person, role) for key, name, as_role in self.people),
             "the sign-off is not signed by an enrolled person of this name and role")
        need(origin == self.origin, "the sign-off belongs to another record")
        need(size in self.heads and self.heads[size][0] == root,
             "the sign-off names a state that the record was not in shortly before")
        need(entry.up - self.heads[size][1] <= LIFE_MS, "the sign-off is too old")
        need(-PACE_MS <= entry.at - at <= LIFE_MS, "the sign-off is of another time")
        need(text not in self.used, "the sign-off was used before")
        self.used.add(text)

    def cosign(self, body):
        note = Note(body.get("note"))
        origin, size, root = parse_head(note.text)
        need(origin == self.origin, "the cosignature is for another record")
        need(any(role == "witness" and note.cosigned_by(key) for key, _, role in self.people),
             "the cosignature is by nobody who is enrolled as witness")
        self.went_through(body, size, root)

    def went_through(self, body, size, root):
        to = body.get("to")
        need(type(to) is int and to in self.heads and isinstance(body.get("path"), list),
             "the signed state leads to no head")
        path = [parse_hash(text) for text in body["path"]]
        need(consistent(size, root, to, self.heads[to][0], path), "the signed state was not this record's")

    def time_stamp(self, body):
        """All but the token's own signature, which openssl_stamp.sh leaves to openssl."""
        note = Note(body.get("note"))
        origin, size, root = parse_head(note.text)
        need(origin == self.origin, "the time-stamp is for another record")
        need(any(note.by(key) for key in self.stations), "no station signed what was stamped")
        self.went_through(body, size, root)
        request, response = unbase64(body.get("request")), unbase64(body.get("response"))
        need(response not in self.stamps, "the same time-stamp twice")
        self.stamps.append(response)
        imprint, nonce = stamp_request(request)
        need(imprint == hashlib.sha256(body["note"].encode()).digest(), "the request is over another head")
        need((imprint, nonce) == stamp_token(response), "the token answers another request")


def mark_of(root):
    digits = root.hex()[:16]
    return " ".join(digits[i:i + 4] for i in range(0, 16, 4))


def verify(data, expected=None):
    record, why, bad, marked = Record(), None, None, None
    lines = data.split(b"\n")
    try:
        for raw in lines[:-1]:
            record.line(raw)
        need(not lines[-1], "the last line was cut", record.lines + 1)
        need(not record.pending, "the end has no checkpoint",
             record.pending[0][0] if record.pending else None)
        need(record.lines, "the file is empty", 1)
        digits = re.sub("[ -]", "", expected or "").lower()
        wanted = " ".join(digits[i:i + 4] for i in range(0, len(digits), 4))
        need(expected is None or wanted in record.marks,
             f"the mark is {mark_of(record.root)}, and was at no moment the one given")
        marked = record.marks.get(wanted)
    except Bad as error:
        why, bad = str(error), error.line or record.lines
    result = {"holds": why is None, "entries": record.sealed,
              "mark": mark_of(record.root) if record.root else "", "first_bad": bad, "why": why}
    if marked is not None:
        result["mark_given_is_of_the_first"] = marked
    return result, record


# --- extract ----------------------------------------------------------------------------------


class Extract:
    """Lines of an extract, each after the other; `known`: keys that the reader trusts."""

    def __init__(self, known=()):
        self.known, self.people = known, []
        self.entries = self.withheld = self.unchecked = 0
        self.root, self.last = None, -1

    def head(self, line):
        head = parse_json(line.decode())
        need(isinstance(head, dict) and list(head) == ["extract", "checkpoint", "station"]
             and type(head["extract"]) is int and head["extract"] == 1
             and compact(head, False).encode() == line, "this is no extract of form 1")
        note, self.station = Note(head["checkpoint"]), Key(head["station"])
        need(note.by(self.station) and self.station.type == 1,
             "the checkpoint is not signed by the station")
        self.origin, self.size, self.root = parse_head(note.text)

    def pair(self, proof_line, line):
        proof = parse_json(proof_line.decode())
        need(isinstance(proof, dict) and list(proof) == ["path"] and isinstance(proof["path"], list)
             and compact(proof, False).encode() == proof_line, "this is no proof")
        path = [parse_hash(text) for text in proof["path"]]
        tree = parse_json(line.decode())
        need(isinstance(tree, dict), "the line is no object")
        if "withheld" in tree:
            need(list(tree) == ["withheld", "leaf"] and compact(tree, False).encode() == line,
                 "this is no withheld entry")
            self.place(tree["withheld"], parse_hash(tree["leaf"]), path)
            self.withheld += 1
            return
        entry = Entry(line, tree)
        self.place(entry.n, leaf(line), path)
        self.body(entry)
        self.entries += 1

    def place(self, n, hash_, path):
        need(type(n) is int and self.last < n < self.size, "the entries do not rise")
        need(climb(hash_, n, self.size, path) == self.root, "the entry is not in this record")
        self.last = n

    def body(self, entry):
        need(entry.n or entry.body.get("origin") == self.origin, "the opening is of another record")
        if not entry.n:
            return
        if entry.kind == "enrol":
            need(plain_line(entry.body.get("name"), 200), "the enrolment has no name")
            self.people.append((Key(entry.body.get("vkey")), entry.body["name"], entry.body.get("role")))
        notes = [entry.body["signoff"]] if "signoff" in entry.body else []
        for text in notes + entry.body.get("signoffs", []):
            self.sign_off(entry, Note(text))

    def sign_off(self, entry, note):
        person, role, _, (origin, size, _) = parse_sign_off(note.text)
        need(origin == self.origin, "the sign-off belongs to another record")
        need(size <= entry.n, "the sign-off names a later state")
        mine = [row for row in self.people if (row[0].name, row[0].id()) == (note.name, note.id)]
        known = [key for key in self.known if (key.name, key.id()) == (note.name, note.id)]
        if mine:
            need(any((name, as_role) == (person, role) and note.by(key) for key, name, as_role in mine),
                 "the sign-off is not signed by the person enrolled here")
        elif known:
            need(note.by(known[0]), "the sign-off is not signed by the known key")
        else:
            self.unchecked += 1


def verify_extract(data, known=(), expected=None):
    lines, number, extract, why, bad = data.split(b"\n"), 1, Extract(known), None, None
    try:
        extract.head(lines[0])
        for i in range(1, len(lines) - 2, 2):
            number = i + 2
            extract.pair(lines[i], lines[i + 1])
        number = len(lines)
        need(lines[-1] == b"" and len(lines) % 2 == 0, "the last line was cut")
        need(expected is None or re.sub("[ -]", "", expected).lower()
             == mark_of(extract.root).replace(" ", ""), "the mark is another", 1)
    except (Bad, UnicodeDecodeError, AttributeError, TypeError) as error:
        why, bad = str(error), getattr(error, "line", None) or number
    return {"holds": why is None, "entries": extract.entries,
            "mark": mark_of(extract.root) if extract.root else "", "first_bad": bad, "why": why,
            "extract": True, "withheld": extract.withheld, "unchecked_sign_offs": extract.unchecked}


def main():
    options = argparse.ArgumentParser(description="Checks a walkdown record without walkdown.")
    options.add_argument("record")
    options.add_argument("--keys", help="known public keys, one vkey a line")
    options.add_argument("--mark", help="the mark as it was written down")
    given = options.parse_args()
    try:
        with open(given.record, "rb") as file:
            data = file.read()
        known = []
        if given.keys:
            with open(given.keys, encoding="utf-8") as file:
                known = [line.strip() for line in file if line.strip() and not line.startswith("#")]
    except OSError as error:
        print(error, file=sys.stderr)
        return 2
    if data.startswith(b'{"extract":'):
        result = verify_extract(data, [Key(text) for text in known], given.mark)
    else:
        result, record = verify(data, given.mark)
        keys = [key.text for key in record.stations + [key for key, _, _ in record.people]]
        result["unknown_keys"] = sorted(set(keys) - set(known))
    print(json.dumps(result, ensure_ascii=False))
    return 0 if result["holds"] else 1


if __name__ == "__main__":
    sys.exit(main())
