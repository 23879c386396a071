# CMake generated Testfile for 
# Source directory: /tmp/wt-face/tests/pictures
# Build directory: /tmp/wt-face/.rel/tests/pictures
# 
# This file includes the relevant testing commands required for 
# testing this directory and lists subdirectories to be tested as well.
