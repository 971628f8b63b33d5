package headgate.verifier.judge;

import headgate.verifier.check.Dimension;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Zone;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A restriction that must be kept during work for the verdict to hold. */
public sealed interface Limit {

    /** {@return what it restricts, in words} */
    String subject();

    /** {@return the limit as a sentence} */
    String text();

    /**
     * A closed interval of one quantity, rounded inward to what is shown.
     *
     * @param subject what it restricts, in words
     * @param quantity which quantity of it
     * @param least lower end, SI
     * @param most upper end, SI
     * @param dimension the quantity's kind
     */
    record Kept(String subject, String quantity, double least, double most, Dimension dimension) implements Limit {

        @Override
        public String text() {
            return subject + ": " + quantity + " from " + dimension.text(least, RoundingMode.CEILING) + " to "
                    + dimension.text(most, RoundingMode.FLOOR);
        }
    }

    /**
     * Places that two arms' tool points must not take, or not at the same time; rounded outward to whole tenths of a
     * millimetre.
     *
     * @param subject the two arms, in words
     * @param interlock what must not be
     */
    record Apart(String subject, Interlock interlock) implements Limit {

        @Override
        public String text() {
            List<String> parts = new ArrayList<>();
            if (interlock.neverTogether()) {
                parts.add("only one of them acts at a time");
            }
            String first = "the tool point of arm " + interlock.first();
            String second = "the tool point of arm " + interlock.second();
            add(parts, first + " never goes into", interlock.firstNever());
            add(parts, second + " never goes into", interlock.secondNever());
            add(
                    parts,
                    first + ", while arm " + interlock.second() + " acts, stays out of",
                    interlock.firstWhileSecondActs());
            add(
                    parts,
                    second + ", while arm " + interlock.first() + " acts, stays out of",
                    interlock.secondWhileFirstActs());
            add(parts, "while both act, " + second + " less " + first + " stays out of", interlock.offsets());
            String text = subject + ", each tool point seen from its own mount: " + String.join("; ", parts);
            return interlock.zones() == 0
                    ? text
                    : text + "; besides what is too near, that closes at most "
                            + Dimension.SHARE.text(interlock.excess(), RoundingMode.CEILING)
                            + " of where a tool point, or an offset, can be";
        }

        private static void add(List<String> parts, String what, List<Zone> zones) {
            for (Zone zone : zones) {
                parts.add(what + " " + zone.text());
            }
        }
    }
}
