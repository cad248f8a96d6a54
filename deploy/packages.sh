# What Nutward needs from apt, in three lists, and the one function that installs them. Sourced by try.sh and check.sh;
# it changes nothing by itself.
#
# An entry is PACKAGE, or COMMAND:PACKAGE where having the command is enough (it may have come from elsewhere). Where
# package names differ between releases of Debian the alternatives stand with a bar between; the first that is
# installed counts, else the first that apt knows is installed.

# The two programs, and the demo with its receiver (python3). Boost is named with its version since the unversioned
# package of Debian 12 is 1.74, which is too old and conflicts with 1.81. Of libedit the build needs the header; libedit2
# is what nutward loads for a conversation, and does without where it is missing.
packages_build='
  g++:g++ cmake:cmake ninja:ninja-build ld.lld:lld python3:python3
  libboost1.81-dev|libboost1.83-dev|libboost1.88-dev
  libsqlitecpp-dev libsqlite3-dev libssl-dev libcurl4-openssl-dev
  nlohmann-json3-dev libfmt-dev libhowardhinnant-date-dev libtomlplusplus-dev libcli11-dev libutf8proc-dev tzdata
  libedit-dev libedit2
'
# The tests: units is the oracle for conversions, GNU date on a clock that faketime stops the one for days as they are
# said, node and npm bring the verifiers of tests/support/package.json, strace counts wake-ups and makes disks fail, curl
# is what the client is timed against, git lists the files that the meta tests read, mandoc reads the manual pages as
# their readers' systems will, glpsol plans cuts without knowing that they are cuts,
# pyxdameraulevenshtein counts typing mistakes.
packages_tests='
  catch2 units:units faketime:faketime node:nodejs npm:npm strace:strace curl:curl git:git mandoc:mandoc
  glpsol:glpk-utils python3-pyxdameraulevenshtein
'
# check.sh --full on top of that: zsh and fish try their completions (bash's are tried always).
packages_full='
  clang-format-14:clang-format-14|clang-format clang-tidy-14:clang-tidy-14|clang-tidy zsh:zsh fish:fish
'

package_installed() {
  case $(dpkg-query -W -f '${Status}' "$1" 2>/dev/null) in
  'install ok installed') return 0 ;;
  *) return 1 ;;
  esac
}

# True if the entry's command or one of its alternatives is there.
entry_satisfied() {
  case $1 in
  *:*) if command -v "${1%%:*}" >/dev/null 2>&1; then return 0; fi ;;
  esac
  for candidate in $(printf '%s' "${1#*:}" | tr '|' ' '); do
    if package_installed "$candidate"; then return 0; fi
  done
  return 1
}

# Prints the first alternative that apt can install, or the first one if it knows none (apt then says so itself).
entry_package() {
  for candidate in $(printf '%s' "${1#*:}" | tr '|' ' '); do
    case $(apt-cache policy "$candidate" 2>/dev/null | sed -n 's/^ *Candidate: //p') in
    '' | '(none)') ;;
    *) printf '%s\n' "$candidate"; return 0 ;;
    esac
  done
  first=${1#*:}
  printf '%s\n' "${first%%|*}"
}

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# need_packages WHAT-FOR ENTRY...: installs what is missing, saying what; silent and offline if nothing is.
need_packages() {
  purpose=$1
  shift
  missing=
  for entry in "$@"; do
    if ! entry_satisfied "$entry"; then missing="$missing $entry"; fi
  done
  if [ -z "$missing" ]; then return 0; fi
  if ! command -v apt-get >/dev/null 2>&1; then
    echo "Missing $purpose:$missing. There is no apt-get here; install these by hand (the names are Debian's)." >&2
    return 1
  fi
  if [ "$(id -u)" -ne 0 ] && ! command -v sudo >/dev/null 2>&1; then
    chosen=
    for entry in $missing; do chosen="$chosen $(entry_package "$entry")"; done
    echo "Missing $purpose, and installing needs root or sudo. As root:" >&2
    echo "apt-get update && apt-get install --no-install-recommends$chosen" >&2
    return 1
  fi
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=120 update >/dev/null ||
    echo 'apt-get update failed; going on with what apt knew before.' >&2
  chosen= # only now: before the update apt may know nothing
  for entry in $missing; do chosen="$chosen $(entry_package "$entry")"; done
  echo "Installing $purpose:$chosen"
  # The log is shown only if apt fails: hundreds of lines about unpacking help nobody.
  log=$(mktemp)
  # shellcheck disable=SC2086 # a list of words on purpose
  if as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=120 \
    install --no-install-recommends $chosen </dev/null >"$log" 2>&1; then
    rm -f "$log"
  else
    tail -n 30 "$log" >&2
    rm -f "$log"
    return 1
  fi
}
