# shellcheck shell=bash
# A virtual screen with a window manager, for the scripts that look at the real window. Read by "source"; needs Xvfb,
# openbox and xdotool. The script that reads it ends the processes in "started".
started=()

# FOLDER for its log. Sets DISPLAY.
start_screen() {
    # the screen takes the first number that is free and writes it
    exec 3<>"$1/display"
    Xvfb -displayfd 3 -screen 0 1366x768x24 >"$1/screen.log" 2>&1 &
    started+=($!)
    for _ in $(seq 100); do [ -s "$1/display" ] && break; sleep 0.1; done
    [ -s "$1/display" ] || { echo "no virtual screen:" >&2; cat "$1/screen.log" >&2; exit 1; }
    DISPLAY=:$(cat "$1/display")
    export DISPLAY
    openbox >/dev/null 2>&1 &
    started+=($!)
    # a window that comes before the window manager has no keys of it
    for _ in $(seq 100); do xdotool get_desktop >/dev/null 2>&1 && return; sleep 0.1; done
    echo "no window manager" >&2
    exit 1
}

end_started() {
    for one in "${started[@]}"; do kill "$one" 2>/dev/null || true; done
}
