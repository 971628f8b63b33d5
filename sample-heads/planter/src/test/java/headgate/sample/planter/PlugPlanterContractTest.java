package headgate.sample.planter;

import headgate.testkit.HeadContract;

class PlugPlanterContractTest extends HeadContract {
    PlugPlanterContractTest() {
        super(PlugPlanter::new);
    }
}
