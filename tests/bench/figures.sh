#!/bin/sh
# All figures at their full sizes: figures.sh BUILD-FOLDER. Takes about ten minutes on an otherwise idle machine.
set -eu
build=$1
here=$(dirname "$0")
"$build/tests/bench_fit" full
"$build/tests/bench_shift" full
"$build/tests/bench_press" full
"$build/tests/bench_level" full
"$build/tests/bench_board" full
"$build/tests/bench_plans" full
"$build/tests/bench_agenda_answers" full
"$build/tests/bench_supply" full
"$build/tests/bench_sentence" full
"$build/tests/bench_process" "$build/nutwardd" "$build/nutward" "$(command -v curl)" full
python3 -B "$here/daemon_bench.py" "$build/nutwardd" full
python3 -B "$here/door_bench.py" "$build/nutwardd" full
"$build/tests/bench_cuts" full
"$build/tests/bench_agenda" full hold
python3 -B "$here/journal_bench.py" "$build/nutwardd" "$build/tests/bench_journal" full
