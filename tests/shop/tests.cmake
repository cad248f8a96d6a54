# Under TSan: the executor, the planner and damage between threads, and undo_test, which does every command on the
# writer's thread.
nutward_test(shop LONG PARTS store hours LINKS SQLiteCpp SQLite::SQLite3 Threads::Threads
             THREADED bench_support.cpp agenda_test.cpp damage_test.cpp executor_test.cpp planner_test.cpp planning_test.cpp
                      undo_test.cpp)
target_sources(test_shop PRIVATE cutting/cases.cpp) # random cut plans

# The same damages for a release: 10,000 of them.
add_test(NAME shop_many_damages COMMAND test_shop "[damage]")
set_tests_properties(shop_many_damages PROPERTIES LABELS release TIMEOUT 7200 ENVIRONMENT NUTWARD_DAMAGES=10000)
target_compile_definitions(test_shop PRIVATE NUTWARD_JUDGE_SVG="${CMAKE_CURRENT_SOURCE_DIR}/draw/judge_svg.py")
