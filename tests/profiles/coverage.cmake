# cmake -S . -B build-coverage -C tests/profiles/coverage.cmake: after ctest, read it with
# gcov -b -o <folder of the .gcno> <source>.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(PULLCORD_COVERAGE ON CACHE BOOL "")
