nutward_test(press PARTS press)
