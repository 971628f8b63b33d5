package headgate.verifier.replay;

import java.util.NoSuchElementException;

/** The targets between the first that is still ahead of anything and the last that was read, in the order of travel. */
final class Passing {

    private Target[] ring = new Target[64];
    private int first;
    private int size;

    void add(Target target) {
        if (size == ring.length) {
            Target[] grown = new Target[2 * size];
            for (int i = 0; i < size; i++) {
                grown[i] = get(i);
            }
            ring = grown;
            first = 0;
        }
        ring[(first + size) & (ring.length - 1)] = target;
        size++;
    }

    Target get(int index) {
        if (index < 0 || index >= size) {
            throw new NoSuchElementException("no target " + index + " of " + size);
        }
        return ring[(first + index) & (ring.length - 1)];
    }

    int size() {
        return size;
    }

    void removeFirst() {
        get(0);
        first = (first + 1) & (ring.length - 1);
        size--;
    }

    /** The index of the first target that is at x or ahead of it. */
    int from(double x) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (get(middle).x < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
