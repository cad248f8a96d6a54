nutward_test(store PARTS store LINKS SQLiteCpp SQLite::SQLite3 Threads::Threads
             THREADED journal_test.cpp opening_test.cpp transactions_test.cpp)

# The same random moves of wire for a release: a million of them.
add_test(NAME store_million_moves COMMAND test_store "[moves]")
set_tests_properties(store_million_moves PROPERTIES LABELS release TIMEOUT 3600 ENVIRONMENT NUTWARD_MOVES=1000000)
