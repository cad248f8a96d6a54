nutward_test(level PARTS level)
