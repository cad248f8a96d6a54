# Dialogues are data: one program reads them all, so a new phrase never recompiles.
add_executable(dialogues ${CMAKE_CURRENT_SOURCE_DIR}/dialogues/runner.cpp)
target_link_libraries(dialogues PRIVATE nutward_store nutward_talk nutward_hours)
add_test(NAME dialogues COMMAND dialogues ${CMAKE_CURRENT_SOURCE_DIR}/dialogues)
# That it notices a row that nobody speaks of: this folder holds one sentence.
add_test(NAME dialogues_cover COMMAND dialogues ${CMAKE_CURRENT_SOURCE_DIR}/dialogues/one_sentence)
set_tests_properties(dialogues_cover PROPERTIES PASS_REGULAR_EXPRESSION "No dialogue comes to 'use'")
