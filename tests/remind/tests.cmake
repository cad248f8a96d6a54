find_package(Python3 REQUIRED COMPONENTS Interpreter)
nutward_test(remind PARTS remind store shop hours units LINKS OpenSSL::Crypto nlohmann_json::nlohmann_json)
target_sources(test_remind PRIVATE support/receiver.cpp support/certificate.cpp)
target_compile_definitions(test_remind PRIVATE
  NUTWARD_PYTHON="${Python3_EXECUTABLE}"
  NUTWARD_SOURCE="${PROJECT_SOURCE_DIR}")

# With ON, a delivery is verified by the npm package standardwebhooks: it must be there (see deploy/check.sh), or the test
# fails. With OFF there is no such test.
option(NUTWARD_NPM "Verify a delivery with npm packages installed under the build folder" OFF)
if(NUTWARD_NPM)
  find_program(NUTWARD_NODE node)
  if(NOT NUTWARD_NODE)
    message(FATAL_ERROR "NUTWARD_NPM=ON needs node; install it, or configure with -DNUTWARD_NPM=OFF")
  endif()
  add_test(NAME remind_npm COMMAND test_remind "[npm]")
  set_tests_properties(remind_npm PROPERTIES ENVIRONMENT
    "NODE_PATH=${CMAKE_BINARY_DIR}/npm/node_modules;NUTWARD_NODE=${NUTWARD_NODE}")
endif()
