# cmake -S . -B build-dev -C tests/profiles/dev.cmake: for daily work and the debugger.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(PULLCORD_WERROR ON CACHE BOOL "")
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
