#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""A day whose record is signed from outside, as its users would do it, checked by other hands.

    test_outside.py WALKDOWN FOLDER

- A time-stamp (RFC 3161) by the stock `openssl ts` command as the authority.
- A witness's signature under a head, carried as text, once through a pipe as a phone would carry it;
  and one that this program did not make: by python's cryptography, after C2SP tlog-cosignature
  ("Format", "Ed25519 signed message"): key id SHA-256(name || LF || 0x04 || key)[:4], signed is
  "cosignature/v1" LF "time <seconds>" LF <note text>, and the line holds id || time || signature.
"""
import base64
import hashlib
import json
import pathlib
import shutil
import subprocess
import sys
import time

from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from verify_record import verify

WALKDOWN, FOLDER = str(pathlib.Path(sys.argv[1]).resolve()), pathlib.Path(sys.argv[2])
HERE = pathlib.Path(__file__).resolve().parent
CONFIG = """[stamps]
serial = serial
signer_cert = stamps.pem
signer_key = stamps.key
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256
ess_cert_id_alg = sha256
"""


def walkdown(*arguments, expect=0, given=""):
    done = subprocess.run([WALKDOWN, *map(str, arguments)], capture_output=True, check=False,
                          input=given.encode(), cwd=FOLDER)
    assert done.returncode == expect, (arguments, done.returncode, done.stdout, done.stderr)
    return done.stdout.decode() + done.stderr.decode()


def day(*arguments, expect=0, given=""):
    return walkdown("day", *arguments, "--record", "a.record", "--key", "station.key", expect=expect,
                    given=given)


def openssl(*arguments):
    subprocess.run(["openssl", *arguments], check=True, capture_output=True, cwd=FOLDER)


def make_authority():
    (FOLDER / "config").write_text(CONFIG)
    (FOLDER / "serial").write_text("01\n")
    (FOLDER / "use").write_text("extendedKeyUsage=critical,timeStamping\nkeyUsage=digitalSignature\n")
    key = ("-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes")
    for name, which in (("root", "Root"), ("other", "Another root")):
        openssl("req", "-x509", "-days", "30", *key, "-keyout", f"{name}.key", "-out", f"{name}.pem",
                "-subj", f"/CN={which} of a test")
    openssl("req", *key, "-keyout", "stamps.key", "-out", "stamps.csr", "-subj", "/CN=Stamps")
    openssl("x509", "-req", "-days", "30", "-in", "stamps.csr", "-CA", "root.pem", "-CAkey", "root.key",
            "-set_serial", "2", "-extfile", "use", "-out", "stamps.pem")


def reply(base):
    openssl("ts", "-reply", "-config", "config", "-section", "stamps", "-queryfile", f"{base}.tsq",
            "-out", f"{base}.tsr")


def open_day(witness_vkey):
    (FOLDER / "plan.csv").write_text("cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
                                     "1,A,1,1,1,standard,1,AWG24,5\n")
    (FOLDER / "secret").write_text("kiln-and-copper\n")
    for name in ("Mara Linde", "Olga Brandt"):
        walkdown("crew", "add", name, "--dir", "crew", "--passphrase-file", "secret")
    day("open", "--plan", "plan.csv")
    day("enrol", "Mara Linde", "lead", "--dir", "crew")
    day("enrol", "Olga Brandt", "witness", "--dir", "crew")
    (FOLDER / "notary.vkey").write_text(witness_vkey + "\n")
    day("enrol", "Nils Notary", "witness", "--vkey", witness_vkey)


def cosign(key, name, note):
    text = note[:note.index("\n\n") + 1]
    raw = key.public_key().public_bytes(Encoding.Raw, PublicFormat.Raw)
    id_ = hashlib.sha256(name.encode() + b"\n\x04" + raw).digest()[:4]
    seconds = int(time.time())
    signature = key.sign(f"cosignature/v1\ntime {seconds}\n{text}".encode())
    data = base64.b64encode(id_ + seconds.to_bytes(8, "big") + signature).decode()
    return f"{text}\n\u2014 {name} {data}\n"


def vkey_of(key, name):
    raw = b"\x01" + key.public_key().public_bytes(Encoding.Raw, PublicFormat.Raw)
    id_ = hashlib.sha256(name.encode() + b"\n" + raw).digest()[:4].hex()
    return f"{name}+{id_}+{base64.b64encode(raw).decode()}"


def checked(*arguments, expect=0):
    return json.loads(walkdown("verify", "a.record", "--json", *arguments, expect=expect))


def time_stamps():
    walkdown("day", "time-stamp", "request", "--record", "a.record", "-o", "head")
    openssl("ts", "-query", "-data", "head.note", "-sha256", "-out", "theirs.tsq")
    imprint = hashlib.sha256((FOLDER / "head.note").read_bytes()).digest()
    assert imprint in (FOLDER / "head.tsq").read_bytes()
    assert imprint in (FOLDER / "theirs.tsq").read_bytes()
    reply("head")
    day("note", "a line between the head and its answer")
    said = day("time-stamp", "add", "head.tsr")
    assert "CN=Stamps" in said, said
    assert "already" in day("time-stamp", "add", "head.tsr", expect=2)
    alone = checked()
    assert alone["holds"] and not alone["time_stamps"][0]["vouched"], alone
    assert any("not known" in remark for remark in alone["remarks"]), alone
    assert checked("--authorities", "root.pem")["time_stamps"][0]["vouched"]
    assert not checked("--authorities", "other.pem")["time_stamps"][0]["vouched"]
    print(subprocess.run([HERE / "openssl_stamp.sh", FOLDER / "a.record", FOLDER / "root.pem"],
                         check=True, capture_output=True).stdout.decode(), end="")


def cosignatures(key):
    walkdown("day", "witness", "head", "--record", "a.record", "-o", "w.note")
    walkdown("day", "witness", "sign", "w.note", "--as", "Olga Brandt", "--dir", "crew",
             "--passphrase-file", "secret", "-o", "w.signed")
    day("witness", "add", "w.signed")
    # As text through a pipe, both ways, as a camera and a keyboard would do it.
    head = walkdown("day", "witness", "head", "--record", "a.record")
    code = walkdown("day", "witness", "head", "--record", "a.record", "--qr")
    assert code.count("\n") > 20 and "\u2588" in code, code
    signed = walkdown("day", "witness", "sign", "-", "--as", "Olga Brandt", "--dir", "crew",
                      "--passphrase-file", "secret", given=head)
    day("witness", "add", "-", given="\r\n".join(signed.split("\n")) + "\r\n")  # as a mail does it
    day("witness", "add", "-", given=cosign(key, "notary", head))
    forged = cosign(Ed25519PrivateKey.generate(), "notary", head)
    day("witness", "add", "-", given=forged, expect=2)


def two_histories():
    shutil.copy(FOLDER / "a.record", FOLDER / "b.record")
    day("note", "the wind drops")
    walkdown("day", "note", "the wind rises", "--record", "b.record", "--key", "station.key")
    both = checked("--against", "b.record", expect=1)["against"]
    assert both["holds"] and both["differ"] and "two histories" in both["say"], both
    data = bytearray((FOLDER / "b.record").read_bytes())
    data[data.rindex(b"rises")] ^= 1
    (FOLDER / "b.record").write_bytes(data)
    assert not checked("--against", "b.record", expect=1)["against"]["holds"]


def beside_the_closed_record():
    day("close")
    walkdown("day", "time-stamp", "request", "--record", "a.record", "-o", "end")
    reply("end")
    report = checked("--time-stamp", "end.tsr", "--authorities", "root.pem")
    last = report["time_stamps"][-1]
    assert last["entry"] is None and last["entries"] == report["entries"] and last["vouched"], report
    shutil.copy(FOLDER / "a.record", FOLDER / "whole.record")
    text = (FOLDER / "a.record").read_bytes().splitlines(keepends=True)
    (FOLDER / "a.record").write_bytes(b"".join(text[:-2]))
    shorter = checked("--time-stamp", "end.tsr", expect=1)
    assert shorter["holds"] and "no head of this record" in shorter["time_stamp_why"], shorter
    shutil.move(FOLDER / "whole.record", FOLDER / "a.record")


def main():
    shutil.rmtree(FOLDER, ignore_errors=True)
    FOLDER.mkdir(parents=True)
    key = Ed25519PrivateKey.generate()
    make_authority()
    open_day(vkey_of(key, "notary"))
    time_stamps()
    cosignatures(key)
    two_histories()
    beside_the_closed_record()
    data = (FOLDER / "a.record").read_bytes()
    result, record = verify(data)
    assert result["holds"] and len(record.stamps) == 1, result
    assert data.count(b'"kind":"cosign"') == 3
    print("signed from outside, and other hands agree")


if __name__ == "__main__":
    main()
