# SPDX-License-Identifier: MIT OR Apache-2.0
# For the runners of this folder, which source it: counting, and tools that a bare machine may lack.
# shellcheck shell=bash

passed=0
failed=0
skipped=0

# count NAME COMMAND...: one check, passed if the command succeeds.
count() {
    local name=$1
    shift
    if "$@"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "FAILED: $name"
    fi
}

# refused NAME COMMAND...: one check, passed if the command fails; its output is not shown.
refused() {
    local name=$1
    shift
    if "$@" >/dev/null 2>&1; then
        failed=$((failed + 1))
        echo "FAILED: $name was accepted"
    else
        passed=$((passed + 1))
    fi
}

# skip COUNT REASON: checks that cannot run on this machine.
skip() {
    skipped=$((skipped + $1))
    echo "skipped: $1 checks: $2"
}

# need FILE PACKAGE...: whether a program or a file is there, after an attempt to install Debian's packages.
need() {
    there "$1" && return 0
    [ "$(id -u)" -eq 0 ] && command -v apt-get >/dev/null || return 1
    debian "${@:2}" || { apt-get update -qq && debian "${@:2}"; }
    there "$1"
}

there() {
    command -v "$1" >/dev/null || [ -e "$1" ]
}

debian() {
    DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300 install -y -qq --no-install-recommends \
        "$@" >/dev/null 2>&1
}

# summary NAME: the last line, which tests/run reads.
summary() {
    echo "$1: $passed passed, $failed failed, $skipped skipped"
    [ "$failed" -eq 0 ]
}
