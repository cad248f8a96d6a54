# Completion of nutward and nutwardd for bash: source it, or install it as "nutward" and "nutwardd" where bash-completion
# looks. Names of questions, commands, wires and jobs come from the running daemon; without one there are only options.

# The first column of an answer's table. The conversation of its own leaves alone what "it" means in this shell.
_nutward_names() { # _nutward_names QUESTION [--home DIR ...]
  local question=$1
  shift
  nutward "$@" --quiet --no-color --conversation completion "$question" 2>/dev/null </dev/null | awk 'NR > 2 { print $1 }'
}

_nutward() {
  local word=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD - 1]} first=yes i
  local -a home=()
  COMPREPLY=()
  for ((i = 1; i < COMP_CWORD; ++i)); do
    case ${COMP_WORDS[i]} in
    --home | --http | --token-file) home+=("${COMP_WORDS[i]}" "${COMP_WORDS[++i]/#\~\//$HOME/}") ;;
    --conversation | --key | --picture) ((++i)) ;;
    -*) ;;
    *) first=no ;;
    esac
  done
  case $previous in
  --home) compopt -o dirnames 2>/dev/null; return ;;
  --token-file | --picture) compopt -o default 2>/dev/null; return ;;
  --http | --conversation | --key) return ;;
  esac
  if [[ $word == -* ]]; then
    mapfile -t COMPREPLY < <(compgen -W '--home --http --token-file --conversation --key --picture --csv --json --quiet --no-input --no-color --version -h --help' -- "$word")
    return
  fi
  local question=
  case $first,$previous in
  yes,* | no,help) question=help ;;
  no,job) question=jobs ;;
  no,wire | no,of) question=stock ;;
  esac
  if [[ -n $question ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$(_nutward_names "$question" "${home[@]}")" -- "$word")
  fi
}

_nutwardd() {
  local word=${COMP_WORDS[COMP_CWORD]}
  COMPREPLY=()
  case ${COMP_WORDS[COMP_CWORD - 1]} in
  --home) compopt -o dirnames 2>/dev/null ;;
  --config) compopt -o default 2>/dev/null ;;
  --http) ;;
  *) mapfile -t COMPREPLY < <(compgen -W '--home --config --http --demo --verify --describe --version -h --help' -- "$word") ;;
  esac
}

complete -F _nutward nutward
complete -F _nutwardd nutwardd
