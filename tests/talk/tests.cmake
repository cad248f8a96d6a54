nutward_test(talk LONG PARTS talk store hours LINKS Threads::Threads)
