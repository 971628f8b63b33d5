package headgate.verifier.remedy;

import headgate.api.shape.Body;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Transition;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Make a head smaller on one side: everything that stands out further than now less the trim is taken away, whatever
 * moves with the tool point at every place of its region included.
 *
 * @param headId the head
 * @param side the side, head frame
 * @param amount by how much, micrometres, more than 0
 */
public record TrimHead(String headId, Side side, long amount) implements Edit {

    @Override
    public Case apply(Case before) {
        return before.withHead(headId, head -> head.withSheet(this::trimmed));
    }

    private HeadSheet trimmed(HeadSheet sheet) {
        long keep = extent(sheet) - amount;
        return sheet.toBuilder()
                .postures(sheet.postures().stream().map(p -> trimmed(p, keep)).toList())
                .transitions(sheet.transitions().stream()
                        .map(t -> Transition.between(t.from(), t.to(), cut(t.swept(), keep)))
                        .toList())
                .build();
    }

    private Posture trimmed(Posture posture, long keep) {
        long keepMoving = keep - side.extent(posture.region().corners());
        return Posture.named(posture.name())
                .fixed(cut(posture.fixed(), keep))
                .moving(cut(posture.moving(), keepMoving))
                .carried(cut(posture.carried(), keepMoving))
                .region(posture.region())
                .build();
    }

    private Body cut(Body body, long keep) {
        return Body.of(
                body.prisms().stream().flatMap(p -> side.keep(p, keep).stream()).toList());
    }

    /** How far the head stands out on the side, over all postures and transitions, micrometres. */
    private long extent(HeadSheet sheet) {
        LongStream postures = sheet.postures().stream()
                .flatMapToLong(p -> LongStream.concat(
                        outlines(p.fixed()),
                        Stream.of(p.moving(), p.carried())
                                .flatMapToLong(this::outlines)
                                .map(e -> e + side.extent(p.region().corners()))));
        LongStream transitions = sheet.transitions().stream().flatMapToLong(t -> outlines(t.swept()));
        return LongStream.concat(postures, transitions).max().orElse(0);
    }

    private LongStream outlines(Body body) {
        return body.prisms().stream().mapToLong(p -> side.extent(p.outline().vertices()));
    }

    @Override
    public String text() {
        return "trim head " + headId + " by " + Dimension.LENGTH.text(Micrometres.toMetres(amount)) + " at "
                + side.axis();
    }

    @Override
    public String kind() {
        return "trim-head";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("head", headId, "side", side.axis(), "amount", Micrometres.toMetres(amount));
    }
}
