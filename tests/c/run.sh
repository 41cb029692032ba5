#!/usr/bin/env bash
# SPDX-License-Identifier: MIT OR Apache-2.0
# Compiles and runs the C tests: tests/c/run.sh FOLDER, which holds libthreadcalc.so and libthreadcalc.a.
set -u

if [ $# -ne 1 ] || [ ! -e "$1/libthreadcalc.so" ] || [ ! -e "$1/libthreadcalc.a" ]; then
    echo "usage: tests/c/run.sh FOLDER with libthreadcalc.so and libthreadcalc.a" >&2
    exit 2
fi
libraries=$(cd "$1" && pwd) || exit 2
cd "$(dirname "${BASH_SOURCE[0]}")/../.." || exit 2
source tests/c/tools.sh

out=build/c
warnings=(-Wall -Wextra -Wpedantic -Werror)
c99=(gcc -std=c99 -O1 -g "${warnings[@]}" -Wconversion -Iinclude)
system=(-lgcc_s -lutil -lrt -lpthread -lm -ldl)
reference=(tests/c/csv.c tests/c/reference*.c)
bad_input=(tests/c/bad_*.c)
samples=(tests/c/samples.c tests/c/reference_pieces.c tests/c/reference_dialect.c)
expected=(tests/nc/*.expect.json)

rm -rf "$out"
mkdir -p "$out"
# Programs ask for the library by the name it bears, which may differ from its file's.
soname=$(readelf -d "$libraries/libthreadcalc.so" | sed -n 's/.*(SONAME).*\[\(.*\)\].*/\1/p')
ln -s "$libraries/libthreadcalc.so" "$out/${soname:-libthreadcalc.so}"

# Compiles a program against the shared library.
built() {
    local name=$1
    shift
    "${c99[@]}" "$@" -L"$libraries" -Wl,-rpath,"$PWD/$out" -lthreadcalc -lm -o "$out/$name"
}

# Compiles a program against the shared library and runs it.
shared() {
    built "$@" && "$out/$1"
}

# The same against the static library, with the sanitizers.
built_sanitized() {
    local name=$1
    shift
    "${c99[@]}" -fsanitize=address,undefined -fno-sanitize-recover=all "$@" "$libraries/libthreadcalc.a" \
        "${system[@]}" -o "$out/$name"
}

sanitized() {
    built_sanitized "$@" && "$out/$1"
}

# The program of eight threads with ThreadSanitizer, which sees what the C side and the C library's functions touch.
racing() {
    "${c99[@]}" -std=c11 -pthread -fsanitize=thread tests/c/shared.c "$libraries/libthreadcalc.a" "${system[@]}" \
        -o "$out/shared_racing"
}

# Whether ThreadSanitizer runs here: some kernels lay memory out in a way it does not know, unless told not to.
thread_sanitizer() {
    echo 'int main(void) { return 0; }' | gcc -fsanitize=thread -x c - -o "$out/empty_racing" 2>/dev/null || return 1
    "$out/empty_racing" 2>/dev/null && return 0
    fixed=(setarch "$(uname -m)" -R)
    "${fixed[@]}" "$out/empty_racing" 2>/dev/null
}

# memcheck [OPTIONS] PROGRAM: valgrind over everything the program does, the library's part included.
memcheck() {
    valgrind -q --error-exitcode=99 "$@"
}

# windows_words FLAGS WORD: how often a word stands in the header as Windows would see it.
windows_words() {
    gcc -E -D_WIN32 '-D__declspec(word)=declspec_word' -D__cdecl=cdecl_word ${1:+"$1"} include/threadcalc.h | grep -cw "$2"
}

# The header's macros for Windows, seen from here: every function has both, or one with the static library.
header_windows() {
    local functions
    functions=$(grep -c '^THREADCALC_API .*THREADCALC_CALL threadcalc_' include/threadcalc.h)
    [ "$functions" -gt 40 ] && [ "$(windows_words '' declspec_word)" = "$functions" ] &&
        [ "$(windows_words '' cdecl_word)" = "$functions" ] &&
        [ "$(windows_words -DTHREADCALC_STATIC declspec_word)" = 0 ] &&
        [ "$(windows_words -DTHREADCALC_STATIC cdecl_word)" = "$functions" ]
}

# instructions NUMBER BYTES: how many the program of one piece over and over takes.
instructions() {
    valgrind --tool=callgrind --callgrind-out-file=/dev/null "$out/linear" "$1" "$2" 2>&1 |
        sed -n 's/.*Collected : //p'
}

# Twice the bytes are twice the work, for any piece: instructions are counted, not time.
linear() {
    local number none one two slow=0
    for ((number = 0; number < $("$out/linear"); number++)); do
        none=$(instructions "$number" 0) one=$(instructions "$number" 30000) two=$(instructions "$number" 60000)
        if [ -z "$two" ] || [ $(((two - none) * 10)) -gt $(((one - none) * 22)) ]; then
            echo "piece $number: $((one - none)) instructions for 30000 bytes, $((two - none)) for 60000"
            slow=1
        fi
    done
    return "$slow"
}

for standard in 99 11 17; do
    count "header_c$standard" "${c99[@]}" -std=c$standard -c tests/c/header_c99.c -o "$out/header_c$standard.o"
done
count header_windows header_windows
count header_cpp17 g++ -std=c++17 "${warnings[@]}" -Iinclude -c tests/c/header_cpp17.cpp -o "$out/header_cpp17.o"
count reference shared reference "${reference[@]}"
count bad_input shared bad_input "${bad_input[@]}"
count same_bits shared same_bits tests/c/same_bits.c
count shared shared shared -D_POSIX_C_SOURCE=200809L -std=c11 -pthread tests/c/shared.c
count "bad_input with sanitizers" sanitized bad_input_sanitized "${bad_input[@]}"
count "reference with sanitizers" sanitized reference_sanitized "${reference[@]}"
count "shared with sanitizers" sanitized shared_sanitized -std=c11 -pthread tests/c/shared.c
count "same_bits with sanitizers" sanitized same_bits_sanitized tests/c/same_bits.c
count "no fault planted, with sanitizers" sanitized planted_sanitized tests/c/planted.c
for fault in leak overflow undefined; do
    refused "a planted $fault, with sanitizers," "$out/planted_sanitized" "$fault"
done

# What is expected of the samples is read by a library that knows nothing of this one.
if need /usr/include/cjson/cJSON.h libcjson-dev; then
    count "samples, built" built samples "${samples[@]}" -lcjson
    count samples "$out/samples" "${expected[@]}"
    count "samples with sanitizers, built" built_sanitized samples_sanitized "${samples[@]}" -lcjson
    count "samples with sanitizers" "$out/samples_sanitized" "${expected[@]}"
else
    skip 4 'samples, which need libcjson-dev'
fi

fixed=()
if thread_sanitizer; then
    count "shared, built with ThreadSanitizer" racing
    count "shared with ThreadSanitizer" "${fixed[@]}" "$out/shared_racing" 100
    refused "a planted race, with ThreadSanitizer," "${fixed[@]}" "$out/shared_racing" 100 race
else
    skip 3 'shared with ThreadSanitizer, which does not run here'
fi

if command -v valgrind >/dev/null; then
    count "bad_input under valgrind" memcheck --leak-check=full "$out/bad_input"
    count "reference under valgrind" memcheck --leak-check=full "$out/reference"
    if [ -e "$out/samples" ]; then
        count "samples under valgrind" memcheck --leak-check=full "$out/samples" "${expected[@]}"
    else
        skip 1 'samples under valgrind, which were not built'
    fi
    count "planted, built for valgrind" shared planted tests/c/planted.c
    count "no fault planted, under valgrind" memcheck --leak-check=full "$out/planted"
    # The overrun is a write of the library's own: no sanitizer is built into that.
    for fault in leak overflow overrun; do
        refused "a planted $fault, under valgrind," memcheck --leak-check=full "$out/planted" "$fault"
    done
    count "linear, built" built linear tests/c/linear.c
    count "work that grows as the bytes do" linear
    count "shared under helgrind" memcheck --tool=helgrind "$out/shared" 10
    refused "a planted race, under helgrind," memcheck --tool=helgrind "$out/shared" 10 race
else
    skip 12 'bad_input, reference, samples, planted faults, linear and shared under valgrind, which is not installed'
fi

summary c
