# cmake -S . -B build-asan -C tests/profiles/asan.cmake: address and undefined-behaviour
# sanitizers; the first finding ends the program.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_C_FLAGS_DEBUG "-O1 -g" CACHE STRING "")
set(PULLCORD_WERROR ON CACHE BOOL "")
set(PULLCORD_SANITIZE ON CACHE BOOL "")
