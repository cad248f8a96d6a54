nutward_test(serve PARTS serve store hours)
target_compile_definitions(test_serve PRIVATE NUTWARD_JUDGE_SVG="${CMAKE_CURRENT_SOURCE_DIR}/draw/judge_svg.py")
