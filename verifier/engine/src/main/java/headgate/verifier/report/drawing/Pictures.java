package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.List;
import java.util.Optional;

/** The pictures of a scene, each an SVG element that needs nothing outside itself. */
public final class Pictures {

    private Pictures() {}

    /**
     * The carriage with its heads from above.
     *
     * @param scene the scene
     * @return the picture
     */
    public static Markup above(Scene scene) {
        return View.of(scene, Projection.ABOVE);
    }

    /**
     * The carriage with its heads from behind.
     *
     * @param scene the scene
     * @return the picture
     */
    public static Markup behind(Scene scene) {
        return View.of(scene, Projection.BEHIND);
    }

    /**
     * The carriage with its heads from the right-hand side.
     *
     * @param scene the scene
     * @return the picture
     */
    public static Markup side(Scene scene) {
        return View.of(scene, Projection.SIDE);
    }

    /**
     * The tightest place, enlarged.
     *
     * @param scene the scene
     * @return the picture, or empty if the scene has no such place
     */
    public static Optional<Markup> tightest(Scene scene) {
        return scene.gap().map(g -> Inset.of(scene, g));
    }

    /**
     * What the ways of drawing stand for.
     *
     * @param scene the scene
     * @return one sample each
     */
    public static List<Sample> legend(Scene scene) {
        return Legend.samples(scene);
    }

    /**
     * A way of drawing with its meaning.
     *
     * @param picture the sample
     * @param words what it stands for
     */
    public record Sample(Markup picture, String words) {}
}
