nutward_test(talk PARTS talk store hours LINKS Threads::Threads)
