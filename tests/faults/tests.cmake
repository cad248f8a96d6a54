# Faults: the real programs over a real Unix socket, killed, fed badly, and short of room. Each test is one script
# of this folder. Label "faults": sanitizer runs take them too, since they run whatever was built here.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
function(nutward_fault_test name script)
  add_test(NAME ${name} COMMAND ${Python3_EXECUTABLE} -B ${PROJECT_SOURCE_DIR}/tests/faults/${script}
    $<TARGET_FILE:nutwardd> $<TARGET_FILE:nutward>)
  set_tests_properties(${name} PROPERTIES LABELS faults SKIP_RETURN_CODE 77 TIMEOUT 300)
endfunction()

foreach(fault bad_input concurrency door full_disk kills one_daemon plans reminder)
  nutward_fault_test(faults_${fault} ${fault}.py)
endforeach()

# These keep both of two cores busy: beside another test they take three times as long.
set_tests_properties(faults_kills faults_one_daemon PROPERTIES PROCESSORS 2)
if(NUTWARD_SANITIZE)
  # A sanitizer's daemon takes many times as long to start; what is looked for there shows in fewer starts.
  set_tests_properties(faults_kills faults_one_daemon PROPERTIES ENVIRONMENT "NUTWARD_KILLS=40;NUTWARD_RACES=30;NUTWARD_PATIENCE=3")
  set_tests_properties(faults_reminder PROPERTIES ENVIRONMENT NUTWARD_PATIENCE=2)
endif()

# The same kills for a release: hours rather than seconds.
nutward_fault_test(faults_many_kills kills.py)
set_tests_properties(faults_many_kills PROPERTIES LABELS release TIMEOUT 14400 ENVIRONMENT NUTWARD_KILLS=10000)
