#!/bin/sh
# Plays the demo with the programs in build/.
set -eu
cd "$(dirname "$0")/.."
build/nutwardd --version
build/nutward --version
