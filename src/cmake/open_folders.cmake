# Run at the end of an install: lets everyone into our folders SHARE and DOC. Run by cpack: into
# all folders of the package, for what it holds must not hang on the umask of who made it.
cmake_policy(VERSION 3.25)
if(CPACK_TEMPORARY_DIRECTORY)
  set(tops "${CPACK_TEMPORARY_DIRECTORY}")
else()
  set(tops "${SHARE}" "${DOC}")
endif()
foreach(top IN LISTS tops)
  file(GLOB_RECURSE below LIST_DIRECTORIES true "${top}/*")
  foreach(folder IN LISTS top below)
    if(IS_DIRECTORY "${folder}")
      file(CHMOD "${folder}" PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE
        GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
    endif()
  endforeach()
endforeach()
