# Rules about the source itself. Each script first proves on planted violations that it can fail, then reads the tree.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
foreach(rule layers purity namespaces counts top_level words file_length)
  add_test(NAME meta_${rule} COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/${rule}.py ${PROJECT_SOURCE_DIR})
  set_tests_properties(meta_${rule} PROPERTIES LABELS source)
endforeach()

# The README's conversation is held again, with the real programs. (Not labelled source: it needs them.)
add_test(NAME meta_readme_talk COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/readme_talk.py
                                       ${PROJECT_SOURCE_DIR}/README.md $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)

# So are its "Run a shop" and the examples of `help`.
add_test(NAME meta_readme_run COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/readme_run.py
                                      ${PROJECT_SOURCE_DIR}/README.md $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)
add_test(NAME meta_help_examples COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/help_examples.py
                                         $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)
