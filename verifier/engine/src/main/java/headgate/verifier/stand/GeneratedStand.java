package headgate.verifier.stand;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * A stand made up from a seed. Its plants come in the order of travel, as often as they are asked for and each time the
 * same; only few of them are held at once, however long the plot is.
 *
 * @param ground where it stands
 * @param sown what stands in rows; empty if nothing does
 * @param weeds weeds of one or more patterns, one over the other
 * @param seed what chance follows from
 */
public record GeneratedStand(Ground ground, Optional<Sown> sown, List<Weeds> weeds, long seed)
        implements Iterable<Plant> {

    /** Copies the list. */
    public GeneratedStand {
        weeds = List.copyOf(weeds);
    }

    /**
     * What stands in rows, or is to stand there.
     *
     * @param rows where it stands
     * @param kind its class: the crop, or plugs whose places these are
     * @param stem stem diameter, or the plugs'
     * @param height height over the ground
     * @param canopy diameter of its leaves
     */
    public record Sown(SownRows rows, PlantClass kind, SizeLaw stem, SizeLaw height, SizeLaw canopy) {}

    /**
     * Weeds of one pattern.
     *
     * @param pattern where they stand
     * @param bands where they are looked for; none for the whole plot
     * @param classes their kinds, each as frequent as it stands in the list; at least one
     * @param stem stem diameter
     * @param height height over the ground
     * @param canopy diameter of their leaves
     */
    public record Weeds(
            WeedPattern pattern,
            List<Band> bands,
            List<PlantClass> classes,
            SizeLaw stem,
            SizeLaw height,
            SizeLaw canopy) {

        /**
         * Checks and copies.
         *
         * @throws IllegalArgumentException if there is no class
         */
        public Weeds {
            bands = List.copyOf(bands);
            classes = List.copyOf(classes);
            if (classes.isEmpty()) {
                throw new IllegalArgumentException("weeds need at least one class");
            }
        }

        private boolean lookedFor(double y) {
            return bands.isEmpty() || bands.stream().anyMatch(b -> y >= b.right() && y < b.left());
        }
    }

    /**
     * A strip along travel.
     *
     * @param right y of its right edge, m
     * @param left y of its left edge, m
     */
    public record Band(double right, double left) {}

    /** {@return the same with another seed}
     * @param changed what chance follows from
     */
    public GeneratedStand withSeed(long changed) {
        return new GeneratedStand(ground, sown, weeds, changed);
    }

    @Override
    public Iterator<Plant> iterator() {
        Draws draws = new Draws(seed);
        List<Source> sources = new ArrayList<>();
        // Split in an order that does not depend on what is drawn: a row more leaves the weeds as they are.
        Draws ofRows = draws.split();
        Draws ofWeeds = draws.split();
        sown.ifPresent(c -> {
            for (int row = 0; row < c.rows().rows(); row++) {
                Draws sizes = ofRows.split();
                Places places = c.rows().row(row, ground.length(), ofRows.split());
                sources.add(new Source(sources.size(), places, p -> sown(c, p, sizes)));
            }
        });
        for (Weeds kind : weeds) {
            Draws sizes = ofWeeds.split();
            Places places = kind.pattern().over(ground, ofWeeds.split());
            sources.add(new Source(sources.size(), lookedFor(kind, places), p -> weed(kind, p, sizes)));
        }
        return new Merged(sources);
    }

    private static Places lookedFor(Weeds kind, Places places) {
        return () -> {
            Places.Place place = places.next();
            while (place != null && !kind.lookedFor(place.y())) {
                place = places.next();
            }
            return place;
        };
    }

    private static Plant sown(Sown sown, Places.Place place, Draws sizes) {
        return new Plant(
                Ground.position(place.x(), place.y()),
                sown.kind(),
                sown.stem().at(sizes.share()),
                sown.height().at(sizes.share()),
                sown.canopy().at(sizes.share()));
    }

    private static Plant weed(Weeds kind, Places.Place place, Draws sizes) {
        PlantClass drawn =
                kind.classes().get((int) (sizes.share() * kind.classes().size()));
        return new Plant(
                Ground.position(place.x(), place.y()),
                drawn,
                kind.stem().at(sizes.share()),
                kind.height().at(sizes.share()),
                kind.canopy().at(sizes.share()));
    }

    /** Makes a plant of a place. */
    @FunctionalInterface
    private interface Maker {
        Plant plant(Places.Place place);
    }

    /** One stream among those that are merged, with its next plant. */
    private static final class Source {
        private final int number;
        private final Places places;
        private final Maker maker;
        private @Nullable Plant head;

        Source(int number, Places places, Maker maker) {
            this.number = number;
            this.places = places;
            this.maker = maker;
            step();
        }

        void step() {
            Places.Place place = places.next();
            head = place == null ? null : maker.plant(place);
        }

        Plant head() {
            if (head == null) {
                throw new IllegalStateException("this stream has ended");
            }
            return head;
        }

        boolean ended() {
            return head == null;
        }
    }

    /** Merges streams that are in the order of travel. */
    private static final class Merged implements Iterator<Plant> {
        private final PriorityQueue<Source> next = new PriorityQueue<>(
                Comparator.<Source>comparingLong(s -> s.head().position().x())
                        .thenComparingLong(s -> s.head().position().y())
                        .thenComparingInt(s -> s.number));

        Merged(List<Source> sources) {
            sources.stream().filter(s -> !s.ended()).forEach(next::add);
        }

        @Override
        public boolean hasNext() {
            return !next.isEmpty();
        }

        @Override
        public Plant next() {
            Source first = next.poll();
            if (first == null) {
                throw new NoSuchElementException("the stand has ended");
            }
            Plant plant = first.head();
            first.step();
            if (!first.ended()) {
                next.add(first);
            }
            return plant;
        }
    }
}
