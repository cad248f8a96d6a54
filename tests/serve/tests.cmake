nutward_test(serve PARTS serve)
