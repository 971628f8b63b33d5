package headgate.sample.gripper;

import headgate.testkit.HeadContract;

class GripperContractTest extends HeadContract {
    GripperContractTest() {
        super(Gripper::new);
    }
}
