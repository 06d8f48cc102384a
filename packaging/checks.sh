# shellcheck shell=bash
# What the tests of packages have in common: one line a check, and windows. Read by "source".
# shellcheck source=packaging/screen.sh
source packaging/screen.sh
# shellcheck disable=SC2034 # the scripts that read this end with it
failed=0
work=$(mktemp -d)

# What is checked, and the command that must succeed.
check() {
    local what=$1
    shift
    if "$@" >"$work/check.log" 2>&1; then
        echo "ok      $what"
    else
        echo "FAILED  $what"
        head -n 20 "$work/check.log" | sed 's/^/        /'
        # shellcheck disable=SC2034
        failed=1
    fi
}

refuse() { ! "$@"; }
prints() { "${@:2}" 2>&1 | grep -F -- "$1"; }
silent_on_stderr() { "$@" 2>&1 >/dev/null | refuse grep .; }

# Whether Evenfall's window comes; a picture of it into the file named; then it is closed by its own key.
window_comes() {
    local window
    # a search fails too when a window goes meanwhile
    for _ in $(seq 300); do
        window=$(xdotool search --onlyvisible --name Evenfall 2>/dev/null | head -n 1) || true
        [ -z "$window" ] || break
        sleep 0.2
    done
    [ -n "$window" ] || { echo "no window came"; return 1; }
    timeout 20 xdotool windowactivate --sync "$window"
    # the first picture of the window comes after the window
    sleep 3
    import -window "$window" "$1"
    xdotool key alt+F4
    for _ in $(seq 150); do
        xdotool getwindowname "$window" >/dev/null 2>&1 || return 0
        sleep 0.1
    done
    echo "the window did not close"
    return 1
}
