nutward_test(draw PARTS draw)
target_compile_definitions(test_draw PRIVATE NUTWARD_JUDGE_SVG="${CMAKE_CURRENT_SOURCE_DIR}/draw/judge_svg.py")
