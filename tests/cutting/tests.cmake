nutward_test(cutting PARTS cutting)
