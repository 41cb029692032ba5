# shellcheck shell=bash disable=SC2154,SC2030,SC2031
# The same answers on other machines: sourced by `run`.
#
# A microcontroller under qemu and WebAssembly under Node, both with a core library built from
# source: Debian's compiler comes with the source of its own.

ARM=thumbv7em-none-eabihf
WASM=wasm32-unknown-unknown
PACKAGES=(rustc-web cargo-web rust-web-src qemu-system-arm)
reason=

install_machines() {
    local missing
    mapfile -t missing < <(dpkg-query -W -f '${Package} ${db:Status-Status}\n' "${PACKAGES[@]}" 2>/dev/null |
        awk '$2 == "installed" { print $1 }' | grep -vxF -f - <(printf '%s\n' "${PACKAGES[@]}"))
    if [ ${#missing[@]} -eq 0 ]; then return; fi
    if ! command -v apt-get >/dev/null; then
        reason="no apt-get here to install ${missing[*]}"
    elif [ "$(id -u)" -ne 0 ]; then
        reason="not root, so ${missing[*]} cannot be installed"
    elif ! install_packages "${missing[@]}" >"$out/apt.log" 2>&1; then
        reason="${missing[*]} cannot be installed: $(grep '^E:' "$out/apt.log" | tail -n 1)"
    fi
}

install_packages() {
    export DEBIAN_FRONTEND=noninteractive
    local wait=(-o DPkg::Lock::Timeout=120)
    apt-get "${wait[@]}" install -y --no-install-recommends "$@" && return
    apt-get "${wait[@]}" update && apt-get "${wait[@]}" install -y --no-install-recommends "$@"
}

# The linker that belongs to the compiler of these tests; Debian's package has only a dangling link.
linker() {
    local here=("$(rustc --print sysroot)"/lib/rustlib/*/bin/rust-lld /usr/lib/llvm-*/bin/lld)
    local candidate
    for candidate in "${here[@]}"; do
        if [ -x "$candidate" ]; then
            mkdir -p "$out/bin"
            # Under this name it takes the kind of its output from the compiler.
            ln -sf "$candidate" "$out/bin/rust-lld"
            echo "$out/bin/rust-lld"
            return
        fi
    done
    return 1
}

# In a shell of its own: Debian's compiler comes first on its path, and nowhere else.
build_machines() (
    if [ -n "$reason" ]; then return; fi
    lld=$(linker) || return
    export PATH=/usr/bin:$PATH RUSTC_BOOTSTRAP=1 CARGO_TARGET_DIR=$CARGO_TARGET_DIR/machines
    export CARGO_TARGET_THUMBV7EM_NONE_EABIHF_LINKER=$lld CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=$lld
    cargo build --quiet --release -Zbuild-std=core -p firmware --target "$ARM"
    cargo build --quiet --release -Zbuild-std=core -p wasm --target "$WASM"
)

# same NAME FILE: whether the answers of a machine are those of this one, byte by byte.
same() {
    if cmp -s "$out/here.txt" "$2"; then
        pass "same answers, $1: $answered"
    else
        diff "$out/here.txt" "$2" | head -n 6 >"$out/diff.txt"
        fail "same answers, $1" "$out/diff.txt"
    fi
}

check_machines() {
    local answers=$CARGO_TARGET_DIR/release/answers built=$CARGO_TARGET_DIR/machines
    if ! cargo build --quiet --release -p answers >"$out/answers.log" 2>&1 || ! "$answers" >"$out/here.txt"; then
        fail 'this machine has no answers' "$out/answers.log"
        return
    fi
    answered="$(wc -l <"$out/here.txt") lines, $(wc -c <"$out/here.txt") bytes,"
    answered+=" $(grep -c '^error ' "$out/here.txt") of the jobs without a plan"
    "$answers" planted >"$out/turned.txt"
    if cmp -s "$out/here.txt" "$out/turned.txt"; then
        fail 'planted: a bit that is turned goes unnoticed'
    else
        pass "planted: one bit that is turned is seen ($(cmp "$out/here.txt" "$out/turned.txt" | sed 's/.* differ: //'))"
    fi
    if [ -x "$out/bare" ]; then
        "$out/bare" answers >"$out/bare.txt"
        same 'bare program' "$out/bare.txt"
    fi
    if [ -z "$reason" ] && ! linker >/dev/null; then reason='no lld that can link for them'; fi
    if [ -n "$reason" ]; then
        skip "same answers, microcontroller: $reason"
        skip "same answers, WebAssembly: $reason"
        return
    fi
    check_firmware "$built/$ARM/release/firmware"
    check_wasm "$built/$WASM/release/wasm.wasm"
}

check_firmware() {
    if [ ! -e "$1" ]; then
        fail 'microcontroller: it does not build' "$out/machines.log"
    elif timeout 120 qemu-system-arm -machine mps2-an386 -nographic -monitor none -serial none \
        -semihosting-config enable=on,target=native -kernel "$1" >"$out/arm.txt" 2>"$out/arm.log" </dev/null; then
        same "Cortex-M4 under qemu ($ARM)" "$out/arm.txt"
    else
        fail "microcontroller: the program ended with $?" "$out/arm.log"
    fi
}

check_wasm() {
    if ! command -v node >/dev/null; then
        skip 'same answers, WebAssembly: no node here to run it'
    elif [ ! -e "$1" ]; then
        fail 'WebAssembly: it does not build' "$out/machines.log"
    elif node wasm/run.mjs "$1" >"$out/wasm.txt" 2>"$out/wasm.log"; then
        same "WebAssembly under node $(node --version)" "$out/wasm.txt"
    else
        fail "WebAssembly: the module ended with $?" "$out/wasm.log"
    fi
}
