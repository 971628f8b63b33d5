package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.EarliestDue;
import headgate.verifier.dispatch.Jobs;
import headgate.verifier.dispatch.MostTreatable;
import headgate.verifier.interlock.ToolWay;
import headgate.verifier.replay.Chance.Draw;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * One replay: one source of plants under one setting. A machine that goes on until it is done or needs an answer that is
 * not in the book; then it says what it wants to know. What comes out does not depend on when it is told.
 *
 * <p>All events of one instant are taken together; then every arm that is free and has something new decides, in the order
 * of the arms. A decision changes nothing until it is made, so one that lacks an answer is begun again later.
 */
public final class Replay {

    /** Room for rounding of times, s. */
    private static final double SLACK = 1e-9;

    /** Sums of times that are taken in another order differ by less, s. */
    private static final double ROUNDING = 1e-6;

    /** How far an arm waits before it tries again where material that never moves is in its way, micrometres. */
    private static final double BLOCKED_STEP = 10_000;

    private final ReplaySetting setting;
    private final AnswerBook book;
    private final ActionObserver observer;
    private final Sightings sightings;
    private final Chance chance;
    private final List<ArmState> arms = new ArrayList<>();
    private final EventQueue events = new EventQueue();
    private final Passing passing = new Passing();
    private final Jobs jobs = new Jobs();
    private final List<Candidate> jobOf = new ArrayList<>();
    private final Tally tally = new Tally();
    private final Set<AnswerBook.Question> wanted = new LinkedHashSet<>();
    private final double perSecond;
    private final double rear;
    private final boolean interlocked;
    private final int readAhead;
    private final @Nullable BoundTally bound;
    private final double aim;

    /** When any arm knows of something at x = 0 at the soonest, less what rounding may do, s. */
    private final double soonest;

    private double treatedRadius;
    private double now = Double.NEGATIVE_INFINITY;
    private long firstX = Long.MIN_VALUE;
    private int admitted;
    private boolean readAll;
    private boolean deciding;
    private long instant;
    private @Nullable ReplayOutcome outcome;

    /**
     * How a replay is run. Nothing of it changes what becomes of the plants but the dispatch.
     *
     * @param dispatch makes the dispatch of each arm
     * @param observer is told of every action
     * @param bound true to work out how many plants any dispatch could have reached
     * @param readAhead how many targets are read ahead, so that heads are asked for many plants at once
     */
    public record Options(Supplier<Dispatch> dispatch, ActionObserver observer, boolean bound, int readAhead) {

        /** Earliest due first, nobody is told, no bound. */
        public static final Options USUAL = new Options(EarliestDue::new, ActionObserver.NONE, false, 256);

        /**
         * The same with an observer.
         *
         * @param changed is told of every action
         * @return the options
         */
        public Options withObserver(ActionObserver changed) {
            return new Options(dispatch, changed, bound, readAhead);
        }

        /** {@return the same with the upper bound worked out} */
        public Options withBound() {
            return new Options(dispatch, observer, true, readAhead);
        }
    }

    /**
     * A replay with the usual options.
     *
     * @param setting all that is fixed
     * @param plants the plants
     * @param book the heads' answers; shared with the replays that run together
     */
    public Replay(ReplaySetting setting, PlantSource plants, AnswerBook book) {
        this(setting, plants, book, Options.USUAL);
    }

    /**
     * A replay.
     *
     * @param setting all that is fixed
     * @param plants the plants
     * @param book the heads' answers; shared with the replays that run together
     * @param options how it is run
     */
    public Replay(ReplaySetting setting, PlantSource plants, AnswerBook book, Options options) {
        this.setting = setting;
        this.book = book;
        this.observer = options.observer();
        this.readAhead = options.readAhead();
        this.bound = options.bound() ? new BoundTally() : null;
        this.sightings = new Sightings(setting, plants);
        this.chance = new Chance(setting.seed());
        this.perSecond = setting.speed() * 1e6;
        this.interlocked = !setting.interlocks().all().isEmpty();
        for (int i = 0; i < setting.arms().size(); i++) {
            arms.add(new ArmState(i, setting, options.dispatch().get()));
        }
        link();
        this.soonest = arms.stream()
                        .mapToDouble(a -> a.soonestKnown(setting.speed(), setting.ahead()))
                        .min()
                        .orElseThrow()
                - ROUNDING;
        this.aim = setting.tools().stream()
                .mapToDouble(t -> t.sheet().accuracy().aimTolerance().value() * 1e6)
                .max()
                .orElse(0);
        this.rear = arms.stream()
                .mapToDouble(a -> a.arm.mountX() + a.reach.rear() + behind(a))
                .min()
                .orElseThrow();
    }

    /** Crop plants are kept until no leaf of them can touch what of the head is behind its reach, micrometres. */
    private static double behind(ArmState arm) {
        return arm.sweep == null ? 0 : Math.min(0, arm.sweep.rear() - arm.reach.rear()) - CropSweep.WIDEST;
    }

    private void link() {
        for (LinkGroup group : setting.links()) {
            List<ArmState> members = group.arms().stream().map(arms::get).toList();
            for (ArmState member : members) {
                member.linked = members;
                long least = members.stream()
                        .mapToLong(m -> m.arm.shift().least() - m.mount)
                        .max()
                        .orElseThrow();
                long most = members.stream()
                        .mapToLong(m -> m.arm.shift().most() - m.mount)
                        .min()
                        .orElseThrow();
                member.shift = new Interval(member.mount + least, member.mount + most);
            }
        }
    }

    /** {@return what came of it; empty until it is done} */
    public Optional<ReplayOutcome> outcome() {
        return Optional.ofNullable(outcome);
    }

    /** {@return what it needs to know to go on; empty if it is done} */
    public List<AnswerBook.Question> wanted() {
        return List.copyOf(wanted);
    }

    /**
     * Goes on until it is done or needs to know something.
     *
     * @return true if it is done
     */
    public boolean advance() {
        wanted.clear();
        while (outcome == null) {
            if (!deciding && !nextInstant()) {
                if (!retire(Double.POSITIVE_INFINITY)) {
                    return false;
                }
                outcome = tally.outcome(
                        setting,
                        arms,
                        bound == null ? OptionalLong.empty() : OptionalLong.of(bound.total()),
                        sightings.beside());
                return true;
            }
            deciding = true;
            if (!decideAll()) {
                prefetch();
                return false;
            }
            if (!retire(now)) {
                return false;
            }
            deciding = false;
        }
        return true;
    }

    // ---- time and targets

    /** Takes all events of the next instant; false if there is none. */
    private boolean nextInstant() {
        admit();
        if (events.isEmpty()) {
            return false;
        }
        now = events.nextTime();
        instant++;
        while (events.nextTime() == now) {
            Candidate known = events.nextKnown();
            ArmState arm = arms.get(events.nextArm());
            if (known != null) {
                arm.waiting.add(known);
            }
            arm.mustDecide = true;
            events.removeNext();
            // What becomes known may be a target that was not admitted when this instant began.
            admit();
        }
        return true;
    }

    /** Admits every target that may become known before the next event, or with it. */
    private void admit() {
        while (true) {
            if (admitted == passing.size() && !readOne()) {
                return;
            }
            Target next = passing.get(admitted);
            if (next.x / perSecond + soonest > events.nextTime()) {
                return;
            }
            admit(next);
            admitted++;
        }
    }

    private boolean readOne() {
        if (readAll) {
            return false;
        }
        Target target = sightings.next();
        if (target == null) {
            readAll = true;
            return false;
        }
        firstX = firstX == Long.MIN_VALUE ? target.x : firstX;
        passing.add(target);
        return true;
    }

    /** Reads on until every target up to x is there. */
    private void readTo(double x) {
        while (passing.size() == 0 || passing.get(passing.size() - 1).x <= x) {
            if (!readOne()) {
                return;
            }
        }
    }

    private void admit(Target target) {
        if (target.nature == Target.Nature.CROP) {
            return;
        }
        for (ArmState arm : arms) {
            if (target.nature == Target.Nature.WANTED && !arm.takes(target)) {
                target.failed(Miss.OUTSIDE_RANGE);
                continue;
            }
            if (!arm.covers(target.y)) {
                target.failed(Miss.NEVER_IN_REACH);
                continue;
            }
            double known = arm.known(target, setting.speed(), setting.ahead());
            if (Double.isInfinite(known)) {
                target.failed(Miss.UNSEEN);
                continue;
            }
            if (!target.isDetection()) {
                target.failed(Miss.NEVER_IN_REACH);
                continue;
            }
            if (known > time(target, arm, arm.reach.rear())) {
                target.failed(Miss.SEEN_TOO_LATE);
                continue;
            }
            Candidate candidate = new Candidate(target, arm.index, known);
            target.candidates.add(candidate);
            events.known(known, candidate);
        }
    }

    /** When a target is so far ahead of an arm's mount, s. */
    private double time(Target target, ArmState arm, double ahead) {
        return (target.x - arm.arm.mountX() - ahead) / perSecond;
    }

    /** How far ahead of an arm's mount a target is, micrometres. */
    private double ahead(Target target, ArmState arm, double time) {
        return target.x - arm.arm.mountX() - perSecond * time;
    }

    /** Counts the targets that nothing reaches any more; false if an answer is needed to say why one was missed. */
    private boolean retire(double until) {
        while (passing.size() > 0) {
            Target target = passing.get(0);
            if ((target.x - rear) / perSecond >= until || admitted == 0) {
                return true;
            }
            if ((!target.taken || bound != null) && !explain(target)) {
                return false;
            }
            if (bound != null) {
                addToBound(target, bound);
            }
            tally.gone(target);
            passing.removeFirst();
            admitted--;
        }
        return true;
    }

    private boolean explain(Target target) {
        boolean complete = true;
        for (Candidate candidate : target.candidates) {
            ArmState arm = arms.get(candidate.arm);
            if (!candidate.closed && !prepare(arm, candidate)) {
                complete = false;
            } else if (!candidate.closed && !target.taken) {
                close(candidate, overdue(candidate));
            }
        }
        return complete;
    }

    private void addToBound(Target target, BoundTally sum) {
        if (target.nature != Target.Nature.WANTED) {
            return;
        }
        double near = treatedRadius + aim + 1000;
        readTo(target.x + near);
        for (int i = 1; i < passing.size() && passing.get(i).x <= target.x + near; i++) {
            Target other = passing.get(i);
            if (other.nature == Target.Nature.WANTED && other.squaredDistance(target) <= near * near) {
                target.crowded = true;
                other.crowded = true;
            }
        }
        if (target.crowded) {
            sum.addFree();
            return;
        }
        List<MostTreatable.Chance> chances = new ArrayList<>();
        for (Candidate candidate : target.candidates) {
            if (candidate.leastBusy < Double.POSITIVE_INFINITY) {
                chances.add(chance(arms.get(candidate.arm), candidate));
            }
        }
        sum.add(chances);
    }

    /** The widest window that an arm can have for a plant, and the least time that it is busy with it. */
    private MostTreatable.Chance chance(ArmState arm, Candidate candidate) {
        boolean shifts = arm.shift.length() > 0;
        double[] pieces = candidate.pieces;
        double front = shifts || pieces.length == 0 ? arm.reach.front() : pieces[0];
        double end = shifts || pieces.length == 0 ? arm.reach.rear() : pieces[pieces.length - 1];
        double release = Math.max(candidate.known, time(candidate.target, arm, front) - candidate.mostApproach);
        double lastStart = time(candidate.target, arm, end) - candidate.leastApproach - candidate.leastInGround;
        return new MostTreatable.Chance(
                arm.index, release - SLACK, lastStart + candidate.leastBusy + SLACK, candidate.leastBusy);
    }

    /** Asks early for the plants that come next, so that one trip to the heads serves many. */
    private void prefetch() {
        while (passing.size() - admitted < readAhead && readOne()) {
            // Reading is all.
        }
        int end = Math.min(passing.size(), admitted + readAhead);
        for (int i = 0; i < end; i++) {
            Target target = passing.get(i);
            if (!target.taken && target.isDetection()) {
                for (ArmState arm : arms) {
                    prefetch(target, arm);
                }
            }
        }
    }

    /** Asks what will be asked for sure: an arm that does not shift, and the head's first lead. */
    private void prefetch(Target target, ArmState arm) {
        if (arm.shift.length() > 0 || !arm.covers(target.y)) {
            return;
        }
        boolean range = target.nature != Target.Nature.WANTED || arm.takes(target);
        double[] pieces = arm.reach.pieces(target.y - arm.mount);
        double known = arm.known(target, setting.speed(), setting.ahead());
        if (range && pieces.length > 0 && known <= time(target, arm, arm.reach.rear())) {
            find(arm, arm.task(target, arm.mount, pieces[0], setting));
        }
    }

    // ---- decisions

    private boolean decideAll() {
        boolean complete = true;
        for (ArmState arm : arms) {
            if (arm.mustDecide && arm.freeAt <= now) {
                if (!complete) {
                    // Whoever decides first changes what is left for the others.
                    continue;
                }
                if (decide(arm)) {
                    arm.mustDecide = false;
                } else {
                    complete = false;
                }
            }
        }
        return complete;
    }

    /** Lets an arm begin something, or wait; false if it lacks an answer. */
    private boolean decide(ArmState arm) {
        if (heldForShift(arm)) {
            return true;
        }
        while (true) {
            if (!listJobs(arm)) {
                return false;
            }
            if (jobs.size() == 0) {
                return true;
            }
            int job = arm.dispatch.next(jobs, now);
            if (job == Dispatch.NONE) {
                return true;
            }
            if (jobs.ready(job) > now) {
                events.wake(jobs.ready(job), arm.index);
                return true;
            }
            Candidate candidate = jobOf.get(job);
            double start = now + arm.shiftTime(candidate.mount);
            if (candidate.mount != arm.mount && waitsForLinked(arm, candidate)) {
                return true;
            }
            HeadAction action = find(
                    arm, arm.task(candidate.target, candidate.mount, ahead(candidate.target, arm, start), setting));
            if (action == null) {
                return false;
            }
            if (fits(arm, candidate, action, start) && clear(arm, candidate, action)) {
                begin(arm, candidate, action, start);
                return true;
            }
        }
    }

    /** Another arm of the group waits for all to come to rest. */
    private boolean heldForShift(ArmState arm) {
        if (arm.linked.size() == 1) {
            return false;
        }
        for (ArmState other : arm.linked) {
            Candidate held = other.waitsToShift;
            if (held == null || other == arm) {
                continue;
            }
            if (held.target.taken || held.closed || held.over() < now) {
                other.waitsToShift = null;
            } else {
                return true;
            }
        }
        if (arm.waitsToShift != null) {
            arm.waitsToShift = null;
            // The others of the group were held back for it, and may begin something if it does not shift after all.
            for (ArmState other : arm.linked) {
                if (other != arm) {
                    events.wake(now, other.index);
                }
            }
        }
        return false;
    }

    private boolean waitsForLinked(ArmState arm, Candidate candidate) {
        for (ArmState other : arm.linked) {
            if (other != arm && other.freeAt > now) {
                arm.waitsToShift = candidate;
                events.wake(other.freeAt, arm.index);
                return true;
            }
        }
        return false;
    }

    /** Lists what an arm could do; false if an answer is missing. */
    private boolean listJobs(ArmState arm) {
        jobs.clear();
        jobOf.clear();
        boolean complete = true;
        int kept = 0;
        for (int i = 0; i < arm.waiting.size(); i++) {
            Candidate candidate = arm.waiting.get(i);
            if (candidate.target.taken || candidate.closed) {
                continue;
            }
            if (!prepare(arm, candidate)) {
                complete = false;
            } else if (!candidate.closed) {
                list(arm, candidate);
            }
            if (!candidate.closed) {
                arm.waiting.set(kept++, candidate);
            }
        }
        arm.waiting.subList(kept, arm.waiting.size()).clear();
        return complete;
    }

    private void list(ArmState arm, Candidate candidate) {
        double shift = arm.shiftTime(candidate.mount);
        if (now + shift > candidate.over() + SLACK) {
            nextPiece(candidate, overdue(candidate));
            if (!candidate.closed) {
                arm.mustDecide = true;
                events.wake(now, arm.index);
            }
            return;
        }
        if (candidate.leaves - candidate.enters < candidate.inGround - SLACK) {
            nextPiece(candidate, Miss.WINDOW_TOO_SHORT);
            if (!candidate.closed) {
                events.wake(now, arm.index);
            }
            return;
        }
        if (candidate.waitsUntil > instant) {
            return;
        }
        if (!hasSupply(arm, candidate)) {
            candidate.missedForSupply = true;
            return;
        }
        double ready = Math.max(candidate.earliest() - shift, now);
        // By the first answer it may be too late, but the head may need less time from where the plant is now.
        double last = Math.max(candidate.latest() - shift, ready);
        jobs.add(ready, last, candidate.busy + shift, candidate.target.number);
        jobOf.add(candidate);
    }

    private Miss overdue(Candidate candidate) {
        if (candidate.known > candidate.latest() + SLACK) {
            return Miss.SEEN_TOO_LATE;
        }
        if (candidate.leaves - candidate.enters < candidate.inGround - SLACK) {
            return Miss.WINDOW_TOO_SHORT;
        }
        if (candidate.missedForSupply) {
            return Miss.MAGAZINE_EMPTY;
        }
        return candidate.blocked ? Miss.BLOCKED : Miss.ARM_BUSY;
    }

    private static void close(Candidate candidate, Miss why) {
        candidate.closed = true;
        candidate.target.failed(why);
    }

    private static void nextPiece(Candidate candidate, Miss why) {
        candidate.piece++;
        candidate.lead = 0;
        candidate.planned = false;
        candidate.notBefore = Double.NEGATIVE_INFINITY;
        if (2 * candidate.piece >= candidate.pieces.length) {
            close(candidate, why);
        }
    }

    /** Places a candidate and asks what the head would do; false if an answer is missing. */
    private boolean prepare(ArmState arm, Candidate candidate) {
        if (!candidate.placed || candidate.placedFor != arm.mount) {
            place(arm, candidate);
        }
        while (!candidate.planned && !candidate.closed) {
            double begin = candidate.pieces[2 * candidate.piece];
            double end = candidate.pieces[2 * candidate.piece + 1];
            double lead = arm.leads[candidate.lead];
            HeadAction action =
                    find(arm, arm.task(candidate.target, candidate.mount, begin + perSecond * lead, setting));
            if (action == null) {
                return false;
            }
            candidate.enters = time(candidate.target, arm, begin);
            candidate.leaves = time(candidate.target, arm, end);
            if (!action.declined()) {
                answered(candidate, action);
                candidate.approach = action.approach();
                candidate.inGround = action.inGround();
                candidate.busy = action.busy();
                candidate.planned = true;
            } else if (++candidate.lead == arm.leads.length) {
                nextPiece(candidate, Miss.WINDOW_TOO_SHORT);
            }
        }
        return true;
    }

    private void place(ArmState arm, Candidate candidate) {
        long offset = candidate.target.y - arm.mount;
        double[] here = arm.reach.pieces(offset);
        long mount = arm.mount;
        if (here.length == 0) {
            long best = arm.reach.bestOffset(
                    offset, candidate.target.y - arm.shift.most(), candidate.target.y - arm.shift.least());
            mount = candidate.target.y - best;
            here = arm.reach.pieces(best);
        }
        boolean moved = candidate.placed && mount != candidate.mount;
        candidate.placed = true;
        candidate.placedFor = arm.mount;
        candidate.mount = mount;
        candidate.pieces = here;
        if (moved) {
            candidate.piece = 0;
            candidate.lead = 0;
            candidate.planned = false;
            candidate.notBefore = Double.NEGATIVE_INFINITY;
        }
        if (here.length == 0) {
            close(candidate, Miss.NEVER_IN_REACH);
        }
    }

    private @Nullable HeadAction find(ArmState arm, LatticeSpotTask task) {
        HeadAction action = book.find(arm.arm.tool(), task);
        if (action == null) {
            wanted.add(new AnswerBook.Question(arm.arm.tool(), task));
        }
        return action;
    }

    /** Whether what the head answers now keeps the start window; if not, says when or where to try again. */
    private boolean fits(ArmState arm, Candidate candidate, HeadAction action, double start) {
        double entry = candidate.enters - arm.leads[candidate.lead];
        if (action.declined()) {
            if (start < entry - SLACK) {
                candidate.notBefore = entry;
            } else {
                boolean late = start > candidate.earliest() + SLACK;
                nextPiece(candidate, late ? overdue(candidate) : Miss.WINDOW_TOO_SHORT);
            }
            return false;
        }
        answered(candidate, action);
        double contact = start + action.approach();
        if (contact < candidate.enters - SLACK) {
            candidate.notBefore = start + Math.max(candidate.enters - contact, 2 * SLACK);
            return false;
        }
        if (contact + action.inGround() > candidate.leaves + SLACK) {
            nextPiece(candidate, overdue(candidate));
            return false;
        }
        return true;
    }

    private void answered(Candidate candidate, HeadAction action) {
        candidate.answered(action);
        treatedRadius = Math.max(treatedRadius, action.treatedRadius());
    }

    /** Whether the action keeps off every neighbour for as long as both may take; if not, says when to try again. */
    private boolean clear(ArmState arm, Candidate candidate, HeadAction action) {
        if (!interlocked) {
            return true;
        }
        List<ToolWay> ways = action.ways(arm.arm.facing());
        if (!setting.interlocks().mayAct(arm.arm.id(), ways)) {
            candidate.blocked = true;
            candidate.notBefore = now + BLOCKED_STEP / perSecond;
            return false;
        }
        for (ArmState other : arms) {
            boolean acts = other != arm && other.heldUntil > now;
            if (acts && !setting.interlocks().mayCoincide(arm.arm.id(), ways, other.arm.id(), other.doing)) {
                candidate.blocked = true;
                candidate.waitsUntil = instant + 1;
                return false;
            }
        }
        return true;
    }

    // ---- supplies

    private long row(Target target) {
        return setting.rowLength().isPresent()
                ? (long) Math.floor((target.x - firstX) / (setting.rowLength().getAsDouble() * 1e6))
                : 0;
    }

    private boolean hasSupply(ArmState arm, Candidate candidate) {
        Magazine magazine = arm.magazine().orElse(null);
        return magazine == null
                || arm.charge >= magazine.perAction()
                || magazine.place() == Magazine.Place.ANYWHERE
                || row(candidate.target) > arm.row;
    }

    /** Fills a head that is empty, or that has come to a new row, and takes what the action uses. */
    private void useSupply(ArmState arm, Target target) {
        Magazine magazine = arm.magazine().orElse(null);
        if (magazine == null) {
            return;
        }
        long row = row(target);
        boolean fill = magazine.place() == Magazine.Place.ANYWHERE ? arm.charge < magazine.perAction() : row > arm.row;
        if (fill && magazine.allAtOnce()) {
            tally.stopped += magazine.refillTime();
            for (ArmState other : arms) {
                if (other.arm.tool() == arm.arm.tool()) {
                    fill(other, magazine, row);
                }
            }
        } else if (fill) {
            tally.stopped += magazine.refillTime();
            fill(arm, magazine, row);
        }
        arm.charge -= magazine.perAction();
    }

    private static void fill(ArmState arm, Magazine magazine, long row) {
        arm.charge = magazine.capacity();
        arm.row = Math.max(arm.row, row);
        arm.refills++;
    }

    // ---- actions

    private void begin(ArmState arm, Candidate candidate, HeadAction action, double start) {
        Target target = candidate.target;
        useSupply(arm, target);
        double end = start + action.busy();
        long before = arm.mount;
        if (interlocked) {
            arm.doing = action.ways(arm.arm.facing());
            arm.heldUntil = start + Math.max(action.busy(), arm.most);
            wakeAll(arm.heldUntil);
        }
        if (candidate.mount != before) {
            arm.shifting += start - now;
            for (ArmState other : arm.linked) {
                other.mount += candidate.mount - before;
                if (other != arm) {
                    other.freeAt = start;
                    events.wake(start, other.index);
                }
            }
        }
        arm.waitsToShift = null;
        arm.actions++;
        arm.acting += action.busy();
        arm.freeAt = end;
        events.wake(end, arm.index);
        int treated = treat(arm, target, action, start);
        sweep(arm, target, action, start);
        observer.acted(new ActionObserver.Done(
                arm.index,
                target.x,
                target.y,
                now,
                start,
                start + action.approach(),
                start + action.approach() + action.inGround(),
                end,
                candidate.mount,
                treated));
    }

    private void wakeAll(double time) {
        for (ArmState arm : arms) {
            events.wake(time, arm.index);
        }
    }

    /** Marks what an action treats: its own plant, and every other one in the ground that it treats. */
    private int treat(ArmState arm, Target own, HeadAction action, double start) {
        take(own, false);
        int treated = own.nature == Target.Nature.WANTED ? 1 : 0;
        for (HeadAction.Leg leg : action.legs()) {
            if (leg.treated() == null) {
                continue;
            }
            int sign = -arm.arm.facing().sign();
            double atX = arm.arm.mountX()
                    + perSecond * (start + leg.end())
                    + sign * leg.to().x();
            double atY = arm.mount + sign * leg.to().y();
            long half = Math.max(
                    Math.abs(leg.treated().xExtent().least()),
                    Math.abs(leg.treated().xExtent().most()));
            readTo(atX + half);
            for (int i = passing.from(atX - half); i < passing.size(); i++) {
                Target other = passing.get(i);
                if (other.x > atX + half) {
                    break;
                }
                if (other != own && !other.treated && inside(leg, sign, other.x - atX, other.y - atY)) {
                    if (other.nature == Target.Nature.WANTED && !other.taken) {
                        take(other, true);
                        treated++;
                    } else if (other.isCrop()) {
                        other.lost = true;
                    }
                }
            }
        }
        return treated;
    }

    /** Counts what an action does to the crop, and to plugs that stand already. */
    private void sweep(ArmState arm, Target own, HeadAction action, double start) {
        CropSweep sweep = arm.sweep;
        if (sweep == null) {
            return;
        }
        double mountX = arm.arm.mountX() + perSecond * start;
        double[] extent = sweep.extent(action);
        double last = mountX + extent[1] + CropSweep.WIDEST;
        readTo(last);
        for (int i = passing.from(mountX + extent[0] - CropSweep.WIDEST); i < passing.size(); i++) {
            Target plant = passing.get(i);
            if (plant.x > last) {
                return;
            }
            if (plant == own || plant.lost || !plant.stands()) {
                continue;
            }
            CropSweep.Meeting meeting = sweep.meeting(action, plant, mountX, (double) arm.mount);
            plant.lost |= meeting == CropSweep.Meeting.PLANT;
            plant.touched |= meeting == CropSweep.Meeting.LEAVES;
        }
    }

    private static boolean inside(HeadAction.Leg leg, int sign, double dx, double dy) {
        return leg.treated() != null && leg.treated().contains(new Point(Math.round(sign * dx), Math.round(sign * dy)));
    }

    private void take(Target target, boolean alongside) {
        target.taken = true;
        switch (target.nature) {
            case WANTED -> {
                target.treated = true;
                target.alongside = alongside;
                boolean works = chance.happens(setting.success().of(target.kind), target.number, Draw.SUCCESS);
                if (target.kind.equals(PlantClass.PLUG)) {
                    works &= tally.established(target, setting.plugs(), chance);
                }
                target.successful = works;
            }
            case CROP_TAKEN -> {
                target.lost = true;
                tally.falseActions++;
            }
            default -> tally.falseActions++;
        }
    }
}
