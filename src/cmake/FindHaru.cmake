# libharu, which writes PDF: the target Haru::haru. Debian's package brings no pkg-config file.
find_path(Haru_INCLUDE_DIR hpdf.h)
find_library(Haru_LIBRARY NAMES hpdf)
mark_as_advanced(Haru_INCLUDE_DIR Haru_LIBRARY)
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(Haru REQUIRED_VARS Haru_LIBRARY Haru_INCLUDE_DIR)
if(Haru_FOUND AND NOT TARGET Haru::haru)
  add_library(Haru::haru UNKNOWN IMPORTED)
  set_target_properties(Haru::haru PROPERTIES IMPORTED_LOCATION "${Haru_LIBRARY}"
    INTERFACE_INCLUDE_DIRECTORIES "${Haru_INCLUDE_DIR}")
endif()
