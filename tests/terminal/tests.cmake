# The client on a terminal: the real programs on a pseudo-terminal.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
add_test(NAME terminal_conversation COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/conversation.py
  $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)
set_tests_properties(terminal_conversation PROPERTIES TIMEOUT 300)
