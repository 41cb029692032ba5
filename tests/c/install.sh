#!/usr/bin/env bash
# SPDX-License-Identifier: MIT OR Apache-2.0
# Installs the C library below build/, and builds the C and C++ examples against the installed files: by
# pkg-config and by CMake, shared and static. Then moves the tree, and uninstalls.
set -u
cd "$(dirname "${BASH_SOURCE[0]}")/../.." || exit 2
source tests/c/tools.sh

install=threadcalc-ffi/install/install.sh
out=$PWD/build/install
first=$out/first
# The tree is used from where it was moved to; on Debian its libdir has two parts.
moved=$out/moved
libdir=lib/$(gcc -print-multiarch)
libdir=${libdir%/}
warnings=(-Wall -Wextra -Wpedantic -Werror)
sources=(c/feed.c c/tap_hole.c cpp/feed.cpp)
rm -rf "$out"
mkdir -p "$out"

# installs ARGUMENT...
installs() {
    "$install" "$@" >"$out/log" 2>&1 || { cat "$out/log" && return 1; }
}

# same_output SOURCE PROGRAM: the C++ example prints what the C example of the same name prints.
same_output() {
    local name
    name=$(basename "${1%.*}")
    "$2" | diff -u "examples/c/$name.expected.txt" -
}

# needs_library PROGRAM: whether it asks for the shared library, by the name with the ABI's number.
needs_library() {
    readelf -d "$1" | grep -q "NEEDED.*\[$soname\]"
}

# built SOURCE KIND PROGRAM: the program runs, and is linked the way it was meant to be.
built() {
    same_output "$1" "$3" || return 1
    if [ "$2" = shared ]; then needs_library "$3"; else ! needs_library "$3"; fi
}

# compile SOURCE PROGRAM FLAG...; with -nodefaultlibs, a C program has the libraries of the flags only.
compile() {
    local source=examples/$1 program=$2 compiler
    shift 2
    compiler=(gcc -std=c99)
    case $source in *.cpp) compiler=(g++ -std=c++17) ;; esac
    "${compiler[@]}" "${warnings[@]}" "$source" "$@" -o "$program"
}

# with_pkg_config SOURCE KIND
with_pkg_config() {
    local program=$out/pkg-config-${1//\//-}-$2 flags
    if [ "$2" = shared ]; then
        read -ra flags < <(pkg-config --cflags --libs threadcalc)
        compile "$1" "$program" "${flags[@]}" "-Wl,-rpath,$(pkg-config --variable=libdir threadcalc)"
    else
        read -ra flags < <(pkg-config --cflags --static --libs threadcalc)
        case $1 in *.c) flags+=(-nodefaultlibs) ;; esac
        compile "$1" "$program" "${flags[@]/#-lthreadcalc/-l:libthreadcalc.a}"
    fi && built "$1" "$2" "$program"
}

# configure PREFIX VERSION FOLDER
configure() {
    cmake -S tests/c/consumer -B "$3" "-DCMAKE_PREFIX_PATH=$1" "-DVERSION=$2" "-DROOT=$PWD/examples" \
        >"$out/cmake.log" 2>&1
}

cmake_builds() {
    configure "$moved" "$version" "$out/cmake" && cmake --build "$out/cmake" >"$out/cmake.log" 2>&1 ||
        { cat "$out/cmake.log" && return 1; }
}

# The names that a header declares, and those that a library shows.
declared() {
    grep -oE 'THREADCALC_CALL threadcalc_\w+' "$1" | cut -d ' ' -f 2 | sort
}
shown() {
    nm "${@:2}" --defined-only "$1" | awk 'NF == 3 { print $3 }' | sort
}

# no_more_no_less HEADER LIBRARY NM_OPTION
no_more_no_less() {
    diff <(declared "$1") <(shown "$2" "$3")
}

neighbour() {
    local runtime
    read -ra runtime < <(pkg-config --static --libs-only-l threadcalc)
    rustc --edition 2024 --crate-type staticlib -O tests/c/consumer/neighbour.rs -o "$out/libneighbour.a" &&
        gcc -std=c99 "${warnings[@]}" tests/c/consumer/neighbour.c "-I$moved/include" "$libraries/libthreadcalc.a" \
            "$out/libneighbour.a" "${runtime[@]:1}" -o "$out/neighbour" && "$out/neighbour"
}

soname_is_that_of_the_abi() {
    gcc -std=c99 "${warnings[@]}" tests/c/consumer/soname.c "-I$moved/include" "$libraries/libthreadcalc.so" \
        "-Wl,-rpath,$libraries" -o "$out/soname" && [ "$("$out/soname")" = "$soname" ] &&
        [ -L "$libraries/$soname" ] && [ "$(readlink "$libraries/libthreadcalc.so")" = "$soname" ]
}

# Files with the path of the place they were built or installed in would not work elsewhere.
names_no_place() {
    ! grep -rlE "$out|/usr/local" "$moved/include" "$libraries/pkgconfig" "$libraries/cmake" "$moved/share"
}

# at_most BYTES FILE
at_most() {
    local size
    size=$(stat -c %s "$2")
    echo "$(basename "$2"): $size bytes"
    [ "$size" -le "$1" ]
}

count 'install' installs --prefix "$first" --libdir "$libdir"
count 'install again over the first' installs "--prefix=$first" --libdir "$first/$libdir"
mv "$first" "$moved"
libraries=$moved/$libdir
soname=$(readelf -d "$libraries/libthreadcalc.so" | sed -n 's/.*(SONAME).*\[\(.*\)\].*/\1/p')
version=$(sed -n 's/^version = "\(.*\)"/\1/p' Cargo.toml)
minor=${version%.*}
export PKG_CONFIG_PATH=$libraries/pkgconfig

count 'SONAME is that of the ABI, with its links' soname_is_that_of_the_abi
count 'shared library shows the functions of the header' \
    no_more_no_less include/threadcalc.h "$libraries/libthreadcalc.so" --dynamic
count 'static library shows the functions of the header' \
    no_more_no_less include/threadcalc.h "$libraries/libthreadcalc.a" --extern-only
grep -v threadcalc_feed_word include/threadcalc.h >"$out/short.h"
refused 'a header with a function less (shared)' \
    no_more_no_less "$out/short.h" "$libraries/libthreadcalc.so" --dynamic
refused 'a header with a function less (static)' \
    no_more_no_less "$out/short.h" "$libraries/libthreadcalc.a" --extern-only
count 'the installed header is the committed one' cmp include/threadcalc.h "$moved/include/threadcalc.h"
count 'the installed schemas are the committed ones' diff -r -x install-manifest.txt schema "$moved/share/threadcalc"
count 'no installed text names a place' names_no_place
# Threads of eleven more forms, with their tables, took 0.2 MB.
count 'the static library is small' at_most 4700000 "$libraries/libthreadcalc.a"
count 'the shared library is small' at_most 2500000 "$libraries/libthreadcalc.so.$(cut -d. -f3 <<<"$soname").$version"

if need pkg-config pkg-config; then
    for source in "${sources[@]}"; do
        count "$source by pkg-config, shared" with_pkg_config "$source" shared
        count "$source by pkg-config, static" with_pkg_config "$source" static
    done
    count 'pkg-config knows the version' pkg-config "--exact-version=$version" threadcalc
    count 'another Rust library in the program' neighbour
else
    skip 8 'pkg-config is not installed'
fi

if need cmake cmake; then
    count 'CMake builds all programs' cmake_builds
    for source in "${sources[@]}"; do
        for kind in shared static; do
            name=${source//[\/.]/_}-$kind
            count "$source by CMake, $kind" built "$source" "$kind" "$out/cmake/$name"
        done
    done
    count 'CMake accepts the same minor version' configure "$moved" "$minor" "$out/same"
    refused 'a version above this one' configure "$moved" "$minor.999" "$out/above"
    refused 'another minor version before 1.0' configure "$moved" 0.0.9 "$out/older"
    mv "$libraries/libthreadcalc.a" "$out/"
    refused 'a package without its static library' configure "$moved" "$version" "$out/less"
    mv "$out/libthreadcalc.a" "$libraries/"
else
    skip 11 'cmake is not installed'
fi

# A file of somebody else has to stay, and nothing but it.
touch "$moved/include/other.h"
count 'uninstall' installs --uninstall --prefix "$moved"
count 'only the file of somebody else is left' [ "$(cd "$moved" && find . -type f -o -type l)" = ./include/other.h ]
refused 'uninstalling twice' installs --uninstall --prefix "$moved"
count 'install below DESTDIR' env DESTDIR="$out/stage" "$install" --prefix /opt/threadcalc
count 'DESTDIR is no part of the installed files' [ -e "$out/stage/opt/threadcalc/lib/libthreadcalc.so" ]
count 'uninstall below DESTDIR' env DESTDIR="$out/stage" "$install" --prefix /opt/threadcalc --uninstall
count 'uninstall leaves nothing' [ ! -e "$out/stage/opt/threadcalc" ]
refused 'an unknown option' "$install" --prefx "$out/refused"
refused 'a relative prefix' "$install" --prefix refused
refused 'a libdir outside the prefix' "$install" --prefix "$out/refused" --libdir /usr/lib
refused 'a libdir above the prefix' "$install" --prefix "$out/refused" --libdir ../lib
refused 'a prefix that cannot be made' "$install" --prefix /dev/null/refused
count 'help is printed' grep -q -- --libdir <("$install" --help)
count 'nothing was written where it was refused' [ ! -e "$out/refused" ]

summary install
