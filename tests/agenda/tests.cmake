nutward_test(agenda PARTS agenda)
