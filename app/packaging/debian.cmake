# SPDX-License-Identifier: Apache-2.0
# The Debian package: cmake --build build/release --target package

# Found at run time, so that shlibdeps can't see them: the names in app/packages below the line "# run".
file(STRINGS ${CMAKE_SOURCE_DIR}/app/packages lines)
set(section "")
set(run_packages "")
foreach(line IN LISTS lines)
    if(line MATCHES "^# (.*)$")
        set(section "${CMAKE_MATCH_1}")
    elseif(section STREQUAL "run" AND NOT line STREQUAL "")
        list(APPEND run_packages "${line}")
    endif()
endforeach()
if(run_packages STREQUAL "")
    message(FATAL_ERROR "app/packages names no package below \"# run\".")
endif()
list(JOIN run_packages ", " CPACK_DEBIAN_PACKAGE_DEPENDS)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME padside)
set(CPACK_PACKAGE_VENDOR "The Padside authors")
set(CPACK_PACKAGE_CONTACT "The Padside authors <padside@example.invalid>")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "follow ageing outdoor AC and heat-pump units from visit to visit")
set(CPACK_PACKAGE_DESCRIPTION
"Padside is for people who keep ageing outdoor air-conditioning and heat-pump
units alive. At each visit it takes down a grade, or an honest 'not seen',
for every part, with photographs and readings, without a network. It says
what got worse, what got worse faster than before, and what to look at again
and until when, bundled into the fewest trips.
.
It shows a unit's years as a timeline and writes the visit summary as PDF.
Everything stays in one file of yours.")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# The look of the desktop it runs on.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-wayland, qt6-gtk-platformtheme")
include(CPack)
