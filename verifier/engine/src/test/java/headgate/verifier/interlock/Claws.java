package headgate.verifier.interlock;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.check.Cases;

/**
 * A head with a claw that is wide across travel and hangs on a thin stem, so that two of them are too near only if both
 * reach out towards each other. All figures are invented for hand arithmetic: neighbours on one beam stand 1.000 m apart,
 * the claw is 200 mm wide to either side and 20 mm to front and rear, the tool point goes 290 mm to either side, the plate
 * above is 300 mm wide to either side, and the rails have no play, so that no set-point avoids it. Both out: 1000 - 2 x 490 = 20 mm, where 38 mm are required.
 */
public final class Claws {

    private Claws() {}

    /** {@return a weeding case: four arms, of which the two on each beam need an interlock} */
    public static Cases cases() {
        return on(Cases.weeding());
    }

    /**
     * Gives every arm such a head.
     *
     * @param cases the case
     * @return the same case with them
     */
    public static Cases on(Cases cases) {
        return cases.sheet(b -> b.forces(
                        Forces.rigid(Figure.assumed(0), Figure.assumed(0), Figure.assumed(0), Figure.assumed(0))))
                .sheet(b -> postures(b, plate(0.30)))
                .arms(a ->
                        a.withShift(Interval.at((a.shift().least() + a.shift().most()) / 2)));
    }

    /** {@return a plate over the claw, so wide to either side} */
    public static Body plate(double half) {
        return Body.of(Prism.box(-0.05, 0.45, -half, half, -0.15, 0.0));
    }

    /** {@return a sheet whose heads have a claw and this fixed body} */
    public static HeadSheet.Builder postures(HeadSheet.Builder sheet, Body fixed) {
        return postures(
                sheet,
                fixed,
                Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, 0.45), Prism.box(-0.02, 0.02, -0.2, 0.2, 0.0, 0.05)));
    }

    /** {@return a sheet whose heads have these bodies, and the claw's reach} */
    public static HeadSheet.Builder postures(HeadSheet.Builder sheet, Body fixed, Body moving) {
        Reach ready = Reach.at(Point3.ofMetres(0.25, 0.0, -0.2));
        Reach work = Reach.over(Outline.rectangle(0.1, 0.4, -0.29, 0.29), Interval.ofMetres(-0.6, -0.2));
        return sheet.postures(
                Cases.posture(PostureName.STOWED, fixed, moving, ready),
                Cases.posture(PostureName.READY, fixed, moving, ready),
                Cases.posture(PostureName.WORK, fixed, moving, work));
    }
}
