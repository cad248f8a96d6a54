#!/bin/sh
# The description of the HTTP interface, beside this file as nutward.json. It is never edited: the daemon makes it.
#
#   sh schema/http/describe.sh [BUILD]           writes it anew with BUILD/nutwardd (BUILD: build)
#   sh schema/http/describe.sh --check NUTWARDD  fails where it is not what this daemon says
set -eu
here=$(cd "$(dirname "$0")" && pwd)
said=$(mktemp)
trap 'rm -f "$said"' EXIT

if [ "${1-}" != --check ]; then
  "${1:-build}/nutwardd" --describe >"$said"
  cat "$said" >"$here/nutward.json"
  exit 0
fi
"$2" --describe >"$said"
if diff -u "$here/nutward.json" "$said" >"$said.diff"; then
  rm -f "$said.diff"
  exit 0
fi
head -n 40 "$said.diff"
rm -f "$said.diff"
echo "schema/http/nutward.json is not what the daemon describes. To write it anew: sh schema/http/describe.sh BUILD" >&2
echo "(BUILD: the folder that holds nutwardd, as in: sh schema/http/describe.sh build)" >&2
exit 1
