# The description of the HTTP interface: what is stored is what the daemon says, and what the daemon answers is as the
# description has it.
add_test(NAME described_as_stored
  COMMAND sh ${PROJECT_SOURCE_DIR}/schema/http/describe.sh --check $<TARGET_FILE:nutwardd>)

# Other people's judges: @redocly/cli reads the description, ajv what the daemon answers.
if(NUTWARD_NPM)
  add_test(NAME described_lint COMMAND ${CMAKE_BINARY_DIR}/npm/node_modules/.bin/redocly lint
    --config ${PROJECT_SOURCE_DIR}/schema/http/redocly.yaml ${PROJECT_SOURCE_DIR}/schema/http/nutward.json)
  set_tests_properties(described_lint PROPERTIES LABELS source ENVIRONMENT
    "REDOCLY_TELEMETRY=off;REDOCLY_SUPPRESS_UPDATE_NOTICE=true")
  add_test(NAME described_answers COMMAND ${NUTWARD_NODE} ${CMAKE_CURRENT_LIST_DIR}/answers.mjs
    $<TARGET_FILE:nutwardd> $<TARGET_FILE:dialogues> ${PROJECT_SOURCE_DIR})
  set_tests_properties(described_answers PROPERTIES TIMEOUT 300 ENVIRONMENT
    "NODE_PATH=${CMAKE_BINARY_DIR}/npm/node_modules")
endif()
