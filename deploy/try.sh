#!/bin/sh
# Builds Nutward and shows it at work: installs what the build needs, builds only the two programs into build/, then
# plays the demo shop. Exits non-zero if any of it did not happen. May be run again, and from any directory.
set -eu
cd "$(dirname "$0")/.."
. deploy/packages.sh

# shellcheck disable=SC2086 # a list of words on purpose
need_packages 'for the build' $packages_build

start=$(date +%s)
cmake -G Ninja -S . -B build -DNUTWARD_TESTS=OFF --log-level=WARNING
cmake --build build --parallel "$(nproc)" --target nutwardd nutward
echo "Built build/nutwardd and build/nutward in $(($(date +%s) - start)) s."

exec sh deploy/demo.sh
