package headgate.runtime.wire;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import java.time.Duration;

/** Faults as bytes. */
public final class FaultCodec {

    private FaultCodec() {}

    /**
     * Writes a fault.
     *
     * @param out where to
     * @param fault the fault
     */
    public static void write(WireWriter out, HeadFault fault) {
        if (fault instanceof HeadFault.StartFailed f) {
            head(out, 0, fault);
            out.text(f.reason());
        } else if (fault instanceof HeadFault.NoHead f) {
            head(out, 1, fault);
            out.text(f.reason());
        } else if (fault instanceof HeadFault.Exited f) {
            head(out, 2, fault);
            out.number(f.code());
        } else if (fault instanceof HeadFault.TimedOut f) {
            head(out, 3, fault);
            out.number(f.limit().toNanos());
        } else if (fault instanceof HeadFault.OutOfMemory) {
            head(out, 4, fault);
        } else if (fault instanceof HeadFault.StackOverflow) {
            head(out, 5, fault);
        } else if (fault instanceof HeadFault.Threw f) {
            head(out, 6, fault);
            out.text(f.type());
            out.text(f.message());
        } else if (fault instanceof HeadFault.ReturnedNull) {
            head(out, 7, fault);
        } else if (fault instanceof HeadFault.OutputFlood f) {
            head(out, 8, fault);
            out.number(f.limit());
        } else if (fault instanceof HeadFault.BadFrame f) {
            head(out, 9, fault);
            out.text(f.problem());
        } else if (fault instanceof HeadFault.LeftThread f) {
            head(out, 10, fault);
            out.text(f.thread());
        } else if (fault instanceof HeadFault.WrongKind) {
            head(out, 11, fault);
        } else if (fault instanceof HeadFault.TooSlow f) {
            head(out, 13, fault);
            out.number(f.tasks());
            out.number(f.limit().toNanos());
        } else if (fault instanceof HeadFault.OutOfProcessorTime f) {
            head(out, 14, fault);
            out.number(f.limit().toNanos());
        } else {
            head(out, 12, fault);
        }
    }

    private static void head(WireWriter out, int tag, HeadFault fault) {
        out.octet(tag);
        out.text(fault.stage().name());
    }

    /**
     * Reads a fault.
     *
     * @param in where from
     * @return the fault
     */
    public static HeadFault read(WireReader in) {
        int tag = in.octet();
        HeadStage stage = in.constant(HeadStage.class);
        return switch (tag) {
            case 0 -> new HeadFault.StartFailed(in.text());
            case 1 -> new HeadFault.NoHead(in.text());
            case 2 -> new HeadFault.Exited(stage, in.number());
            case 3 -> new HeadFault.TimedOut(stage, Duration.ofNanos(in.longNumber()));
            case 4 -> new HeadFault.OutOfMemory(stage);
            case 5 -> new HeadFault.StackOverflow(stage);
            case 6 -> new HeadFault.Threw(stage, in.text(), in.text());
            case 7 -> new HeadFault.ReturnedNull(stage);
            case 8 -> new HeadFault.OutputFlood(stage, in.longNumber());
            case 9 -> new HeadFault.BadFrame(stage, in.text());
            case 10 -> new HeadFault.LeftThread(stage, in.text());
            case 11 -> new HeadFault.WrongKind(stage);
            case 12 -> new HeadFault.NotRecorded(stage);
            case 13 -> new HeadFault.TooSlow(stage, in.longNumber(), Duration.ofNanos(in.longNumber()));
            case 14 -> new HeadFault.OutOfProcessorTime(stage, Duration.ofNanos(in.longNumber()));
            default -> throw new WireFormatException("no fault has the number " + tag);
        };
    }
}
