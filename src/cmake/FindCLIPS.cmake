# Debian's libclips-dev ships headers in /usr/include/clips and a static archive without a
# .pc file. The archive is linked through a copy in which the calls that could end the
# process or touch files are renamed to the functions of src/engine/guard.c, and two calls
# that its long loops make are renamed to those of src/engine/watch.c.
# Defines the imported target CLIPS::guarded.
find_path(CLIPS_INCLUDE_DIR clips/clips.h)
find_library(CLIPS_LIBRARY NAMES libclips.a)
find_program(CLIPS_OBJCOPY NAMES objcopy)
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(CLIPS REQUIRED_VARS CLIPS_LIBRARY CLIPS_INCLUDE_DIR CLIPS_OBJCOPY)

if(CLIPS_FOUND AND NOT TARGET CLIPS::guarded)
  set(CLIPS_GUARDED "${CMAKE_BINARY_DIR}/libclips-guarded.a")
  set(CLIPS_RENAMES)
  foreach(name malloc free exit fopen remove rename setlocale EvaluateExpression RemoveLogicalSupport)
    list(APPEND CLIPS_RENAMES --redefine-sym ${name}=guard_${name})
  endforeach()
  set(CLIPS_PARTS "${CMAKE_BINARY_DIR}/clips-parts")
  file(MAKE_DIRECTORY "${CLIPS_PARTS}")
  # main.o holds a main() of its own, which must not come in by accident; the functions
  # themselves keep their names where they are defined
  add_custom_command(OUTPUT "${CLIPS_GUARDED}"
    COMMAND "${CLIPS_OBJCOPY}" ${CLIPS_RENAMES} "${CLIPS_LIBRARY}" "${CLIPS_GUARDED}"
    COMMAND "${CMAKE_AR}" d "${CLIPS_GUARDED}" main.o
    COMMAND "${CMAKE_AR}" x "${CLIPS_GUARDED}" evaluatn.o lgcldpnd.o
    COMMAND "${CLIPS_OBJCOPY}" --redefine-sym guard_EvaluateExpression=EvaluateExpression evaluatn.o
    COMMAND "${CLIPS_OBJCOPY}" --redefine-sym guard_RemoveLogicalSupport=RemoveLogicalSupport lgcldpnd.o
    COMMAND "${CMAKE_AR}" r "${CLIPS_GUARDED}" evaluatn.o lgcldpnd.o
    WORKING_DIRECTORY "${CLIPS_PARTS}" VERBATIM
    DEPENDS "${CLIPS_LIBRARY}" "${CMAKE_CURRENT_LIST_FILE}")
  add_custom_target(clips-guarded DEPENDS "${CLIPS_GUARDED}")
  add_library(CLIPS::guarded STATIC IMPORTED GLOBAL)
  set_target_properties(CLIPS::guarded PROPERTIES
    IMPORTED_LOCATION "${CLIPS_GUARDED}"
    INTERFACE_LINK_LIBRARIES m)
  target_include_directories(CLIPS::guarded SYSTEM INTERFACE "${CLIPS_INCLUDE_DIR}")
  add_dependencies(CLIPS::guarded clips-guarded)
endif()
