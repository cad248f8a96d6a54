nutward_test(published PARTS board units wire)
