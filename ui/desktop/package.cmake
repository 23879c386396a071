# The Debian package: cmake --build DIR --target package
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME doorcard)
set(CPACK_PACKAGE_VENDOR "the doorcard authors")
set(CPACK_PACKAGE_CONTACT "the doorcard authors <doorcard@home.arpa>")  # nobody's name (RFC 8375): there is no address
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "survey electrical panels and print the card for the door")
set(CPACK_PACKAGE_DESCRIPTION
    "For service electricians: a survey of panels, breakers, circuits, outlets,
loads and readings, gaps included, is answered with findings, each with its
figure, its limit and the article it rests on, and with the directory for
the panel's door, which also says what nobody has traced yet.

Off is not proof of dead: test before touch. Work inside a panel is for
qualified persons; local code and the authority having jurisdiction decide.

This package holds the command line, doorcard, and the window, doorcard-ui.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-dejavu-core, fonts-dejavu-extra")  # the sheets are set in them
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
include(CPack)
