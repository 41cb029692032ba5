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

rm -rf "$out"
mkdir -p "$out"
# Programs ask for the library by the name it bears, which may differ from its file's.
soname=$(readelf -d "$libraries/libthreadcalc.so" | sed -n 's/.*(SONAME).*\[\(.*\)\].*/\1/p')
ln -s "$libraries/libthreadcalc.so" "$out/${soname:-libthreadcalc.so}"

# Compiles a program against the shared library and runs it.
shared() {
    local name=$1
    shift
    "${c99[@]}" "$@" -L"$libraries" -Wl,-rpath,"$PWD/$out" -lthreadcalc -lm -o "$out/$name" && "$out/$name"
}

# The same against the static library, with the sanitizers.
sanitized() {
    local name=$1
    shift
    "${c99[@]}" -fsanitize=address,undefined -fno-sanitize-recover=all "$@" "$libraries/libthreadcalc.a" \
        "${system[@]}" -o "$out/$name" && "$out/$name"
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

for standard in 99 11 17; do
    count "header_c$standard" "${c99[@]}" -std=c$standard -c tests/c/header_c99.c -o "$out/header_c$standard.o"
done
count header_windows header_windows
count header_cpp17 g++ -std=c++17 "${warnings[@]}" -Iinclude -c tests/c/header_cpp17.cpp -o "$out/header_cpp17.o"
count reference shared reference "${reference[@]}"
count bad_input shared bad_input "${bad_input[@]}"
count same_bits shared same_bits tests/c/same_bits.c
count "bad_input with sanitizers" sanitized bad_input_sanitized "${bad_input[@]}"
count "reference with sanitizers" sanitized reference_sanitized "${reference[@]}"
if command -v valgrind >/dev/null; then
    count "bad_input under valgrind" valgrind -q --leak-check=full --error-exitcode=1 "$out/bad_input"
else
    skip 1 'bad_input under valgrind, which is not installed'
fi

summary c
