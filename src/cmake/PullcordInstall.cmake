# What is installed and packed: program, knowledge, man page, completion, documents,
# example cases and licence. `cmake --install` or cpack; `uninstall` takes it all away again.
set(pullcord_share "${CMAKE_INSTALL_DATADIR}/pullcord")

# Man page and completion are what the program itself prints, so they cannot fall behind it.
set(made "${CMAKE_BINARY_DIR}/made")
file(MAKE_DIRECTORY "${made}")
find_program(PULLCORD_GZIP gzip)
set(man_page "${made}/pullcord.1")
if(PULLCORD_GZIP)
  string(APPEND man_page ".gz")
endif()
add_custom_command(OUTPUT "${man_page}"
  COMMAND "${CMAKE_COMMAND}" -DPROGRAM=$<TARGET_FILE:pullcord> -DWHAT=man
          "-DOUT=${made}/pullcord.1" "-DGZIP=${PULLCORD_GZIP}" -P "${CMAKE_CURRENT_LIST_DIR}/print.cmake"
  DEPENDS pullcord "${CMAKE_CURRENT_LIST_DIR}/print.cmake" COMMENT "Printing the man page" VERBATIM)
add_custom_command(OUTPUT "${made}/pullcord.bash"
  COMMAND "${CMAKE_COMMAND}" -DPROGRAM=$<TARGET_FILE:pullcord> -DWHAT=completion
          "-DOUT=${made}/pullcord.bash" -P "${CMAKE_CURRENT_LIST_DIR}/print.cmake"
  DEPENDS pullcord "${CMAKE_CURRENT_LIST_DIR}/print.cmake" COMMENT "Printing the completion" VERBATIM)
add_custom_target(pullcord-pages ALL DEPENDS "${man_page}" "${made}/pullcord.bash")

install(CODE "set(SHARE \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/${pullcord_share}\")
set(DOC \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/${CMAKE_INSTALL_DOCDIR}\")
set(SOURCE \"${CMAKE_SOURCE_DIR}\")
set(LIST \"${made}/installed-files\")")
# files left by an older version would still be read as knowledge; they go first
install(SCRIPT "${CMAKE_CURRENT_LIST_DIR}/older_knowledge.cmake")
install(FILES "${made}/installed-files" DESTINATION "${pullcord_share}")
install(TARGETS pullcord RUNTIME DESTINATION "${CMAKE_INSTALL_BINDIR}")
install(DIRECTORY "${CMAKE_SOURCE_DIR}/facts" "${CMAKE_SOURCE_DIR}/rules"
  DESTINATION "${pullcord_share}" FILES_MATCHING PATTERN "*.clp")
install(FILES "${man_page}" DESTINATION "${CMAKE_INSTALL_MANDIR}/man1")
install(FILES "${made}/pullcord.bash" RENAME pullcord
  DESTINATION "${CMAKE_INSTALL_DATADIR}/bash-completion/completions")
install(FILES "${CMAKE_SOURCE_DIR}/LICENSE" RENAME copyright DESTINATION "${CMAKE_INSTALL_DOCDIR}")
install(DIRECTORY "${CMAKE_SOURCE_DIR}/docs/" DESTINATION "${CMAKE_INSTALL_DOCDIR}"
  FILES_MATCHING PATTERN "*.md" PATTERN "*.json" PATTERN decisions EXCLUDE)
install(DIRECTORY "${CMAKE_SOURCE_DIR}/demo/" DESTINATION "${CMAKE_INSTALL_DOCDIR}/examples"
  FILES_MATCHING PATTERN "*.json")

# under a strict umask our folders would be shut to everyone else
install(SCRIPT "${CMAKE_CURRENT_LIST_DIR}/open_folders.cmake")

add_custom_target(uninstall
  COMMAND "${CMAKE_COMMAND}" "-DMANIFEST=${CMAKE_BINARY_DIR}/install_manifest.txt"
          -P "${CMAKE_CURRENT_LIST_DIR}/uninstall.cmake"
  COMMENT "Removing what was installed" VERBATIM)

# Packages. With SOURCE_DATE_EPOCH set, two builds by the same user give the same bytes.
set(CPACK_GENERATOR TGZ DEB)
set(CPACK_PACKAGE_NAME pullcord)
set(CPACK_PACKAGE_VENDOR "The Pullcord authors")
set(CPACK_PACKAGE_CONTACT "The Pullcord authors <nobody@pullcord.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "fault-finding partner for small engines")
set(CPACK_PACKAGE_DESCRIPTION "Takes in a complaint about a small engine and whatever is seen or
measured, ranks the likely causes, shows why, and names the next check worth
its minutes, with its cautions. Works offline.")
set(CPACK_RESOURCE_FILE_LICENSE "${CMAKE_SOURCE_DIR}/LICENSE")
set(CPACK_STRIP_FILES ON)
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_PRE_BUILD_SCRIPTS "${CMAKE_CURRENT_LIST_DIR}/open_folders.cmake")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
find_program(PULLCORD_SHLIBDEPS dpkg-shlibdeps)
find_program(PULLCORD_FILE file) # cpack looks with it for what has to be asked
if(PULLCORD_SHLIBDEPS AND PULLCORD_FILE)
  set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
else()
  set(CPACK_DEBIAN_PACKAGE_DEPENDS "libc6, libcjson1, libedit2, libhpdf-2.3.0, libsqlite3-0")
endif()
include(CPack)
