# Sentences with the calls that they should come to, said to the demo shop. learned.jsonl is what the phrases were made
# with; held_out.jsonl, which who writes rules does not read, tells more: build/bench-sayings FILE… [--typos SEED] [--json]
# [--misses].
add_executable(bench-sayings ${CMAKE_CURRENT_LIST_DIR}/bench_main.cpp ${CMAKE_CURRENT_LIST_DIR}/sayings.cpp
  ${CMAKE_CURRENT_LIST_DIR}/speaker.cpp ${CMAKE_CURRENT_LIST_DIR}/text_search.cpp)
target_include_directories(bench-sayings PRIVATE ${PROJECT_SOURCE_DIR}/daemon ${CMAKE_CURRENT_SOURCE_DIR})
target_link_libraries(bench-sayings PRIVATE nutward_store nutward_talk nutward_hours fmt::fmt)
set_target_properties(bench-sayings PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR})
# A part of them in CI, which says too that no command was done that was not meant; all of them: leave out --every. Under
# sanitizers, which look at the code, a tenth of that part.
set(sayings_part --every 20 --least 62)
if(NUTWARD_SANITIZE)
  set(sayings_part --every 200 --least 55)
endif()
add_test(NAME sayings COMMAND bench-sayings ${CMAKE_CURRENT_LIST_DIR}/learned.jsonl ${sayings_part} --most 1)
# Makes daemon/talk/evidence_table.cpp anew: see DEVELOPERS.md.
add_executable(learn-sayings ${CMAKE_CURRENT_LIST_DIR}/learn_main.cpp ${CMAKE_CURRENT_LIST_DIR}/learner.cpp
  ${CMAKE_CURRENT_LIST_DIR}/sayings.cpp ${CMAKE_CURRENT_LIST_DIR}/speaker.cpp)
target_include_directories(learn-sayings PRIVATE ${PROJECT_SOURCE_DIR}/daemon ${CMAKE_CURRENT_SOURCE_DIR})
target_link_libraries(learn-sayings PRIVATE nutward_store nutward_talk nutward_hours fmt::fmt)
set_target_properties(learn-sayings PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR})
# Looks for what breaks the sentence layer: see fuzz_main.cpp. Only what reads sentences is instrumented.
if(NUTWARD_FUZZ)
  add_executable(fuzz-sentences ${CMAKE_CURRENT_LIST_DIR}/fuzz_main.cpp ${CMAKE_CURRENT_LIST_DIR}/sayings.cpp
    ${CMAKE_CURRENT_LIST_DIR}/speaker.cpp)
  target_include_directories(fuzz-sentences PRIVATE ${PROJECT_SOURCE_DIR}/daemon ${CMAKE_CURRENT_SOURCE_DIR})
  target_link_libraries(fuzz-sentences PRIVATE nutward_store nutward_talk nutward_hours fmt::fmt)
  target_link_options(fuzz-sentences PRIVATE -fsanitize=fuzzer,address,undefined)
  set_target_properties(fuzz-sentences PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR})
endif()
