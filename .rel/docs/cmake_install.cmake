# Install script for directory: /tmp/wt-face/docs

# Set the install prefix
if(NOT DEFINED CMAKE_INSTALL_PREFIX)
  set(CMAKE_INSTALL_PREFIX "/usr/local")
endif()
string(REGEX REPLACE "/$" "" CMAKE_INSTALL_PREFIX "${CMAKE_INSTALL_PREFIX}")

# Set the install configuration name.
if(NOT DEFINED CMAKE_INSTALL_CONFIG_NAME)
  if(BUILD_TYPE)
    string(REGEX REPLACE "^[^A-Za-z0-9_]+" ""
           CMAKE_INSTALL_CONFIG_NAME "${BUILD_TYPE}")
  else()
    set(CMAKE_INSTALL_CONFIG_NAME "Release")
  endif()
  message(STATUS "Install configuration: \"${CMAKE_INSTALL_CONFIG_NAME}\"")
endif()

# Set the component getting installed.
if(NOT CMAKE_INSTALL_COMPONENT)
  if(COMPONENT)
    message(STATUS "Install component: \"${COMPONENT}\"")
    set(CMAKE_INSTALL_COMPONENT "${COMPONENT}")
  else()
    set(CMAKE_INSTALL_COMPONENT)
  endif()
endif()

# Install shared libraries without execute permission?
if(NOT DEFINED CMAKE_INSTALL_SO_NO_EXE)
  set(CMAKE_INSTALL_SO_NO_EXE "1")
endif()

# Is this installation the result of a crosscompile?
if(NOT DEFINED CMAKE_CROSSCOMPILING)
  set(CMAKE_CROSSCOMPILING "FALSE")
endif()

# Set default install directory permissions.
if(NOT DEFINED CMAKE_OBJDUMP)
  set(CMAKE_OBJDUMP "/usr/bin/objdump")
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard" TYPE FILE FILES "/tmp/wt-face/.rel/docs/README.md")
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard" TYPE FILE RENAME "copyright" FILES "/tmp/wt-face/docs/LICENSE")
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard/docs" TYPE FILE FILES
    "/tmp/wt-face/docs/bounds.md"
    "/tmp/wt-face/docs/card.md"
    "/tmp/wt-face/docs/card.png"
    "/tmp/wt-face/docs/commands.md"
    "/tmp/wt-face/docs/figures.md"
    "/tmp/wt-face/docs/findings.md"
    "/tmp/wt-face/docs/installing.md"
    "/tmp/wt-face/docs/local-rules.md"
    "/tmp/wt-face/docs/old-lists.md"
    "/tmp/wt-face/docs/saving.md"
    "/tmp/wt-face/docs/schedule.md"
    "/tmp/wt-face/docs/schedule.png"
    "/tmp/wt-face/docs/sources.md"
    "/tmp/wt-face/docs/survey-file.md"
    )
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard/docs/schemas" TYPE FILE FILES
    "/tmp/wt-face/docs/schemas/card.schema.json"
    "/tmp/wt-face/docs/schemas/check.schema.json"
    "/tmp/wt-face/docs/schemas/find.schema.json"
    "/tmp/wt-face/docs/schemas/new.schema.json"
    "/tmp/wt-face/docs/schemas/schedule.schema.json"
    "/tmp/wt-face/docs/schemas/set.schema.json"
    )
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard/examples" TYPE FILE FILES
    "/tmp/wt-face/examples/alder-row.survey.toml"
    "/tmp/wt-face/examples/elsewhere.rules.toml"
    "/tmp/wt-face/examples/kiln-yard.survey.toml"
    )
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/doc/doorcard" TYPE FILE FILES "/tmp/wt-face/.rel/docs/changelog.gz")
endif()

if(CMAKE_INSTALL_COMPONENT STREQUAL "Unspecified" OR NOT CMAKE_INSTALL_COMPONENT)
  file(INSTALL DESTINATION "${CMAKE_INSTALL_PREFIX}/share/man/man1" TYPE FILE FILES "/tmp/wt-face/.rel/docs/doorcard.1.gz")
endif()

