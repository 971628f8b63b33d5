package headgate.verifier.replay;

import headgate.api.vocabulary.PlantClass;
import java.util.Map;

/**
 * How often an action that reaches its plant does its work.
 *
 * @param byClass share of successes by class of plant, in this soil, 0 to 1
 * @param otherwise share for all other classes, 0 to 1
 */
public record Success(Map<PlantClass, Double> byClass, double otherwise) {

    /** Every action succeeds. */
    public static final Success ALWAYS = new Success(Map.of(), 1);

    /** Copies the map. */
    public Success {
        byClass = Map.copyOf(byClass);
    }

    double of(PlantClass kind) {
        return byClass.isEmpty() ? otherwise : byClass.getOrDefault(kind, otherwise);
    }
}
