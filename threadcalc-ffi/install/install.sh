#!/usr/bin/env bash
# SPDX-License-Identifier: MIT OR Apache-2.0
# Builds and installs the C library: header, shared and static library, pkg-config file, CMake package, and the
# schemas of its JSON.
#
# Cargo installs programs only, and what it leaves as a static library is 27 MB: every object of Rust's
# own libraries, with their bitcode. Here it is linked to one object that shows the header's functions
# and nothing else.
set -u

usage() {
    cat <<'TEXT'
usage: install.sh [--prefix P] [--libdir D] [--uninstall]

  --prefix P    where to install, /usr/local if not given
  --libdir D    where libraries go: below the prefix, `lib` if not given
  --uninstall   removes what an earlier run installed below this prefix
  --help        this text

DESTDIR in the environment stands before every path that is written, for packagers. The installed tree
may be moved: no file in it names the prefix. Programs that use it:

  cc program.c $(pkg-config --cflags --libs threadcalc)
  cc program.c $(pkg-config --cflags --static --libs threadcalc | sed s/-lthreadcalc/-l:libthreadcalc.a/)

or in CMake find_package(threadcalc), with the targets threadcalc::threadcalc and threadcalc::static.
TEXT
}

fail() {
    echo "install.sh: $*" >&2
    exit 1
}

prefix=/usr/local
libdir=lib
action=install
while [ $# -gt 0 ]; do
    case $1 in
    --help | -h) usage && exit 0 ;;
    --uninstall) action=uninstall ;;
    --prefix=* | --libdir=*)
        set -- "${1%%=*}" "${1#*=}" "${@:2}"
        continue
        ;;
    --prefix | --libdir)
        [ -n "${2:-}" ] || fail "$1 needs a folder (see --help)"
        if [ "$1" = --prefix ]; then prefix=$2; else libdir=$2; fi
        shift
        ;;
    *) fail "unknown option '$1' (see --help)" ;;
    esac
    shift
done

case $prefix in /*) ;; *) fail "--prefix has to be an absolute path, not '$prefix'" ;; esac
prefix=${prefix%/}
libdir=${libdir#"$prefix"/}
libdir=${libdir%/}
# The installed files find each other by the way up from the library's folder to the prefix.
case /$libdir/ in
*/../* | */./* | *//* | *[!A-Za-z0-9_.+/-]*)
    fail "--libdir has to be a plain path below the prefix '$prefix', not '$libdir'"
    ;;
esac

root=${DESTDIR:-}$prefix
manifest_name=share/threadcalc/install-manifest.txt
manifest=$root/$manifest_name

# Removes the files of the manifest, then the folders that were made for them, the deepest first.
uninstall() {
    local kind path lines
    # Read whole: the manifest is one of the files.
    lines=$(tac "$manifest") || fail "cannot read $manifest"
    while read -r kind path; do
        case /$path/ in */../*) fail "$manifest names '$path', which this script never wrote" ;; esac
        case $kind in
        file) rm -f "$root/$path" || fail "cannot remove $root/$path" ;;
        folder)
            path=$root/$path
            [ ! -d "$path" ] || rmdir --ignore-fail-on-non-empty "${path%/.}" || fail "cannot remove $path"
            ;;
        *) fail "$manifest has a line that this script never wrote: '$kind $path'" ;;
        esac
    done <<<"$lines"
}

if [ "$action" = uninstall ]; then
    [ -e "$manifest" ] || fail "nothing to uninstall: there is no $manifest"
    uninstall
    echo "uninstalled from $root"
    exit 0
fi

[ "$(uname -s)" = Linux ] || fail "installs on Linux only: elsewhere, build with cargo and copy the library by hand"
for tool in cargo ld objcopy strip ar readelf install tac; do
    command -v "$tool" >/dev/null || fail "needs '$tool' (of Rust, binutils or coreutils), which is not on the PATH"
done

room=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd) || exit 1
cd "$room/../.." || exit 1
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT

# Builds both libraries; sets shared, built_static and native_libraries.
build() {
    CARGO_TERM_COLOR=never cargo rustc --locked --release -p threadcalc-ffi --lib \
        --message-format=json-render-diagnostics -- --print native-static-libs >"$work/messages" 2>"$work/log" || {
        cat "$work/log" >&2
        fail "the library could not be built"
    }
    # What the static library needs from the system, in the compiler's own words.
    native_libraries=$(sed -n 's/^note: native-static-libs: *//p' "$work/log" | tail -n 1)
    [ -n "$native_libraries" ] || fail "the compiler did not say which system libraries the static library needs"
    shared=$(grep -oE '"[^"]*/libthreadcalc\.so"' "$work/messages" | tail -n 1 | tr -d '"')
    built_static=$(grep -oE '"[^"]*/libthreadcalc\.a"' "$work/messages" | tail -n 1 | tr -d '"')
    [ -e "$shared" ] && [ -e "$built_static" ] || fail "cargo did not make libthreadcalc.so and libthreadcalc.a"
}

# One object with the functions of the header and what they need. Their names are the only global ones,
# so that another Rust library in the same program is no trouble.
shrink_static() {
    grep -oE 'THREADCALC_CALL threadcalc_\w+' include/threadcalc.h | cut -d ' ' -f 2 >"$work/functions"
    [ -s "$work/functions" ] || fail "include/threadcalc.h declares no function"
    sed 's/^/--require-defined=/' "$work/functions" >"$work/required"
    ld -r --gc-sections --force-group-allocation "@$work/required" -o "$work/whole.o" "$built_static" &&
        objcopy --strip-unneeded --remove-section .llvmbc --remove-section .llvmcmd \
            --keep-global-symbols "$work/functions" "$work/whole.o" "$work/threadcalc.o" &&
        ar Dcr "$work/libthreadcalc.a" "$work/threadcalc.o" || fail "the static library could not be made smaller"
}

# up FOLDER: the way from a folder below the prefix to the prefix.
up() {
    sed -E 's|[^/]+|..|g' <<<"$1"
}

# fill NAME: a template with the values of this build in it.
fill() {
    sed -e "s|@VERSION@|$version|g" -e "s|@SONAME@|$soname|g" -e "s|@REAL_NAME@|$real_name|g" \
        -e "s|@LIBDIR@|$libdir|g" -e "s|@NATIVE_LIBRARIES@|$native_libraries|g" \
        -e "s|@NATIVE_LIBRARIES_LIST@|${native_libraries// /;}|g" -e "s|@POINTER_SIZE@|$pointer_size|g" \
        -e "s|@UP_FROM_PKGCONFIG@|$(up "$libdir/pkgconfig")|g" \
        -e "s|@UP_FROM_CMAKE@|$(up "$libdir/cmake/threadcalc")|g" "$room/$1.in" >"$work/$1" || exit 1
}

# folder PATH: makes a folder below the prefix and its parents, and remembers which were not there.
folder() {
    [ ! -d "$root/$1" ] || return 0
    [ "$1" = . ] || folder "$(dirname "$1")"
    if [ "$1" = . ]; then mkdir -p "$root"; else mkdir "$root/$1"; fi || fail "cannot make $root/$1"
    chmod 755 "$root/$1"
    echo "folder $1" >>"$work/manifest"
}

# put MODE SOURCE PATH; the manifest on disk is always complete, so that a broken run can be undone.
put() {
    folder "$(dirname "$3")"
    echo "file $3" >>"$work/manifest"
    install -m 644 "$work/manifest" "$manifest" && install -m "$1" "$2" "$root/$3" || fail "cannot write $root/$3"
}

# link_to TARGET PATH
link_to() {
    echo "file $2" >>"$work/manifest"
    install -m 644 "$work/manifest" "$manifest" && ln -sf "$1" "$root/$2" || fail "cannot write $root/$2"
}

build
shrink_static
version=$(cargo pkgid -p threadcalc-ffi | sed 's/.*[#@]//') && [ -n "$version" ] || fail "cargo does not know the version"
soname=$(readelf -d "$shared" | sed -n 's/.*(SONAME).*\[\(.*\)\].*/\1/p')
[ -n "$soname" ] || fail "the shared library bears no name"
# The number of the binary interface, then the version: both are seen, and two versions sort.
real_name=$soname.$version
case $(readelf -h "$shared" | sed -n 's/ *Class: *//p') in ELF32) pointer_size=4 ;; *) pointer_size=8 ;; esac
strip --strip-unneeded -o "$work/libthreadcalc.so" "$shared" || fail "the shared library could not be stripped"
for name in threadcalc.pc threadcalcConfig.cmake threadcalcConfigVersion.cmake; do fill "$name"; done

[ ! -e "$manifest" ] || uninstall
: >"$work/manifest"
folder "$(dirname "$manifest_name")"
echo "file $manifest_name" >>"$work/manifest"
put 644 include/threadcalc.h include/threadcalc.h
for name in job plan report comparison; do put 644 "schema/$name.schema.json" "share/threadcalc/$name.schema.json"; done
put 644 "$work/libthreadcalc.a" "$libdir/libthreadcalc.a"
put 755 "$work/libthreadcalc.so" "$libdir/$real_name"
link_to "$real_name" "$libdir/$soname"
link_to "$soname" "$libdir/libthreadcalc.so"
put 644 "$work/threadcalc.pc" "$libdir/pkgconfig/threadcalc.pc"
put 644 "$work/threadcalcConfig.cmake" "$libdir/cmake/threadcalc/threadcalcConfig.cmake"
put 644 "$work/threadcalcConfigVersion.cmake" "$libdir/cmake/threadcalc/threadcalcConfigVersion.cmake"

echo "installed threadcalc $version into $root"
if [ "$prefix" = /usr/local ] && [ -z "${DESTDIR:-}" ]; then echo "run ldconfig for programs to find $soname"; fi
