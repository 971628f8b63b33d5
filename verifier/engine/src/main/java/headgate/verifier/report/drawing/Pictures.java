package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
     * The carriage on the road.
     *
     * @param folding the stance
     * @param id a word for ids in the page, of its own for each stance
     * @return pictures from behind, from above and from the right-hand side
     */
    public static List<Markup> road(Folding folding, String id) {
        int last = folding.shapes().size() - 1;
        return Stream.of(Projection.BEHIND, Projection.ABOVE, Projection.SIDE)
                .map(seen -> FoldView.of(folding, last, seen, id + "-" + seen.id()))
                .toList();
    }

    /**
     * The steps on the way to the road.
     *
     * @param folding the stance
     * @param id a word for ids in the page, of its own for each stance
     * @return a picture from above for each step, in order
     */
    public static List<Markup> steps(Folding folding, String id) {
        return IntStream.range(0, folding.steps().size())
                .mapToObj(i -> FoldView.of(folding, i, Projection.ABOVE, id + "-step-" + (i + 1)))
                .toList();
    }

    /**
     * What the ways of drawing stand for, on the road.
     *
     * @param folding the stance
     * @param id a word for ids in the page, of its own for each stance
     * @return one sample each
     */
    public static List<Sample> legend(Folding folding, String id) {
        return Legend.samples(folding, id);
    }

    /**
     * A way of drawing with its meaning.
     *
     * @param picture the sample
     * @param words what it stands for
     */
    public record Sample(Markup picture, String words) {}
}
