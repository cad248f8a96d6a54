nutward_test(published PARTS board units wire talk hours LINKS fmt::fmt)
target_compile_definitions(test_published PRIVATE NUTWARD_SOURCE="${PROJECT_SOURCE_DIR}")

# A judge from npm: chrono-node reads days and times.
if(NUTWARD_NPM)
  add_test(NAME published_npm COMMAND test_published "[npm]")
  set_tests_properties(published_npm PROPERTIES ENVIRONMENT "NODE_PATH=${CMAKE_BINARY_DIR}/npm/node_modules")
endif()
