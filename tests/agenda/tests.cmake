nutward_test(agenda PARTS agenda LINKS fmt::fmt)
target_sources(test_agenda PRIVATE ${CMAKE_CURRENT_LIST_DIR}/../bench/jobshop.cpp)
