nutward_test(talk PARTS talk)
