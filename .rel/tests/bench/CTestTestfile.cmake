# CMake generated Testfile for 
# Source directory: /tmp/wt-face/tests/bench
# Build directory: /tmp/wt-face/.rel/tests/bench
# 
# This file includes the relevant testing commands required for 
# testing this directory and lists subdirectories to be tested as well.
add_test([=[bench]=] "/tmp/wt-face/.rel/bin/bench" "/tmp/wt-face/.rel/bin" "small")
set_tests_properties([=[bench]=] PROPERTIES  LABELS "bench" TIMEOUT "120" _BACKTRACE_TRIPLES "/tmp/wt-face/tests/bench/CMakeLists.txt;12;add_test;/tmp/wt-face/tests/bench/CMakeLists.txt;0;")
