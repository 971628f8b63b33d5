package headgate.verifier.plot;

import headgate.verifier.replay.ActionObserver;
import headgate.verifier.replay.ArmUse;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Results as bytes, field by field, so that what is read back is equal to what was written. */
final class ResultCodec {

    /** Stands for a count that is not known. */
    private static final long NONE = -1;

    private ResultCodec() {}

    /** Reads one thing of a list. */
    private interface Item<T> {
        T read(DataInputStream in) throws IOException;
    }

    static void write(PlotResult result, DataOutputStream out) throws IOException {
        out.writeUTF(result.name());
        out.writeUTF(result.sha256());
        out.writeBoolean(result.madeUp());
        out.writeDouble(result.density().orElse(Double.NaN));
        out.writeLong(result.asked());
        out.writeInt(result.passes().size());
        for (PlotResult.Pass pass : result.passes()) {
            write(pass.outcome(), out);
            out.writeInt(pass.timeline().size());
            for (ActionObserver.Done done : pass.timeline()) {
                write(done, out);
            }
        }
    }

    static PlotResult read(DataInputStream in) throws IOException {
        String name = in.readUTF();
        String sha256 = in.readUTF();
        boolean madeUp = in.readBoolean();
        double density = in.readDouble();
        return new PlotResult(
                name,
                sha256,
                madeUp,
                Double.isNaN(density) ? OptionalDouble.empty() : OptionalDouble.of(density),
                in.readLong(),
                list(in, ResultCodec::pass));
    }

    private static <T> List<T> list(DataInputStream in, Item<T> item) throws IOException {
        int size = in.readInt();
        List<T> items = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            items.add(item.read(in));
        }
        return items;
    }

    private static PlotResult.Pass pass(DataInputStream in) throws IOException {
        return new PlotResult.Pass(outcome(in), list(in, ResultCodec::done));
    }

    private static void write(ReplayOutcome outcome, DataOutputStream out) throws IOException {
        out.writeLong(outcome.targets());
        out.writeInt(outcome.missed().size());
        for (Map.Entry<Miss, Long> missed : outcome.missed().entrySet()) {
            out.writeUTF(missed.getKey().name());
            out.writeLong(missed.getValue());
        }
        out.writeLong(outcome.reached());
        out.writeLong(outcome.alongside());
        out.writeLong(outcome.successful());
        out.writeLong(outcome.falseActions());
        out.writeLong(outcome.crop().plants());
        out.writeLong(outcome.crop().lost());
        out.writeLong(outcome.crop().touched());
        ReplayOutcome.Planting planting = outcome.planting();
        out.writeLong(planting.actions());
        out.writeLong(planting.empty());
        out.writeLong(planting.doubles());
        out.writeLong(planting.fallen());
        out.writeLong(planting.bare());
        out.writeLong(planting.errors());
        out.writeDouble(planting.meanError());
        out.writeDouble(planting.worstError());
        out.writeInt(outcome.arms().size());
        for (ArmUse arm : outcome.arms()) {
            out.writeUTF(arm.arm());
            out.writeLong(arm.actions());
            out.writeDouble(arm.acting());
            out.writeDouble(arm.shifting());
            out.writeLong(arm.refills());
        }
        out.writeInt(outcome.blocks().size());
        for (ReplayOutcome.Block block : outcome.blocks()) {
            out.writeLong(block.targets());
            out.writeLong(block.successful());
        }
        out.writeDouble(outcome.travelled());
        out.writeDouble(outcome.speed());
        out.writeDouble(outcome.stopped());
        out.writeLong(outcome.mostTreatable().orElse(NONE));
        out.writeLong(outcome.beside());
    }

    private static ReplayOutcome outcome(DataInputStream in) throws IOException {
        long targets = in.readLong();
        Map<Miss, Long> missed = new EnumMap<>(Miss.class);
        int reasons = in.readInt();
        for (int i = 0; i < reasons; i++) {
            missed.put(Miss.valueOf(in.readUTF()), in.readLong());
        }
        return new ReplayOutcome(
                targets,
                missed,
                in.readLong(),
                in.readLong(),
                in.readLong(),
                in.readLong(),
                new ReplayOutcome.Crop(in.readLong(), in.readLong(), in.readLong()),
                new ReplayOutcome.Planting(
                        in.readLong(),
                        in.readLong(),
                        in.readLong(),
                        in.readLong(),
                        in.readLong(),
                        in.readLong(),
                        in.readDouble(),
                        in.readDouble()),
                list(
                        in,
                        each -> new ArmUse(
                                each.readUTF(),
                                each.readLong(),
                                each.readDouble(),
                                each.readDouble(),
                                each.readLong())),
                list(in, each -> new ReplayOutcome.Block(each.readLong(), each.readLong())),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                optional(in.readLong()),
                in.readLong());
    }

    private static OptionalLong optional(long count) {
        return count == NONE ? OptionalLong.empty() : OptionalLong.of(count);
    }

    private static void write(ActionObserver.Done done, DataOutputStream out) throws IOException {
        out.writeInt(done.arm());
        out.writeLong(done.plantX());
        out.writeLong(done.plantY());
        out.writeDouble(done.shiftFrom());
        out.writeDouble(done.start());
        out.writeDouble(done.contactStart());
        out.writeDouble(done.contactEnd());
        out.writeDouble(done.end());
        out.writeLong(done.mount());
        out.writeInt(done.treated());
    }

    private static ActionObserver.Done done(DataInputStream in) throws IOException {
        return new ActionObserver.Done(
                in.readInt(),
                in.readLong(),
                in.readLong(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readLong(),
                in.readInt());
    }
}
