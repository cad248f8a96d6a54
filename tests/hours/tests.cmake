nutward_test(hours PARTS hours)
