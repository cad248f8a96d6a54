find_package(Python3 REQUIRED COMPONENTS Interpreter)
nutward_test(remind LONG PARTS remind store shop hours units LINKS OpenSSL::Crypto nlohmann_json::nlohmann_json)
target_sources(test_remind PRIVATE support/receiver.cpp support/certificate.cpp)
target_compile_definitions(test_remind PRIVATE
  NUTWARD_PYTHON="${Python3_EXECUTABLE}"
  NUTWARD_SOURCE="${PROJECT_SOURCE_DIR}")

# A delivery is verified by the npm package standardwebhooks.
if(NUTWARD_NPM)
  add_test(NAME remind_npm COMMAND test_remind "[npm]")
  set_tests_properties(remind_npm PROPERTIES ENVIRONMENT
    "NODE_PATH=${CMAKE_BINARY_DIR}/npm/node_modules;NUTWARD_NODE=${NUTWARD_NODE}")
endif()
