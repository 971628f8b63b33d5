package headgate.sample.gripper;

import headgate.testkit.jar.HeadJarContract;

class GripperJarIT extends HeadJarContract {
    GripperJarIT() {
        super(HeadJarContract::built);
    }
}
