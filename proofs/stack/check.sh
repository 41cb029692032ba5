# shellcheck shell=bash disable=SC2154
# How much stack a plan takes beside its job and its answer: sourced by `run`.

check_stack() {
    local stack=$out/stack
    if [ "$(uname -m)" != 'x86_64' ]; then
        skip "stack of a plan: it is measured on x86-64, this is $(uname -m)"
        return
    fi
    if ! cargo build --quiet --release -p stack >"$out/stack.log" 2>&1 ||
        ! cp "$CARGO_TARGET_DIR/release/stack" "$stack"; then
        fail 'stack of a plan: the program does not build' "$out/stack.log"
        return
    fi
    if "$stack" >"$out/stack.txt"; then
        pass "stack of a plan: $(head -n 1 "$out/stack.txt")"
        sed -n '2,$s/^/    /p' "$out/stack.txt"
    else
        fail 'stack of a plan: a call takes more than its limit' "$out/stack.txt"
    fi
    if "$stack" planted >"$out/stack-planted.txt"; then
        fail 'planted: another 16 KiB of stack go unnoticed' "$out/stack-planted.txt"
    else
        pass "planted: another 16 KiB of stack are seen ($(grep -c 'ABOVE THE LIMIT' "$out/stack-planted.txt") lines)"
    fi
}
