package headgate.runtime.child;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;

/** Finds threads that were not there when the process began to run a head. */
final class Threads {

    private static final int ROOM = 64;
    private static final int LONGEST_NAME = 100;

    /** How the name of the thread begins that waits for a program to end; newer Javas add the program's number. */
    private static final String REAPER = "process reaper";

    private final ThreadGroup root;
    private final Set<Thread> known = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Thread[] found = new Thread[ROOM];

    /** Takes every thread that is there now as known. */
    Threads() {
        ThreadGroup group = Thread.currentThread().getThreadGroup();
        while (group.getParent() != null) {
            group = group.getParent();
        }
        root = group;
        for (int i = root.enumerate(found, true) - 1; i >= 0; i--) {
            known.add(found[i]);
        }
    }

    /** {@return the name of a thread that is new and alive, at most 100 characters} */
    Optional<String> extra() {
        int count = root.enumerate(found, true);
        for (int i = 0; i < count; i++) {
            Thread thread = found[i];
            if (!known.contains(thread) && !ofThePlatform(thread) && thread.isAlive()) {
                return Optional.of(name(thread));
            }
        }
        return Optional.empty();
    }

    private static String name(Thread thread) {
        if (waitsForPrograms(thread)) {
            return REAPER;
        }
        String name = Throwables.cut(thread.getName());
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME);
    }

    /** A platform's helper, but there only once a program was started, and nobody but the head does that. */
    private static boolean waitsForPrograms(Thread thread) {
        return thread.getName().startsWith(REAPER);
    }

    /** The platform starts helpers of its own when it first needs them, such as the one that cleans up after files. */
    private static boolean ofThePlatform(Thread thread) {
        String type = thread.getClass().getName();
        return !waitsForPrograms(thread) && (type.startsWith("jdk.internal.") || type.startsWith("java.lang.ref."));
    }
}
