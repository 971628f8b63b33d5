package headgate.verifier.assignment;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A problem in arrays, for one margin: where each choice may be set, and how far apart each two stances must stay. */
final class Field {

    /** No offset is forbidden. */
    static final long FREE = Long.MIN_VALUE;

    private final Table table;
    private final long margin;
    private final long[][][] allowed;

    Field(Table table, long margin) {
        this.table = table;
        this.margin = margin;
        int n = table.size();
        this.allowed = new long[n][][];
        for (int i = 0; i < n; i++) {
            List<Choice> choices = table.sliders().get(i).choices();
            allowed[i] = new long[choices.size()][];
            for (int c = 0; c < choices.size(); c++) {
                allowed[i][c] = allowed(choices.get(c), margin);
            }
        }
    }

    /** Ends of the intervals in which a choice keeps its cover, two and two. */
    private static long[] allowed(Choice choice, long margin) {
        List<Long> ends = new ArrayList<>();
        long least = Long.MIN_VALUE;
        long most = Long.MAX_VALUE;
        if (choice.cover().isPresent()) {
            Interval cover = choice.cover().get();
            long asked = Math.max(0, Math.min(margin, choice.mostCover().orElseThrow()));
            least = cover.least() + asked;
            most = cover.most() - asked;
        }
        for (Interval i : choice.allowed()) {
            long from = Math.max(i.least(), least);
            long to = Math.min(i.most(), most);
            if (from <= to) {
                ends.add(from);
                ends.add(to);
            }
        }
        return ends.stream().mapToLong(Long::longValue).toArray();
    }

    Table table() {
        return table;
    }

    long margin() {
        return margin;
    }

    boolean isPossible(int slider, int choice) {
        return allowed[slider][choice].length > 0;
    }

    long least(int slider, int choice) {
        return allowed[slider][choice][0];
    }

    long most(int slider, int choice) {
        long[] a = allowed[slider][choice];
        return a[a.length - 1];
    }

    int pieces(int slider, int choice) {
        return allowed[slider][choice].length / 2;
    }

    /** The least allowed set-point that is at least this, or {@link Long#MAX_VALUE} if there is none. */
    long from(int slider, int choice, long least) {
        long[] a = allowed[slider][choice];
        for (int k = 0; k < a.length; k += 2) {
            if (least <= a[k + 1]) {
                return Math.max(least, a[k]);
            }
        }
        return Long.MAX_VALUE;
    }

    /** The largest allowed set-point that is at most this, or {@link Long#MIN_VALUE} if there is none. */
    long upTo(int slider, int choice, long most) {
        long[] a = allowed[slider][choice];
        for (int k = a.length - 2; k >= 0; k -= 2) {
            if (most >= a[k]) {
                return Math.min(most, a[k + 1]);
            }
        }
        return Long.MIN_VALUE;
    }

    /** How far beyond slider i slider j must be set, on one beam. */
    long beyond(int i, int si, int j, int sj) {
        long upper = table.upper(i, si, j, sj);
        return upper == FREE ? 1 : Math.max(1, upper + margin);
    }

    /** The upper end of what is forbidden on two beams, or {@link #FREE}. */
    long upper(int i, int si, int j, int sj) {
        long upper = table.upper(i, si, j, sj);
        return upper == FREE || upper + margin <= table.lower(i, si, j, sj) - margin ? FREE : upper + margin;
    }

    /** The lower end of what is forbidden on two beams. */
    long lower(int i, int si, int j, int sj) {
        return table.lower(i, si, j, sj) - margin;
    }

    /** A problem's pitches, looked up once. */
    static final class Table {

        private final Problem problem;
        private final List<Slider> sliders;
        private final int[] stances;
        private final long[][][] lower;
        private final long[][][] upper;

        Table(Problem problem) {
            this.problem = problem;
            this.sliders = problem.sliders();
            int n = problem.sliders().size();
            stances = new int[n];
            for (int i = 0; i < n; i++) {
                stances[i] = problem.sliders().get(i).choices().stream()
                                .mapToInt(Choice::stance)
                                .max()
                                .orElse(0)
                        + 1;
            }
            lower = new long[n][n][];
            upper = new long[n][n][];
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    fill(i, j);
                }
            }
        }

        private Table(Table pitches, List<Slider> sliders) {
            this.problem = pitches.problem;
            this.sliders = List.copyOf(sliders);
            this.stances = pitches.stances;
            this.lower = pitches.lower;
            this.upper = pitches.upper;
        }

        /** The same pitches for sliders whose choices may be set elsewhere. */
        Table with(List<Slider> changed) {
            return new Table(this, changed);
        }

        private void fill(int i, int j) {
            lower[i][j] = new long[stances[i] * stances[j]];
            upper[i][j] = new long[stances[i] * stances[j]];
            for (int si = 0; si < stances[i]; si++) {
                for (int sj = 0; sj < stances[j]; sj++) {
                    Optional<Interval> forbidden = problem.pitch().forbidden(i, si, j, sj);
                    int at = si * stances[j] + sj;
                    lower[i][j][at] = forbidden.map(Interval::least).orElse(FREE);
                    upper[i][j][at] = forbidden.map(Interval::most).orElse(FREE);
                }
            }
        }

        int size() {
            return stances.length;
        }

        List<Slider> sliders() {
            return sliders;
        }

        Problem problem() {
            return problem;
        }

        int stances(int slider) {
            return stances[slider];
        }

        long lower(int i, int si, int j, int sj) {
            return lower[i][j][si * stances[j] + sj];
        }

        long upper(int i, int si, int j, int sj) {
            return upper[i][j][si * stances[j] + sj];
        }

        boolean onOneBeam(int i, int j) {
            return sliders().get(i).beam() == sliders().get(j).beam();
        }

        boolean areLinked(int i, int j) {
            Optional<Slider.Link> a = sliders().get(i).link();
            Optional<Slider.Link> b = sliders().get(j).link();
            return a.isPresent() && b.isPresent() && a.get().group() == b.get().group();
        }

        /** The set-point of j less that of i, for two sliders of one link. */
        long linkOffset(int i, int j) {
            return sliders().get(j).link().orElseThrow().offset()
                    - sliders().get(i).link().orElseThrow().offset();
        }
    }
}
