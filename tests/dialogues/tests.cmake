# Dialogues are data: one program reads them all, so a new phrase never recompiles.
add_executable(dialogues ${CMAKE_CURRENT_SOURCE_DIR}/dialogues/runner.cpp)
target_link_libraries(dialogues PRIVATE nutward_store nutward_talk nutward_hours)
add_test(NAME dialogues COMMAND dialogues ${CMAKE_CURRENT_SOURCE_DIR}/dialogues)
