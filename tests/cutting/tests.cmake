nutward_test(cutting LONG PARTS cutting)
