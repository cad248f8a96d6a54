nutward_test(store PARTS store LINKS SQLiteCpp SQLite::SQLite3 Threads::Threads)
