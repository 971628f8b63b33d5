package headgate.runtime.schema;

import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.form.FileKind;
import headgate.runtime.policy.PolicyReader;
import java.util.List;

/** All kinds of file that have a schema. */
final class Kinds {

    private Kinds() {}

    static List<FileKind<?>> all() {
        return List.of(CarriageReader.KIND, CropPlanReader.KIND, PolicyReader.KIND);
    }
}
