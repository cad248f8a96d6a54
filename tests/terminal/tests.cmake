# The client on a terminal, its manual and its completions: the real programs on a pseudo-terminal, in the real shells.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
foreach(about conversation manual)
  add_test(NAME terminal_${about} COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/${about}.py
    $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)
  set_tests_properties(terminal_${about} PROPERTIES SKIP_RETURN_CODE 77 TIMEOUT 300)
endforeach()
