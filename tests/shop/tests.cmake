nutward_test(shop PARTS store hours LINKS SQLiteCpp SQLite::SQLite3 Threads::Threads)
