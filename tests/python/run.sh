#!/usr/bin/env bash
# Builds the wheel, installs it into build/venv, and tests it: pytest, then the stub against the module.
set -u
cd "$(dirname "$0")/../.."
python=$PWD/build/venv/bin/python

prepare() {
    [ -x "$python" ] || python3 -m venv build/venv || return
    "$python" -m pip install -q --disable-pip-version-check -r tests/python/requirements.txt || return
    mkdir -p build/wheels build/stubtest
    rm -f build/wheels/threadcalc-*.whl
    build/venv/bin/maturin build --release -q -m threadcalc-py/Cargo.toml -o build/wheels \
        --interpreter "$python" || return
    "$python" -m pip install -q --disable-pip-version-check --force-reinstall --no-deps \
        build/wheels/threadcalc-*.whl
}

if ! prepare; then
    echo 'python: 0 passed, 1 failed, 0 skipped'
    exit 1
fi

log=build/pytest.log
"$python" -m pytest -q tests/python -p no:cacheprovider | tee "$log"
pytest_status=${PIPESTATUS[0]}
summary=$(tail -n 1 "$log")

# count WORD...: the sum of the numbers before these words in pytest's last line.
count() {
    local word number sum=0
    for word in "$@"; do
        number=$(grep -oE "[0-9]+ $word\b" <<<"$summary" | grep -oE '^[0-9]+')
        sum=$((sum + ${number:-0}))
    done
    echo "$sum"
}

passed=$(count passed xfailed) failed=$(count failed error errors xpassed) skipped=$(count skipped)
# Pytest that breaks off, or finds nothing to run, is a failure that its summary may not count.
if [ "$pytest_status" -ne 0 ] && [ "$failed" -eq 0 ]; then
    failed=1
fi

# From a directory of its own: the module is to be found as it was installed.
if (cd build/stubtest && "$python" -m mypy.stubtest threadcalc); then
    passed=$((passed + 1))
else
    failed=$((failed + 1))
fi

echo "python: $passed passed, $failed failed, $skipped skipped"
[ "$failed" -eq 0 ]
