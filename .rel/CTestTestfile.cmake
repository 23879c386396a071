# CMake generated Testfile for 
# Source directory: /tmp/wt-face
# Build directory: /tmp/wt-face/.rel
# 
# This file includes the relevant testing commands required for 
# testing this directory and lists subdirectories to be tested as well.
subdirs("src")
subdirs("docs")
subdirs("tests")
