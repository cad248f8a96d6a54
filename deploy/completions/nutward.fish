# Completion of nutward and nutwardd for fish: put it into a folder of $fish_complete_path as nutward.fish. Names of
# questions, commands, wires and jobs come from the running daemon; without one there are only options.

# The first column of an answer's table. The conversation of its own leaves alone what "it" means in this shell.
function __nutward_names --argument-names question
    set -l typed (commandline -opc)
    set -l home
    for i in (seq 2 (count $typed))
        if contains -- "$typed[$i]" --home --http --token-file; and set -q typed[(math $i + 1)]
            set -a home $typed[$i] (string replace -r '^~/' "$HOME/" -- $typed[(math $i + 1)])
        end
    end
    nutward $home --quiet --no-color --conversation completion $question 2>/dev/null </dev/null | awk 'NR > 2 { print $1 }'
end

# The words of the sentence so far, without options and what belongs to them.
function __nutward_said
    set -l typed (commandline -opc)
    set -l skip 1
    for word in $typed
        if test $skip = 1
            set skip 0
        else if contains -- $word --home --http --token-file --conversation --key --picture
            set skip 1
        else if not string match -q -- '-*' $word
            echo $word
        end
    end
end

function __nutward_words
    set -l said (__nutward_said)
    if test (count $said) -eq 0
        __nutward_names help
        return
    end
    switch $said[-1]
        case help
            __nutward_names help
        case job
            __nutward_names jobs
        case wire of
            __nutward_names stock
    end
end

complete -c nutward -f -a '(__nutward_words)'
complete -c nutward -l home -x -a '(__fish_complete_directories)' -d 'The shop\'s home'
complete -c nutward -l http -x -d 'Over TCP instead'
complete -c nutward -l token-file -r -F -d 'With the token in this file'
complete -c nutward -l conversation -x -d 'Whose "it" is meant'
complete -c nutward -l key -x -d 'Say it at most once'
complete -c nutward -l picture -r -F -d 'Draw the answer there'
complete -c nutward -l csv -d 'Its list as CSV'
complete -c nutward -l json -d 'The answer as JSON'
complete -c nutward -l quiet -d 'The answer alone'
complete -c nutward -l no-input -d 'Never read standard input'
complete -c nutward -l no-color -d 'Plain text'
complete -c nutward -l version -d 'Print the version'
complete -c nutward -s h -d 'Print short help'
complete -c nutward -l help -d 'Print help'

complete -c nutwardd -f
complete -c nutwardd -l home -x -a '(__fish_complete_directories)' -d 'Folder of the shop'
complete -c nutwardd -l config -r -F -d 'Configuration instead of nutward.toml in the home'
complete -c nutwardd -l http -x -d 'Listen at a loopback address too, for who bears a token'
complete -c nutwardd -l demo -d 'Load the demo shop into an empty home first'
complete -c nutwardd -l verify -d 'Check all that is stored, and end'
complete -c nutwardd -l describe -d 'Print the HTTP interface as OpenAPI 3.1, and end'
complete -c nutwardd -l version -d 'Print the version'
complete -c nutwardd -s h -l help -d 'Print help'
