#!/usr/bin/env bash
# SPDX-License-Identifier: MIT OR Apache-2.0
# Builds the library for 64-bit Windows with Debian's cross compilers, compiles the C tests and the
# examples against it, and runs them under wine.
#
# Rust's standard library for Windows is built from its source: Debian has the compiler and the source of
# one version, and no compiled library for Windows. A debugging switch of the compiler permits that.
set -u
cd "$(dirname "${BASH_SOURCE[0]}")/../.." || exit 2
source tests/c/tools.sh

out=$PWD/build/windows
target=x86_64-pc-windows-gnu
source_of_std=/usr/lib/rustlib/src/rust/library/std/Cargo.toml
warnings=(-Wall -Wextra -Wpedantic -Werror)
c99=(x86_64-w64-mingw32-gcc -std=c99 -O1 "${warnings[@]}" -Wconversion -Iinclude)
cpp17=(x86_64-w64-mingw32-g++ -std=c++17 -O1 "${warnings[@]}" -Iinclude -static)
examples=(c/feed.c c/tap_hole.c cpp/feed.cpp)
reference=(tests/c/csv.c tests/c/reference*.c)
bad_input=(tests/c/bad_*.c)
# So many checks are counted below: before and after the step that needs wine.
to_build=21
to_run=13

rm -rf "$out"
mkdir -p "$out"

# Nothing can be tried without the compilers.
give_up() {
    skip $((to_build + to_run)) "$1"
    summary windows
    exit
}

build() {
    # Debian's cargo and compiler, whose source this is, also where another Rust comes first on the PATH.
    PATH=/usr/bin:$PATH RUSTC_BOOTSTRAP=1 CARGO_TERM_COLOR=never /usr/bin/cargo rustc --locked --release \
        -Zbuild-std=std,panic_unwind -Zbuild-std-features=panic-unwind --target "$target" \
        --target-dir "${CARGO_TARGET_DIR:-target}/windows" \
        -p threadcalc-ffi --lib --message-format=json-render-diagnostics -- --print native-static-libs \
        >"$out/messages" 2>"$out/log" || { tail -n 40 "$out/log" && return 1; }
    dll=$(grep -oE '"[^"]*/threadcalc\.dll"' "$out/messages" | tail -n 1 | tr -d '"')
    [ -e "$dll" ] && cp "$dll" "$out/threadcalc.dll"
}

# no_more_no_less HEADER: the library shows the functions of the header.
no_more_no_less() {
    diff <(grep -oE 'THREADCALC_CALL threadcalc_\w+' "$1" | cut -d ' ' -f 2 | sort) \
        <(x86_64-w64-mingw32-objdump -p "$out/threadcalc.dll" |
            awk '/\[Ordinal\/Name Pointer\] Table/ { table = 1; next } /^$/ { table = 0 } table { print $NF }' | sort)
}

# asks_for SYMBOL FLAG...: how a compiled example asks for a function.
asks_for() {
    "${c99[@]}" "${@:2}" -c examples/c/feed.c -o "$out/asks.o" && x86_64-w64-mingw32-nm "$out/asks.o" | grep -qw "U $1"
}

# flags KIND: how a program is linked: by cargo's import library, one made of the .def file, or statically.
flags() {
    case $1 in
    dll) echo "$folder/libthreadcalc.dll.a" ;;
    def) echo "$out/libfrom_def.a" ;;
    static) echo "-DTHREADCALC_STATIC $folder/libthreadcalc.a $native_libraries" ;;
    esac
}

# compile KIND NAME SOURCE...
compile() {
    local compiler=("${c99[@]}") more
    case $3 in *.cpp) compiler=("${cpp17[@]}") ;; esac
    read -ra more < <(flags "$1")
    "${compiler[@]}" "${@:3}" "${more[@]}" -o "$out/$2-$1.exe"
}

# needs_library PROGRAM
needs_library() {
    x86_64-w64-mingw32-objdump -p "$1" | grep -q 'DLL Name: threadcalc.dll'
}

start_wine() {
    local server
    if [ -x /usr/lib/wine/wine64 ]; then
        wine=/usr/lib/wine/wine64 server=/usr/lib/wine/wineserver64
    else
        wine=$(command -v wine64 || command -v wine) server=$(command -v wineserver)
    fi
    # Everything of this wine is below build/, and its server ends with this script.
    export WINEPREFIX=$out/wine HOME=$out/home WINEDEBUG=-all
    export WINEDLLOVERRIDES='winemenubuilder.exe=d;mscoree=d;mshtml=d'
    mkdir -p "$HOME"
    # shellcheck disable=SC2064
    trap "'$server' -k" EXIT
    "${c99[@]}" tests/c/windows/has_random.c -o "$out/has_random.exe" || return 1
    "$wine" "$out/has_random.exe" 2>/dev/null && return
    "${c99[@]}" -shared tests/c/windows/random.c -o "$out/bcryptprimitives.dll" -ladvapi32 &&
        "$wine" "$out/has_random.exe" && echo "wine lacks bcryptprimitives.dll: with a stand-in"
}

# same_output EXAMPLE KIND: what it prints here, but for the line ends.
same_output() {
    local name
    name=$(basename "${1%.*}")
    "$wine" "$out/${1//[\/.]/_}-$2.exe" | tr -d '\r' | diff -u "examples/c/$name.expected.txt" -
}

need x86_64-w64-mingw32-gcc gcc-mingw-w64-x86-64-win32 || give_up 'no C compiler for Windows (gcc-mingw-w64-x86-64)'
need x86_64-w64-mingw32-g++ g++-mingw-w64-x86-64-win32 || give_up 'no C++ compiler for Windows (g++-mingw-w64-x86-64)'
need "$source_of_std" rustc-web cargo-web rust-web-src || give_up 'no source of the standard library (rust-web-src)'

count 'the library for Windows' build
[ "$failed" -eq 0 ] || { summary windows && exit; exit 1; }
folder=$(dirname "$dll")
native_libraries=$(sed -n 's/.*native-static-libs: *//p' "$out/log" | tail -n 1)
echo "threadcalc.dll: $(stat -c %s "$dll") bytes; the static library needs $native_libraries"
count 'the library shows the functions of the header' no_more_no_less include/threadcalc.h
grep -v threadcalc_feed_word include/threadcalc.h >"$out/short.h"
refused 'a header with a function less' no_more_no_less "$out/short.h"
count 'the .def file makes an import library' \
    x86_64-w64-mingw32-dlltool -d include/threadcalc.def -D threadcalc.dll -l "$out/libfrom_def.a"
count 'a program asks for the imported function' asks_for __imp_threadcalc_feed
count 'and for the function itself with the static library' asks_for threadcalc_feed -DTHREADCALC_STATIC
count 'the header is C++17' "${cpp17[@]}" -c tests/c/header_cpp17.cpp -o "$out/header.o"
for kind in dll def static; do
    for example in "${examples[@]}"; do
        count "compile $example, $kind" compile "$kind" "${example//[\/.]/_}" "examples/$example"
    done
done
count 'a program asks for the library' needs_library "$out/c_feed_c-def.exe"
refused 'a static program that asks for the library' needs_library "$out/c_feed_c-static.exe"
count 'compile the reference tables' compile dll reference "${reference[@]}"
count 'compile bad input' compile dll bad_input "${bad_input[@]}"
count 'compile the same bits' compile dll same_bits tests/c/same_bits.c

if there wine64 || there wine || need /usr/lib/wine/wine64 wine64; then
    count 'wine starts' start_wine
    for kind in dll def static; do
        for example in "${examples[@]}"; do count "run $example, $kind" same_output "$example" "$kind"; done
    done
    for program in reference bad_input same_bits; do count "run $program" "$wine" "$out/$program-dll.exe"; done
else
    skip "$to_run" 'wine is not installed'
fi
summary windows
