package headgate.sample.planter;

import headgate.testkit.jar.HeadJarContract;

class PlugPlanterJarIT extends HeadJarContract {
    PlugPlanterJarIT() {
        super(HeadJarContract::built);
    }
}
