# cmake -S . -B build-release -C tests/profiles/release.cmake: what is handed out and packed.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(BUILD_TESTING OFF CACHE BOOL "")
