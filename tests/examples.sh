#!/usr/bin/env bash
# Every example against its expected output; the three languages have to print the same.
set -u
cd "$(dirname "$0")/.."
library=${CARGO_TARGET_DIR:-target}/release
# tests/c/run.sh leaves the library under the name it bears in build/c.
mkdir -p build/examples
passed=0 failed=0

# check LANGUAGE NAME COMMAND...
check() {
    local language=$1 name=$2 out=build/examples/$1-$2.txt
    shift 2
    if "$@" >"$out" && diff -u "examples/$language/$name.expected.txt" "$out"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "examples/$language/$name: not its expected output"
    fi
}

for name in tap_hole feed port; do
    check rust $name cargo run -q --example $name
    gcc -std=c99 -Wall -Wextra -Wpedantic -Werror -Iinclude "examples/c/$name.c" -o "build/examples/$name" \
        "-L$library" "-Wl,-rpath,$PWD/build/c" -lthreadcalc
    check c $name "build/examples/$name"
    check python $name build/venv/bin/python "examples/python/$name.py"
    for language in c python; do
        if cmp "examples/rust/$name.expected.txt" "examples/$language/$name.expected.txt"; then
            passed=$((passed + 1))
        else
            failed=$((failed + 1))
        fi
    done
done
check python check_program build/venv/bin/python examples/python/check_program.py
check python compare_programs build/venv/bin/python examples/python/compare_programs.py
# The demo shop's ten holes need JSON, which C has not.
check rust plan_shop cargo run -q --example plan_shop
check python plan_shop build/venv/bin/python examples/python/plan_shop.py
if cmp examples/rust/plan_shop.expected.txt examples/python/plan_shop.expected.txt; then
    passed=$((passed + 1))
else
    failed=$((failed + 1))
fi
echo "examples: $passed passed, $failed failed"
[ "$failed" -eq 0 ]
