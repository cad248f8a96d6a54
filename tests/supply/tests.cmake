nutward_test(supply PARTS supply)
