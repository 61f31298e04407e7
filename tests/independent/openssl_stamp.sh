#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Checks every time-stamp of a record by the stock openssl command alone: the answer against the
# request, and against the head that was stamped (RFC 3161; checklist/record/FORMAT.md, section 9).
#   openssl_stamp.sh RECORD AUTHORITY.pem
# That the head is this record's, verify_record.py checks.
set -eu
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

python3 - "$1" "$folder" <<'PY'
import base64, json, sys
record, folder = sys.argv[1:]
for line in open(record, encoding="utf-8"):
    entry = json.loads(line)
    if entry.get("kind") != "timestamp":
        continue
    base = f"{folder}/entry-{entry['n']}"
    with open(base + ".note", "wb") as file:
        file.write(entry["body"]["note"].encode())
    for member, ending in (("request", "tsq"), ("response", "tsr")):
        with open(f"{base}.{ending}", "wb") as file:
            file.write(base64.b64decode(entry["body"][member]))
PY

found=0
for answer in "$folder"/*.tsr; do
  [ -e "$answer" ] || break
  base=${answer%.tsr}
  printf '%s, the request: ' "$(basename "$base")"
  openssl ts -verify -queryfile "$base.tsq" -in "$answer" -CAfile "$2" 2>&1 | tail -n 1 | grep OK
  printf '%s, the head: ' "$(basename "$base")"
  openssl ts -verify -data "$base.note" -in "$answer" -CAfile "$2" 2>&1 | tail -n 1 | grep OK
  openssl ts -reply -in "$answer" -text 2>/dev/null | grep 'Time stamp:'
  found=$((found + 1))
done
[ "$found" -gt 0 ] || { echo "the record has no time-stamp"; exit 1; }
