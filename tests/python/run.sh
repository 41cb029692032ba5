#!/usr/bin/env bash
# Builds the wheel, installs it in an environment of its own and runs every Python test.
#
# usage: tests/python/run.sh [folder of the environment, default build/venv]
set -u
cd "$(dirname "$0")/../.."
environment=${1:-build/venv}
python=$environment/bin/python
package=threadcalc-py/python/threadcalc
log=build/python-tests.log
mkdir -p build
passed=0 failed=0 skipped=0

# step NAME COMMAND...: one check that passes or fails as a whole.
step() {
    local name=$1
    shift
    echo "-- $name"
    if "$@"; then passed=$((passed + 1)); else
        failed=$((failed + 1))
        echo "$name: FAILED"
    fi
}

finish() {
    echo "python: $passed passed, $failed failed, $skipped skipped"
    [ "$failed" -eq 0 ]
    exit
}

# counted WORD: the number before WORD in pytest's closing line.
counted() {
    local count
    count=$(tail -n 1 "$log" | grep -oE "[0-9]+ $1" | grep -oE '^[0-9]+')
    echo "${count:-0}"
}

if [ ! -x "$python" ]; then
    python3 -m venv "$environment" || { failed=1; finish; }
fi
"$python" -m pip install --quiet --disable-pip-version-check -r tests/python/requirements.txt || { failed=1; finish; }
rm -rf build/wheels
"$environment/bin/maturin" build --quiet --release -m threadcalc-py/Cargo.toml -i "$python" -o build/wheels || { failed=1; finish; }
"$python" -m pip install --quiet --disable-pip-version-check --force-reinstall --no-deps build/wheels/*.whl || { failed=1; finish; }
# What the wheel itself depends on.
"$python" -m pip install --quiet --disable-pip-version-check build/wheels/*.whl || { failed=1; finish; }

"$python" -m pytest -q tests/python | tee "$log"
status=${PIPESTATUS[0]}
passed=$(counted passed)
failed=$(($(counted failed) + $(counted error)))
skipped=$(counted skipped)
if [ "$status" -ne 0 ] && [ "$failed" -eq 0 ]; then failed=1; fi

step 'examples of the stub' "$python" tests/python/stub_examples.py "$package/_threadcalc.pyi"
step 'stub against module' "$python" -m mypy.stubtest threadcalc --mypy-config-file tests/python/mypy.ini
step 'types of the package' "$python" -m mypy --config-file tests/python/mypy.ini "$package"
finish
