#!/bin/sh
# Plays the demo with the programs in build/: a home of its own, the demo shop, a small receiver, the main questions, a
# piece used, a reminder that arrives, one thing taken back. Exits non-zero if any of it did not happen, and leaves nothing
# running or lying about.
set -eu
cd "$(dirname "$0")/.."

home=$(mktemp -d)
daemon='' receiver=''
finish() {
  status=$?
  trap - EXIT INT TERM
  for process in $daemon $receiver; do kill "$process" 2>/dev/null || true; done
  for process in $daemon $receiver; do wait "$process" 2>/dev/null || true; done
  if [ "$status" -ne 0 ]; then
    echo "The demo did not get through. The daemon said:" >&2
    cat "$home/daemon.log" >&2 || true
  fi
  rm -rf "$home"
  exit "$status"
}
trap finish EXIT
trap 'exit 1' INT TERM

fail() { echo "demo: $1" >&2; exit 1; }

# wait_for SECONDS WHAT COMMAND...: until the command succeeds.
wait_for() {
  tries=$(($1 * 10)) what=$2
  shift 2
  until "$@" >/dev/null 2>&1; do
    tries=$((tries - 1))
    if [ "$tries" -le 0 ]; then fail "$what did not happen"; fi
    sleep 0.1
  done
}

# say WANTED SENTENCE: asks as a person would and shows the answer, in which WANTED must stand.
say() {
  printf '\n> %s\n' "$2"
  answer=$(build/nutward --home "$home" --conversation demo --no-color "$2") || { printf '%s\n' "$answer"; fail "\"$2\" was not answered"; }
  printf '%s\n' "$answer"
  case $answer in *"$1"*) ;; *) fail "\"$1\" does not stand in that answer" ;; esac
}

echo 'Starting nutwardd on an empty home with the demo shop.'
build/nutwardd --home "$home" --demo 2>"$home/daemon.log" &
daemon=$!
wait_for 20 'the daemon' build/nutward --home "$home" jobs

# A receiver on a free port of this machine, which gets the shop's secret for it.
port=$(python3 -c 'import socket; s = socket.socket(); s.bind(("127.0.0.1", 0)); print(s.getsockname()[1])')
build/nutward --home "$home" --json "add receiver bench-lamp at http://127.0.0.1:$port/" |
  python3 -c 'import json, sys; print(json.load(sys.stdin)["data"]["secret"])' >"$home/secret"
python3 deploy/receiver.py "$port" "$home/secret" >"$home/received" 2>&1 &
receiver=$!
wait_for 10 'the receiver' grep -q listening "$home/received"

say 'open' 'which jobs are open'
say 'take the' 'which offcut fits slot 3 of job 1'
say 'for slot 5 of job 8' 'and slot 5 of job 8?'
say 'Used the' 'use it'
say 'slot 6 of job 1' 'where would a 51.3 mm piece of medium go'
say 'rder' 'do we order wire'
say 'pressed' 'pressed job 5 25 hours ago'
say 'Due now' 'what is due'
wait_for 10 'the reminder' grep -q 'verified recheck.due' "$home/received"
printf '\nThe receiver got, and verified the signature of:\n'
grep 'verified' "$home/received"
say 'still level' 'rechecked job 5, all level'
say 'Taken back' 'undo'

kill "$daemon"
wait "$daemon" || fail 'the daemon did not end well'
daemon=''
build/nutwardd --home "$home" --verify | grep -q 'All is well' || fail 'what is stored does not check out'
printf '\nAll of it happened, and what is stored checks out.\n'
