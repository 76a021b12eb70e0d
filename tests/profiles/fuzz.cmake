# cmake -S . -B build-fuzz -C tests/profiles/fuzz.cmake: libFuzzer targets under sanitizers.
set(CMAKE_C_COMPILER clang CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_C_FLAGS_DEBUG "-O1 -g" CACHE STRING "")
set(PULLCORD_FUZZ ON CACHE BOOL "")
