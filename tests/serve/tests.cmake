nutward_test(serve PARTS serve store hours)
