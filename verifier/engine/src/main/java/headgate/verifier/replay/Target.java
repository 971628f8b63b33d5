package headgate.verifier.replay;

import headgate.api.vocabulary.PlantClass;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something that stands in the way of the carriage, or seems to, and what has become of it so far. */
final class Target {

    /** What it is. */
    enum Nature {
        /** A plant to be treated, or a place for a plug. */
        WANTED,
        /** A plant of the crop. */
        CROP,
        /** A plant of the crop that is taken for a weed. */
        CROP_TAKEN,
        /** Nothing at all, taken for a weed. */
        FALSE_ALARM
    }

    final long number;
    final long x;
    final long y;
    final PlantClass kind;
    final double stem;
    final double height;
    final double canopy;
    final Nature nature;

    /** Why it cannot be treated, found before any arm comes near; null if it may be. */
    @Nullable
    Miss hidden;

    /** Where the detection is that it was taken for one with; null if it is a detection of its own. */
    @Nullable
    Target leader;

    /** The arms that may come to treat it. */
    final List<Candidate> candidates = new ArrayList<>(2);

    /** How near it came to be treated: the last reason of any arm so far. */
    @Nullable
    Miss reason;

    /** An arm has it, or had it. */
    boolean taken;

    boolean treated;
    boolean alongside;
    boolean successful;
    boolean lost;

    /** Another plant stands so near that one action may treat both. */
    boolean crowded;

    boolean touched;

    /** The heads were asked early what they would do for it. */
    boolean askedAhead;

    Target(long number, long x, long y, PlantClass kind, double stem, double height, double canopy, Nature nature) {
        this.number = number;
        this.x = x;
        this.y = y;
        this.kind = kind;
        this.stem = stem;
        this.height = height;
        this.canopy = canopy;
        this.nature = nature;
    }

    /** Whether it is known to the carriage as something to treat. */
    boolean isDetection() {
        return hidden == null
                && leader == null
                && (nature == Nature.WANTED || nature == Nature.CROP_TAKEN || nature == Nature.FALSE_ALARM);
    }

    boolean isCrop() {
        return nature == Nature.CROP || nature == Nature.CROP_TAKEN;
    }

    void failed(Miss why) {
        if (reason == null || why.compareTo(reason) > 0) {
            reason = why;
        }
    }

    /** Whether it is a plant that must not be hurt: one of the crop, or a plug that was set. */
    boolean stands() {
        return isCrop() || (successful && kind.equals(PlantClass.PLUG));
    }

    /** How far from another, squared, micrometres squared. */
    double squaredDistance(Target other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return dx * dx + dy * dy;
    }
}
