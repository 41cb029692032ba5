# shellcheck shell=bash disable=SC2154
# No panic can be linked: sourced by `run`.

# What every compiler expects of its platform; and what the unwind tables of the compiler's own
# library name, though nobody calls it.
PLATFORM='bcmp memcmp memcpy memmove memset strlen rust_eh_personality'
PANIC=threadcalc_panic_is_linked

# build_panic NAME FEATURE...: the proof as $out/NAME.so and $out/NAME.o.
build_panic() {
    local name=$1 release=$CARGO_TARGET_DIR/release member
    shift
    cargo build --quiet --release -p panic-proof "${@/#/--features=}" >"$out/$name.log" 2>&1 || return 1
    cp "$release/libpanic_proof.so" "$out/$name.so" || return 1
    # The whole program is one object; the others of the archive are the compiler's own library.
    member=$(ar t "$release/libpanic_proof.a" | grep '^panic_proof') || return 1
    ar p "$release/libpanic_proof.a" "$member" >"$out/$name.o"
}

# entries LIBRARY: the names it exports.
entries() {
    nm --dynamic --defined-only --format=posix "$1" | cut -d' ' -f1
}

# asks_for LIBRARY: the names it does not have.
asks_for() {
    nm --dynamic --undefined-only --format=posix "$1" | awk '$2 == "U" { print $1 }'
}

# pulls OBJECT ENTRY: whether a library of this one entry asks for the panic.
pulls() {
    printf '{ global: %s; local: *; };\n' "$2" >"$out/one.map"
    ld -shared --gc-sections -u "$2" --version-script="$out/one.map" "$1" -o "$out/one.so" 2>>"$out/one.log" || return 2
    asks_for "$out/one.so" | grep -qx "$PANIC"
}

list_public() {
    RUSTC_BOOTSTRAP=1 cargo rustdoc --quiet --manifest-path "$root/Cargo.toml" -p threadcalc-core --features serde -- \
        -Z unstable-options --output-format json >"$out/rustdoc.log" 2>&1
}

check_panic() {
    local json=$CARGO_TARGET_DIR/doc/threadcalc_core.json symbols=$out/entries.txt strange
    export THREADCALC_ENTRIES=$CARGO_TARGET_DIR/entries.rs
    if ! list_public || ! python3 panic/api.py write "$json" panic/src/by_hand.rs "$THREADCALC_ENTRIES"; then
        fail 'the list of public functions' "$out/rustdoc.log"
        return
    fi
    if ! build_panic panic; then
        fail 'the panic proof does not build; an entry that cannot be written by itself belongs in by_hand.rs' \
            "$out/panic.log"
        return
    fi
    entries "$out/panic.so" >"$symbols"
    if asks_for "$out/panic.so" | grep -qx "$PANIC"; then
        while read -r entry; do
            if pulls "$out/panic.o" "$entry"; then echo "$entry"; fi
        done <"$symbols" >"$out/pulling.txt"
        fail "a panic is linked by $(wc -l <"$out/pulling.txt") of the entries" "$out/pulling.txt"
    else
        pass "no panic: none can be reached from any of $(wc -l <"$symbols") entries, overflow checks on"
    fi
    strange=$(asks_for "$out/panic.so" | grep -vxF -e "$PANIC" -f <(tr ' ' '\n' <<<"$PLATFORM") | paste -sd' ')
    if [ -n "$strange" ]; then
        fail "the core asks its platform for $strange"
    else
        pass "platform: the core asks for nothing but $(asks_for "$out/panic.so" | grep '^[bm]' | paste -sd' ')"
    fi
    if python3 panic/api.py check "$json" "$symbols" panic/exceptions.txt >"$out/public.txt"; then
        pass "every public function has an entry: $(cat "$out/public.txt")"
    else
        fail 'every public function has an entry' "$out/public.txt"
    fi
    if cargo clippy --quiet --release -p answers -p bare -p panic-proof -- -D warnings >"$out/clippy.log" 2>&1; then
        pass 'the proofs themselves have no lints'
    else
        fail 'lints' "$out/clippy.log"
    fi
    check_panic_plants "$json" "$symbols"
}

# The same checks have to find a missing entry and a panic.
check_panic_plants() {
    local found
    found=$(grep -vx feed "$2" | python3 panic/api.py check "$1" /dev/stdin panic/exceptions.txt)
    if grep -q '^    entry!("feed", ' <<<"$found"; then
        pass 'planted: an entry that is missing is named, with the line that adds it'
    else
        fail 'planted: the check of the entries is blind'
    fi
    if ! build_panic planted planted; then
        fail 'the planted panic does not build' "$out/planted.log"
    elif ! asks_for "$out/planted.so" | grep -qx "$PANIC"; then
        fail 'planted: the check for panics is blind'
    elif pulls "$out/planted.o" planted && ! pulls "$out/planted.o" Length::is_positive; then
        pass 'planted: a panic is found, and the entry that links it'
    else
        fail 'planted: the entry that links a panic is not found' "$out/one.log"
    fi
}
