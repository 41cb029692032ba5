# shellcheck shell=bash disable=SC2154
# The core without a standard library and without a heap: sourced by `run`.

check_bare() {
    local bare=$out/bare count
    if [ "$(uname -sm)" != 'Linux x86_64' ]; then
        skip "bare program: it is written for Linux on x86-64, this is $(uname -sm)"
        return
    fi
    if ! cargo build --quiet --release -p bare >"$out/bare.log" 2>&1 ||
        ! cp "$CARGO_TARGET_DIR/release/bare" "$bare"; then
        fail 'bare program: it does not build' "$out/bare.log"
        return
    fi
    if ! "$bare" >"$out/known.txt"; then
        fail 'bare program: a known answer is wrong' "$out/known.txt"
    else
        count=$(wc -l <"$out/known.txt")
        pass "bare program: $count known answers right, without standard library, C library and heap, $(size "$bare")"
        sed 's/^/    /' "$out/known.txt"
    fi
    if [ -n "$(nm --undefined-only "$bare")" ] || readelf --program-headers "$bare" | grep -q INTERP; then
        fail 'bare program: it needs a library'
    elif nm "$bare" | grep -E '__rust_(alloc|realloc|dealloc)|malloc'; then
        fail 'bare program: it has an allocator'
    else
        pass 'bare program: no undefined symbol, no allocator, no loader'
    fi
    if "$bare" planted >"$out/planted.txt"; then
        fail 'planted: the bare program does not see a wrong answer' "$out/planted.txt"
    else
        pass "planted: a wrong answer is seen ($(grep -c WRONG "$out/planted.txt") line)"
    fi
    if cargo build --quiet --release -p bare --features heap >"$out/heap.log" 2>&1; then
        fail 'planted: a heap goes unnoticed'
    elif grep -q 'no global memory allocator' "$out/heap.log"; then
        pass 'planted: with one text on the heap it does not build'
    else
        fail 'planted: with a heap it fails for another reason' "$out/heap.log"
    fi
}
