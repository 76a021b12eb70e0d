# Run while installing: removes from SHARE the files of knowledge that an earlier install put
# there and this version no longer has. The list `installed-files` says which were ours: with
# ~/.local as the prefix a person's own files lie in the same folder, and they stay. The list
# of this version is written to LIST, to be installed.
cmake_policy(VERSION 3.25)
file(GLOB_RECURSE now RELATIVE "${SOURCE}" "${SOURCE}/facts/*.clp" "${SOURCE}/rules/*.clp")
list(SORT now)
set(before)
if(EXISTS "${SHARE}/installed-files")
  file(STRINGS "${SHARE}/installed-files" before)
endif()
foreach(name IN LISTS before)
  if(NOT name IN_LIST now AND name MATCHES "^(facts|rules)/.*\\.clp$" AND NOT name MATCHES "\\.\\./"
     AND EXISTS "${SHARE}/${name}")
    message(STATUS "Removing: ${SHARE}/${name} (of an older version)")
    file(REMOVE "${SHARE}/${name}")
  endif()
endforeach()
list(JOIN now "\n" text)
file(WRITE "${LIST}" "${text}\n")
