# Rules about the source itself. Each script first proves on planted violations that it can fail, then reads the tree.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
foreach(rule layers purity namespaces counts top_level words file_length)
  add_test(NAME meta_${rule} COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_LIST_DIR}/${rule}.py ${PROJECT_SOURCE_DIR})
  set_tests_properties(meta_${rule} PROPERTIES LABELS source)
endforeach()
