# SPDX-License-Identifier: MIT
# Reads ctest's log and prints 'PASSED FAILED CASES': a doctest program counts by its cases (a crash as one failed), any
# other test as one. CASES are the doctest cases alone. A doctest program without cases counts as failed.
/^[0-9]+\/[0-9]+ Testing: / { program = 0; good = 0; bad = 0 }
/^\[doctest\] test cases: / { program = 1; good = $6; bad = $9 }
/^Test (Passed|Failed)|^Test [A-Z]|^Test timed out/ {
    ok = ($0 ~ /^Test Passed/)
    if (program) { cases += good + bad; if (good + bad == 0 || (!ok && bad == 0)) bad++ }
    else if (ok) good = 1
    else bad = 1
    passed += good; failed += bad
}
END { print passed + 0, failed + 0, cases + 0 }
