package headgate.runtime.process;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The walls that may be tried, strictest first, and which of them this machine refused. Whether a wall works shows only
 * when a process is started behind it: a container may have the tool and forbid what it does. So the first start is the
 * trial, and costs nothing where it succeeds. What is refused once is not tried again.
 */
public final class Walls {

    /** System property: the one wall to use, {@code bwrap}, {@code unshare} or {@code none}; any other text means any. */
    static final String PROPERTY = "headgate.wall";

    private static final Walls STANDARD = of(allowed(System.getProperty(PROPERTY, "")));

    private final List<Wall> allowed;
    private int next;

    private Walls(List<Wall> allowed) {
        this.allowed = List.copyOf(allowed);
    }

    /** {@return the walls of this program; all its processes learn from each other's trials} */
    public static Walls standard() {
        return STANDARD;
    }

    /**
     * Allows one wall and no other: where it does not work, no process starts.
     *
     * @param wall the wall
     * @return the walls to try
     */
    public static Walls only(Wall wall) {
        return of(List.of(wall));
    }

    /** {@return walls to try in this order} */
    static Walls of(List<Wall> walls) {
        return new Walls(walls);
    }

    /** {@return true if the system bounds what a head process uses, with or without a wall} */
    public static boolean bounded() {
        return Tools.OF_MACHINE.find("prlimit").isPresent();
    }

    /** {@return the walls that a setting allows} */
    static List<Wall> allowed(String setting) {
        String word = setting.strip().toLowerCase(Locale.ROOT);
        Optional<Wall> one = Arrays.stream(Wall.values())
                .filter(wall -> wall.word().equals(word))
                .findFirst();
        return one.map(List::of).orElse(List.of(Wall.values()));
    }

    /** {@return the strictest wall that was not refused yet} */
    synchronized Wall best() {
        return allowed.get(Math.min(next, allowed.size() - 1));
    }

    /**
     * Tells that a process did not come up behind a wall.
     *
     * @param wall the wall
     * @return the one to try instead; empty if there is none
     */
    synchronized Optional<Wall> insteadOf(Wall wall) {
        int at = allowed.indexOf(wall) + 1;
        next = Math.max(next, Math.min(at, allowed.size() - 1));
        return at < allowed.size() ? Optional.of(allowed.get(Math.max(at, next))) : Optional.empty();
    }
}
