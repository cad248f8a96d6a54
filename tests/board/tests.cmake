nutward_test(board PARTS board)
