#!/bin/sh
# Checks the whole project. May be run again, and from any directory; installs what it needs.
#
#   check.sh            builds everything into build/ and runs every test            (about 8 min on 2 cores)
#   check.sh --full     also: formatting, the tests under ASan and UBSan, the threaded ones under TSan, clang-tidy
#                       on what changed since the commit NUTWARD_BASE (HEAD~1 if unset), for NUTWARD_TIDY_SECONDS
#                       (240) at most                          (about 28 min on 2 cores; it should be 20)
#   check.sh --release  also: the tests that take hours (CTest label "release"), clang-tidy on everything, the figures
#                       of tests/bench at their full sizes
#
# The first step that fails ends it with that step's name. CTest labels: "source" reads only the source tree,
# "bench" measures time; neither is repeated under sanitizers. "release" takes hours.
set -eu
cd "$(dirname "$0")/.."
. deploy/packages.sh

full=no release=no
case ${1-} in
'') ;;
--full) full=yes ;;
--release) full=yes release=yes ;;
*) echo "check.sh knows --full and --release, not \"$1\"." >&2; exit 2 ;;
esac
jobs=$(nproc)
threaded='store shop serve remind' # the test programs that start threads
tidy_seconds=${NUTWARD_TIDY_SECONDS:-240}
began=$(date +%s)

# step NAME COMMAND...: runs the command, prints the seconds, stops everything if it fails.
step() {
  name=$1
  shift
  echo "== $name"
  from=$(date +%s)
  status=0
  "$@" || status=$?
  if [ "$status" -ne 0 ]; then
    echo "check: \"$name\" failed after $(($(date +%s) - from)) s (exit $status)." >&2
    exit 1
  fi
  echo "== $name: $(($(date +%s) - from)) s"
}

install_packages() {
  # shellcheck disable=SC2086 # lists of words on purpose
  need_packages 'for the build' $packages_build && need_packages 'for the tests' $packages_tests || return 1
  if [ "$full" = no ]; then return 0; fi
  # shellcheck disable=SC2086
  need_packages 'for the full check' $packages_full
}

# What this run could not look at, said where it happens and once more at the end.
unchecked=
not_checked() {
  echo "NOT CHECKED: $1" >&2
  unchecked="$unchecked
  $1"
}

# What other people wrote to verify webhooks that we sign, the description of our HTTP interface, our answers by that
# description, and days and times as they are said. A machine that cannot reach the registry still gets everything else
# checked, except before a release.
verifiers=OFF
verifiers_wanted() { sed -n 's/^ *"\([^"]*\)": "\([0-9.]*\)",*$/\1@\2/p' tests/support/package.json; }

verifiers_installed() {
  for wanted in $(verifiers_wanted); do
    grep -qF "\"version\": \"${wanted##*@}\"" "build/npm/node_modules/${wanted%@*}/package.json" 2>/dev/null || return 1
  done
}

install_verifiers() {
  mkdir -p build/npm
  # shellcheck disable=SC2046 # a list of words on purpose
  if verifiers_installed ||
    npm install --no-save --no-audit --no-fund --loglevel=error --fetch-retries=1 --fetch-retry-mintimeout=2000 \
      --prefix build/npm $(verifiers_wanted); then
    verifiers=ON
    return 0
  fi
  not_checked "by $(verifiers_wanted | paste -sd ' ' -): our webhook signatures, the description of the HTTP interface and the answers by it, days and times as they are said; npm could not fetch these (see its error above; a proxy or a private certificate are its settings https-proxy and cafile)"
  [ "$release" = no ]
}

configure() { # configure FOLDER OPTION...
  folder=$1
  shift
  cmake -G Ninja -S . -B "$folder" --log-level=WARNING -DNUTWARD_TESTS=ON -DNUTWARD_PRECOMPILE=ON "$@"
}

build() { configure build "-DNUTWARD_NPM=$verifiers" && cmake --build build --parallel "$jobs"; }

run_tests() { # run_tests FOLDER OPTION...
  folder=$1
  shift
  ctest --test-dir "$folder" --no-tests=error --output-on-failure -j "$jobs" "$@"
}

formatting() {
  formatter=$(command -v clang-format-14 || command -v clang-format)
  case $("$formatter" --version) in
  *'version 14.'*) ;;
  *) not_checked "formatting, which is that of clang-format 14; here is $("$formatter" --version)"; return 0 ;;
  esac
  unformatted=$(git ls-files --cached --others --exclude-standard '*.cpp' '*.hpp' | while read -r file; do
    if [ -f "$file" ] && ! "$formatter" --dry-run -Werror "$file" 2>/dev/null; then echo "$file"; fi
  done)
  if [ -z "$unformatted" ]; then return 0; fi
  echo "Not as .clang-format wants it (to mend: $(basename "$formatter") -i FILE):" >&2
  echo "$unformatted" >&2
  return 1
}

# -O1 where there is -O2, and -Og as ever: a sanitizer build at -O2 takes half as long again to compile. Asking each
# pointer whether it is null or ill aligned takes another third of it: ASan reports the first all the same once it is
# followed, and nothing here casts to a type that is aligned more strictly; before a release they are asked.
build_address() {
  left_out=null,alignment
  if [ "$release" = yes ]; then left_out=; fi
  configure build-asan -DNUTWARD_SANITIZE=address,undefined "-DNUTWARD_SANITIZE_NOT=$left_out" \
    -DCMAKE_CXX_FLAGS_RELEASE=-O1 &&
    cmake --build build-asan --parallel "$jobs"
}

# The sanitizers look at the code, not at the disk: what their tests write goes into memory where there is room, and no
# test waits for a sync. The plain build's tests use the disk.
in_memory() {
  room=$(df -Pk /dev/shm 2>/dev/null | awk 'NR == 2 { print $4 }')
  if [ "${room:-0}" -lt 2000000 ] || ! aside=$(mktemp -d /dev/shm/nutward-XXXXXX 2>/dev/null); then
    "$@"
    return
  fi
  status=0
  TMPDIR=$aside "$@" || status=$?
  rm -rf "$aside"
  return "$status"
}

threaded_here() { for part in $threaded; do if [ -f "tests/$part/tests.cmake" ]; then echo "$part"; fi; done; }

build_thread() {
  configure build-tsan -DNUTWARD_SANITIZE=thread -DCMAKE_CXX_FLAGS_RELEASE=-O1 || return 1
  # shellcheck disable=SC2046
  cmake --build build-tsan --parallel "$jobs" --target $(threaded_here | sed 's/^/test_/')
}

test_thread() {
  # TSan of g++ 12 cannot place its shadow memory under the wider address randomisation of recent kernels.
  fixed=
  if setarch -R true 2>/dev/null; then fixed='setarch -R'; fi
  # shellcheck disable=SC2086
  $fixed ctest --test-dir build-tsan --no-tests=error --output-on-failure -j "$jobs" \
    -R "^($(threaded_here | paste -sd '|' -))\$"
}

# The .cpp files of daemon/ and cli/ that changed, or that include a header that did; before a release all of them.
# Without a parent (a first commit, a shallow clone) everything counts as changed.
changed_sources() {
  nothing=$(git hash-object -t tree /dev/null)
  base=${NUTWARD_BASE:-$(git rev-parse -q --verify HEAD~1 || echo "$nothing")}
  if [ "$release" = yes ]; then base=$nothing; fi
  changed=$(git diff --name-only "$base" -- daemon cli) || return 1
  changed="$changed $(git ls-files --others --exclude-standard daemon cli)"
  for file in $changed; do
    case $file in
    *.cpp) echo "$file" ;;
    *.hpp) git grep --untracked -l -F "\"${file#*/}\"" -- 'daemon/*.cpp' 'cli/*.cpp' || true ;;
    esac
  done | sort -u | while read -r file; do if [ -f "$file" ]; then echo "$file"; fi; done
}

tidy() {
  files=$(changed_sources) || { echo "git knows no commit ${NUTWARD_BASE-} to compare with." >&2; return 1; }
  if [ -z "$files" ]; then echo 'Nothing in daemon/ or cli/ changed.'; return 0; fi
  echo "$files" | wc -l | sed 's/ *$/ files/'
  deadline=$(($(date +%s) + tidy_seconds))
  if [ "$release" = yes ]; then deadline=9999999999; fi
  checker=$(command -v clang-tidy-14 || command -v clang-tidy)
  rm -f build/tidy-late
  # clang cannot read headers that g++ has precompiled: it goes by a configuration without.
  configure build-tidy -DNUTWARD_PRECOMPILE=OFF >build/tidy-configure.log 2>&1 || { cat build/tidy-configure.log >&2; return 1; }
  # One process a file, so that what the time did not suffice for is named rather than passed over.
  echo "$files" | xargs -P "$jobs" -n 1 sh -c '
    if [ "$(date +%s)" -ge "$2" ]; then echo "$3" >>build/tidy-late; exit 0; fi
    said=$("$1" -p build-tidy --quiet "$3" 2>&1) || {
      printf "%s\n" "$said" | grep -vE "^[0-9]+ warnings?( and [0-9]+ errors?)? generated|treated as error"
      exit 1
    }' sh "$checker" "$deadline" || return 1
  if [ -f build/tidy-late ]; then
    not_checked "by clang-tidy, $tidy_seconds s being over: $(sort build/tidy-late | paste -sd ' ' -)"
  fi
}

step 'packages' install_packages
step 'verifiers from npm' install_verifiers
if [ "$full" = yes ]; then step 'formatting' formatting; fi
step 'build' build
step 'tests' run_tests build -LE '^release$'
if [ "$full" = yes ]; then
  step 'clang-tidy' tidy
  step 'build with ASan and UBSan' build_address
  step 'tests with ASan and UBSan' in_memory run_tests build-asan -LE '^(release|source|bench)$'
  if [ -n "$(threaded_here)" ]; then
    step 'build with TSan' build_thread
    step 'tests with TSan' in_memory test_thread
  fi
fi
if [ "$release" = yes ]; then step 'tests that take hours' run_tests build -L '^release$'; fi
if [ "$release" = yes ]; then step 'figures' sh tests/bench/figures.sh build; fi
if [ -n "$unchecked" ]; then echo "NOT CHECKED in this run:$unchecked"; fi
echo "check: every step passed, $(($(date +%s) - began)) s in all."
