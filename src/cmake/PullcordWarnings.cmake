# Warnings, hardening and instruments, carried by one interface target.
add_library(pullcord_options INTERFACE)
target_compile_options(pullcord_options INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wstrict-prototypes -Wmissing-prototypes
  -Wcast-qual -Wwrite-strings -Wundef -Wformat=2 -Wvla
  -fstack-protector-strong -ffp-contract=off) # same sums on every machine
if(CMAKE_C_COMPILER_ID STREQUAL "Clang")
  target_compile_options(pullcord_options INTERFACE -Wno-format-nonliteral -Wno-string-concatenation)
else()
  target_compile_options(pullcord_options INTERFACE -Wlogical-op -Wno-format-nonliteral)
endif()
target_compile_definitions(pullcord_options INTERFACE _POSIX_C_SOURCE=200809L)
# no folder of the building machine in the program: builds in two places give the same bytes
target_compile_options(pullcord_options INTERFACE
  "-ffile-prefix-map=${CMAKE_BINARY_DIR}=build" "-ffile-prefix-map=${CMAKE_SOURCE_DIR}=.")
if(PULLCORD_WERROR)
  target_compile_options(pullcord_options INTERFACE -Werror)
endif()
if(PULLCORD_SANITIZE)
  target_compile_options(pullcord_options INTERFACE
    -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(pullcord_options INTERFACE -fsanitize=address,undefined)
endif()
if(PULLCORD_COVERAGE)
  target_compile_options(pullcord_options INTERFACE --coverage -O0)
  target_link_options(pullcord_options INTERFACE --coverage)
endif()
if(PULLCORD_FUZZ)
  if(NOT CMAKE_C_COMPILER_ID STREQUAL "Clang")
    message(FATAL_ERROR "PULLCORD_FUZZ needs clang: cmake -B build-fuzz -C tests/profiles/fuzz.cmake")
  endif()
  target_compile_options(pullcord_options INTERFACE
    -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all)
  target_link_options(pullcord_options INTERFACE -fsanitize=address,undefined)
endif()
if(CMAKE_BUILD_TYPE STREQUAL "Release" AND NOT PULLCORD_SANITIZE AND NOT PULLCORD_FUZZ)
  target_compile_options(pullcord_options INTERFACE -D_FORTIFY_SOURCE=2)
  target_link_options(pullcord_options INTERFACE LINKER:-z,relro,-z,now)
endif()
