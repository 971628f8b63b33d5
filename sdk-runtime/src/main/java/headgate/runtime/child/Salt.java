package headgate.runtime.child;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Set;

/**
 * Sets in which order the JDK's unmodifiable sets and maps are run through. The JDK draws it from the clock at every start,
 * so that programs do not come to depend on it; we choose it, so that a head which does depend on it answers otherwise in
 * one of our two processes, at every check and not at every second one.
 */
final class Salt {

    private Salt() {}

    /**
     * Sets it.
     *
     * @param salt 32 bits; an even one runs backwards
     */
    static void set(long salt) {
        try {
            Class<?> holder = Class.forName("java.util.ImmutableCollections");
            Class<?> type = Class.forName("sun.misc.Unsafe");
            Field instance = type.getDeclaredField("theUnsafe");
            instance.setAccessible(true);
            Object unsafe = instance.get(null);
            Method base = type.getMethod("staticFieldBase", Field.class);
            Method offset = type.getMethod("staticFieldOffset", Field.class);
            Field start = holder.getDeclaredField("SALT32L");
            Field backwards = holder.getDeclaredField("REVERSE");
            type.getMethod("putLong", Object.class, long.class, long.class)
                    .invoke(unsafe, base.invoke(unsafe, start), offset.invoke(unsafe, start), salt);
            type.getMethod("putBoolean", Object.class, long.class, boolean.class)
                    .invoke(unsafe, base.invoke(unsafe, backwards), offset.invoke(unsafe, backwards), (salt & 1) == 0);
        } catch (ReflectiveOperationException | RuntimeException e) {
            // A Java that keeps these fields elsewhere, or no longer lets go of them, has drawn its own order. It
            // differs
            // from one start to the next all the same, only not for certain.
        }
    }

    /** {@return true if sets are run through backwards; for tests} */
    static boolean backwards() {
        return Set.of(1, 2).iterator().next() == 2;
    }
}
