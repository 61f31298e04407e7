#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Checks the last checkpoint of a record, and its last sign-off if it has one, by the stock openssl
# command: nothing of walkdown and nothing of python's cryptography takes part in the signatures.
#   openssl_check.sh RECORD
# python3 only takes the JSON and the base64 apart. The key is wrapped as RFC 8410 says.
set -eu
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

python3 - "$1" "$folder" <<'PY'
import base64, json, sys
record, folder = sys.argv[1:]
checkpoint = sign_off = None
keys = {}
for line in open(record, encoding="utf-8"):
    tree = json.loads(line)
    if "checkpoint" in tree:
        checkpoint = tree["checkpoint"]
        continue
    body = tree["body"]
    for vkey in (body.get("station"), body.get("vkey")):
        if isinstance(vkey, str):
            keys[vkey.split("+", 2)[0]] = base64.b64decode(vkey.split("+", 2)[2])[1:]
    for note in [body["signoff"]] if "signoff" in body else body.get("signoffs", []):
        sign_off = note
for name, note in (("checkpoint", checkpoint), ("sign-off", sign_off)):
    if note is None:
        continue
    text, line = note.rsplit("\n\n", 1)
    signer, data = line[2:].rstrip("\n").split(" ")
    with open(f"{folder}/{name}.text", "wb") as file:
        file.write((text + "\n").encode())
    with open(f"{folder}/{name}.sig", "wb") as file:
        file.write(base64.b64decode(data)[4:])
    with open(f"{folder}/{name}.der", "wb") as file:
        file.write(bytes.fromhex("302a300506032b6570032100") + keys[signer])
PY

for text in "$folder"/*.text; do
  base=${text%.text}
  openssl pkey -pubin -inform DER -in "$base.der" -outform PEM -out "$base.pem"
  printf '%s: ' "$(basename "$base")"
  openssl pkeyutl -verify -rawin -pubin -inkey "$base.pem" -in "$text" -sigfile "$base.sig"
done
