package headgate.runtime.wire;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Engagement;
import headgate.api.answer.Phase;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import java.util.Optional;

/** Answers as bytes. */
public final class AnswerCodec {

    private AnswerCodec() {}

    /**
     * Writes an action.
     *
     * @param out where to
     * @param a the action
     */
    public static void action(WireWriter out, Action a) {
        out.maybe(a.declined(), WireWriter::text);
        if (a.declined().isEmpty()) {
            out.list(a.phases(), AnswerCodec::phase);
        }
    }

    /**
     * Reads an action.
     *
     * @param in where from
     * @return the action
     */
    public static Action action(WireReader in) {
        Optional<String> declined = in.maybe(WireReader::text);
        return declined.isPresent() ? Action.decline(declined.get()) : Action.of(in.list(AnswerCodec::phase));
    }

    private static void phase(WireWriter out, Phase p) {
        out.text(p.name());
        out.figure(p.duration());
        ShapeCodec.point3(out, p.toolPoint());
        out.text(p.posture().name());
        out.text(p.contact().name());
        out.maybe(p.treated(), ShapeCodec::outline);
    }

    private static Phase phase(WireReader in) {
        Phase.Builder b = Phase.named(in.text())
                .lasting(in.figure())
                .endingAt(ShapeCodec.point3(in))
                .in(PostureName.of(in.text()));
        String contact = in.text();
        b.touching(Contact.named(contact)
                .orElseThrow(() -> new WireFormatException("no contact is named \"" + contact + '"')));
        in.maybe(ShapeCodec::outline).ifPresent(b::treating);
        return b.build();
    }

    /**
     * Writes an engagement.
     *
     * @param out where to
     * @param e the engagement
     */
    public static void engagement(WireWriter out, Engagement e) {
        out.maybe(e.declined(), WireWriter::text);
        if (e.declined().isEmpty()) {
            ShapeCodec.outline(out, e.engaged().orElseThrow());
            out.figure(e.depth());
            out.figure(e.draft());
            out.figure(e.insertTime());
            out.figure(e.withdrawTime());
            out.figure(e.followingSpeed());
            out.figure(e.followingAcceleration());
        }
    }

    /**
     * Reads an engagement.
     *
     * @param in where from
     * @return the engagement
     */
    public static Engagement engagement(WireReader in) {
        Optional<String> declined = in.maybe(WireReader::text);
        return declined.isPresent()
                ? Engagement.decline(declined.get())
                : Engagement.builder()
                        .engaged(ShapeCodec.outline(in))
                        .depth(in.figure())
                        .draft(in.figure())
                        .insertTime(in.figure())
                        .withdrawTime(in.figure())
                        .following(in.figure(), in.figure())
                        .build();
    }

    /**
     * Writes what came back for a spot task.
     *
     * @param out where to
     * @param answer the answer
     */
    public static void spot(WireWriter out, SpotAnswer answer) {
        if (answer instanceof SpotAnswer.Answered answered) {
            out.flag(true);
            action(out, answered.action());
        } else if (answer instanceof SpotAnswer.Failed failed) {
            out.flag(false);
            FaultCodec.write(out, failed.fault());
        }
    }

    /**
     * Reads what came back for a spot task.
     *
     * @param in where from
     * @return the answer
     */
    public static SpotAnswer spot(WireReader in) {
        return in.flag() ? new SpotAnswer.Answered(action(in)) : new SpotAnswer.Failed(FaultCodec.read(in));
    }

    /**
     * Writes what came back for a row task.
     *
     * @param out where to
     * @param answer the answer
     */
    public static void row(WireWriter out, RowAnswer answer) {
        if (answer instanceof RowAnswer.Answered answered) {
            out.flag(true);
            engagement(out, answered.engagement());
        } else if (answer instanceof RowAnswer.Failed failed) {
            out.flag(false);
            FaultCodec.write(out, failed.fault());
        }
    }

    /**
     * Reads what came back for a row task.
     *
     * @param in where from
     * @return the answer
     */
    public static RowAnswer row(WireReader in) {
        return in.flag() ? new RowAnswer.Answered(engagement(in)) : new RowAnswer.Failed(FaultCodec.read(in));
    }
}
