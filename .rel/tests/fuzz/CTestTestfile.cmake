# CMake generated Testfile for 
# Source directory: /tmp/wt-face/tests/fuzz
# Build directory: /tmp/wt-face/.rel/tests/fuzz
# 
# This file includes the relevant testing commands required for 
# testing this directory and lists subdirectories to be tested as well.
add_test([=[fuzz_reader]=] "/tmp/wt-face/.rel/bin/fuzz_reader" "/tmp/wt-face/tests/fuzz/seeds" "3000")
set_tests_properties([=[fuzz_reader]=] PROPERTIES  LABELS "library" TIMEOUT "300" _BACKTRACE_TRIPLES "/tmp/wt-face/tests/fuzz/CMakeLists.txt;11;add_test;/tmp/wt-face/tests/fuzz/CMakeLists.txt;15;doorcard_fuzz;/tmp/wt-face/tests/fuzz/CMakeLists.txt;0;")
add_test([=[fuzz_splice]=] "/tmp/wt-face/.rel/bin/fuzz_splice" "/tmp/wt-face/tests/fuzz/seeds" "1500")
set_tests_properties([=[fuzz_splice]=] PROPERTIES  LABELS "library" TIMEOUT "300" _BACKTRACE_TRIPLES "/tmp/wt-face/tests/fuzz/CMakeLists.txt;11;add_test;/tmp/wt-face/tests/fuzz/CMakeLists.txt;16;doorcard_fuzz;/tmp/wt-face/tests/fuzz/CMakeLists.txt;0;")
add_test([=[fuzz_list]=] "/tmp/wt-face/.rel/bin/fuzz_list" "/tmp/wt-face/tests/fuzz/lists" "2000")
set_tests_properties([=[fuzz_list]=] PROPERTIES  LABELS "library" TIMEOUT "300" _BACKTRACE_TRIPLES "/tmp/wt-face/tests/fuzz/CMakeLists.txt;11;add_test;/tmp/wt-face/tests/fuzz/CMakeLists.txt;18;doorcard_fuzz;/tmp/wt-face/tests/fuzz/CMakeLists.txt;0;")
add_test([=[fuzz_local_rules]=] "/tmp/wt-face/.rel/bin/fuzz_local_rules" "/tmp/wt-face/tests/fuzz/local_rules_seeds" "2000")
set_tests_properties([=[fuzz_local_rules]=] PROPERTIES  LABELS "library" TIMEOUT "300" _BACKTRACE_TRIPLES "/tmp/wt-face/tests/fuzz/CMakeLists.txt;11;add_test;/tmp/wt-face/tests/fuzz/CMakeLists.txt;19;doorcard_fuzz;/tmp/wt-face/tests/fuzz/CMakeLists.txt;0;")
