package headgate.verifier.replay;

import org.jspecify.annotations.Nullable;

/** Actions by what the head was asked: a hash table over plain arrays, so that looking up makes nothing. */
final class KnownActions {

    private long[] places = new long[64];
    private @Nullable TaskKind[] kinds = new @Nullable TaskKind[64];
    private @Nullable HeadAction[] actions = new @Nullable HeadAction[64];
    private int size;

    @Nullable
    HeadAction get(TaskKind kind, long place) {
        return actions[slot(kind, place)];
    }

    void put(TaskKind kind, long place, HeadAction action) {
        int slot = slot(kind, place);
        if (actions[slot] == null) {
            size++;
        }
        places[slot] = place;
        kinds[slot] = kind;
        actions[slot] = action;
        if (2 * size > actions.length) {
            grow();
        }
    }

    /** Where it is, or where it would be put. */
    private int slot(TaskKind kind, long place) {
        int last = places.length - 1;
        // A place along travel stands in the upper bits, and a product alone never carries those down.
        long folded = (place ^ (place >>> 32)) + kind.hashCode() * 0x9E3779B97F4A7C15L;
        long mixed = (folded ^ (folded >>> 29)) * 0xD6E8FEB86659FD93L;
        int slot = ((int) (mixed >>> 32)) & last;
        while (actions[slot] != null && !(places[slot] == place && kind.equals(kinds[slot]))) {
            slot = (slot + 1) & last;
        }
        return slot;
    }

    private void grow() {
        long[] oldPlaces = places;
        @Nullable TaskKind[] oldKinds = kinds;
        @Nullable HeadAction[] oldActions = actions;
        places = new long[2 * oldPlaces.length];
        kinds = new @Nullable TaskKind[places.length];
        actions = new @Nullable HeadAction[places.length];
        for (int i = 0; i < oldPlaces.length; i++) {
            TaskKind kind = oldKinds[i];
            HeadAction action = oldActions[i];
            if (kind != null && action != null) {
                int slot = slot(kind, oldPlaces[i]);
                places[slot] = oldPlaces[i];
                kinds[slot] = kind;
                actions[slot] = action;
            }
        }
    }
}
