nutward_test(wire PARTS wire)
