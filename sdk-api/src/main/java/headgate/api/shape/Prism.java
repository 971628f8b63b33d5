package headgate.api.shape;

import headgate.api.annotation.ApiStatus;
import headgate.api.unit.Micrometres;
import java.util.Objects;

/** An outline over a height interval: the unit of material that bodies are made of. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Prism {

    private final Outline outline;
    private final Interval height;

    private Prism(Outline outline, Interval height) {
        this.outline = Objects.requireNonNull(outline, "outline");
        this.height = Objects.requireNonNull(height, "height");
    }

    /**
     * Makes a prism.
     *
     * @param outline its shape from above
     * @param height the interval of z that it fills; of some length
     * @return the prism
     * @throws IllegalArgumentException if the interval has no length
     */
    public static Prism of(Outline outline, Interval height) {
        if (height.length() == 0) {
            throw new IllegalArgumentException("a prism must have a height, but fills only z = " + height);
        }
        return new Prism(outline, height);
    }

    /**
     * Makes a box along the axes from metres.
     *
     * @param xLeast rear face, m
     * @param xMost front face, m
     * @param yLeast right face, m
     * @param yMost left face, m
     * @param zLeast bottom, m
     * @param zMost top, m
     * @return the box
     * @throws IllegalArgumentException if an extent has no length or is out of bounds
     */
    public static Prism box(double xLeast, double xMost, double yLeast, double yMost, double zLeast, double zMost) {
        return of(Outline.rectangle(xLeast, xMost, yLeast, yMost), Interval.ofMetres(zLeast, zMost));
    }

    /**
     * Makes an upright cylinder, as a polygon of 16 sides that holds it.
     *
     * @param x centre, m
     * @param y centre, m
     * @param radius radius, m
     * @param zLeast bottom, m
     * @param zMost top, m
     * @return the prism, outside the cylinder by at most 2 % of the radius plus 2 micrometres
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static Prism aroundCylinder(double x, double y, double radius, double zLeast, double zMost) {
        return of(Outline.aroundDisc(Point.ofMetres(x, y), radius, 16), Interval.ofMetres(zLeast, zMost));
    }

    /** {@return the shape from above} */
    public Outline outline() {
        return outline;
    }

    /** {@return the interval of z that it fills} */
    public Interval height() {
        return height;
    }

    /** {@return the volume, cubic metres} */
    public double volume() {
        return outline.area() * Micrometres.toMetres(height.length());
    }

    /**
     * Moves the prism.
     *
     * @param by the displacement
     * @return the moved prism
     */
    public Prism shifted(Point3 by) {
        return new Prism(outline.shifted(by.plan()), height.shifted(by.z()));
    }

    /** {@return the prism turned by 180 degrees about the z axis} */
    public Prism turned() {
        return new Prism(outline.turned(), height);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Prism that && outline.equals(that.outline) && height.equals(that.height);
    }

    @Override
    public int hashCode() {
        return Objects.hash(outline, height);
    }

    /** {@return outline and height} */
    @Override
    public String toString() {
        return "prism " + outline + " over z " + height;
    }
}
