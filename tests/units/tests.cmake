nutward_test(units PARTS units)
