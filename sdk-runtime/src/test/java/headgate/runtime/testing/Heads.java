package headgate.runtime.testing;

/** Sources of heads, good ones and hostile ones. */
public final class Heads {

    private static final String SHEET = """
            public HeadSheet sheet() {
                Prism block = Prism.box(-0.1, 0.1, -0.1, 0.1, -0.3, 0);
                Body tool = Body.of(Prism.aroundCylinder(0, 0, 0.02, -0.05, 0.1));
                Point3 ready = Point3.ofMetres(0, 0, -0.35);
                return HeadSheet.builder()
                        .operation(Operation.PULL_WEEDS)
                        .plate(PlateDesignation.of("9409-1-50-4-M6"))
                        .connectors(Connector.of(ConnectorKind.ELECTRIC, "M12-A 5-pole 24 V"))
                        .mass(mass(4), mass(4), mass(5))
                        .postures(
                                posture(PostureName.STOWED, block, tool, Reach.at(ready)),
                                posture(PostureName.READY, block, tool, Reach.at(ready)),
                                posture(PostureName.WORK, block, tool, Reach.over(
                                        Outline.rectangle(-0.2, 0.2, -0.15, 0.15), Interval.ofMetres(-0.5, -0.35))))
                        .actionTime(ActionTime.of(
                                Figure.measured(0.4), Figure.measured(0.6), Figure.calculated(0.9)))
                        .power(PowerDraw.of(Figure.measured(5), Figure.measured(30), Figure.assumed(80)))
                        .forces(Forces.rigid(Figure.measured(90), Figure.measured(20), Figure.assumed(10),
                                Figure.assumed(0)))
                        .accuracy(Accuracy.of(Figure.measured(0.002), Figure.measured(0.01)))
                        .workRange(WorkRange.builder()
                                .groundSpeed(Range.of(0, 1))
                                .plantClasses(PlantClass.BROADLEAF)
                                .stemDiameter(Range.of(0.001, 0.01))
                                .plantHeight(Range.of(0.02, 0.2))
                                .soils(SoilClass.MEDIUM)
                                .moisture(Range.of(0.1, 0.4))
                                .depth(Range.of(0, 0.05))
                                .build())
                        .hazards(Hazard.of(HazardKind.CRUSHING, GuardKind.LIMITED_FORCE, Figure.measured(0.1)))
                        .withdrawTime(Figure.measured(0.2))
                        .onPowerLoss(PowerLossState.RELEASES)
                        .hardwareRevision("A")
                        .build();
            }
            static MassPoint mass(double kg) {
                return MassPoint.of(Figure.measured(kg), Point3.ofMetres(0, 0, -0.12));
            }
            static Posture posture(PostureName name, Prism block, Body tool, Reach region) {
                return Posture.named(name).fixed(Body.of(block)).moving(tool).region(region).build();
            }
            """;

    private static final String ACTION = """
            /** True, but the compiler does not know. */
            static boolean on() {
                return Boolean.parseBoolean("true");
            }
            static Action plain(SpotTask task) {
                Point3 p = task.position();
                return Action.of(
                        Phase.named("approach").lasting(0.3).endingAt(p).in(PostureName.WORK)
                                .touching(Contact.FREE).build(),
                        Phase.named("pull").lasting(0.2).endingAt(p).in(PostureName.WORK).touching(Contact.SOIL)
                                .treating(Outline.insideDisc(Point.ORIGIN, 0.02, 8)).build(),
                        Phase.named("return").lasting(0.1).endingAt(Point3.ofMetres(0, 0, -0.35))
                                .in(PostureName.READY).touching(Contact.FREE).build());
            }
            """;

    private Heads() {}

    /** Name of the class that every source here declares. */
    public static final String NAME = "partner.TestHead";

    /** A head with its own members and implements clause. */
    public static String source(String kinds, String members) {
        return """
                package partner;
                import headgate.api.answer.*;
                import headgate.api.head.*;
                import headgate.api.sheet.*;
                import headgate.api.shape.*;
                import headgate.api.task.*;
                import headgate.api.vocabulary.*;
                import java.util.*;
                import org.pf4j.Extension;
                @Extension
                public class TestHead %s {
                %s
                }
                """.formatted(kinds, members);
    }

    /** A spot head that works, with more members. */
    public static String spot(String members) {
        return acting(members, "return plain(task);");
    }

    /** A spot head with more members and its own way to act. */
    public static String acting(String members, String act) {
        return source(
                "implements SpotHead",
                SHEET + ACTION + members + "\npublic Action act(SpotTask task) {\n" + act + "\n}");
    }

    /** A spot head that declines instead of whatever else it does. */
    public static String doing(String act) {
        return acting("", act + "\nreturn Action.decline(\"done\");");
    }

    /** A continuous head that works. */
    public static String continuous() {
        return source("implements ContinuousHead", SHEET + """
                        public Engagement engage(RowTask task) {
                            if (task.groundVelocity().speed() > 3) {
                                return Engagement.decline("too fast");
                            }
                            return Engagement.builder().engaged(Outline.rectangle(-0.1, 0.1, -0.2, 0.2)).depth(0.03)
                                    .draft(150 + 10 * task.groundVelocity().speed()).insertTime(0.4).withdrawTime(0.3)
                                    .following(0.2, 2).build();
                        }
                        """);
    }

    /** A head with its own way to give a sheet. */
    public static String sheet(String body) {
        return source(
                "implements SpotHead",
                "public Action act(SpotTask task) { return null; }\npublic HeadSheet sheet() {\n" + body + "\n}");
    }

    /** Declarations of a sheet, to build heads of other kinds. */
    public static String sheetMembers() {
        return SHEET;
    }
}
