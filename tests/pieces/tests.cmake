nutward_test(pieces PARTS pieces)
