nutward_test(cli PARTS serve)
target_compile_definitions(test_cli PRIVATE NUTWARD_CLIENT="$<TARGET_FILE:nutward>")
add_dependencies(test_cli nutward)
