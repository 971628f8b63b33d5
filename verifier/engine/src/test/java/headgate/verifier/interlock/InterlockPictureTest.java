package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.PlanArea;
import headgate.verifier.picture.Plot;
import headgate.verifier.picture.ShownPicture;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawing of an interlock in docs/explanation/clearance.md is what the code computes. */
class InterlockPictureTest {

    private static final long GAP = 38_000;

    /** Two claws like diamonds, 900 mm apart; seen from above, y to the right. */
    @Test
    void theOffsetsThatTwoToolsMustNotTake() throws IOException {
        Outline claw = Outline.ofMetres(-0.12, 0, 0, -0.2, 0.12, 0, 0, 0.2);
        Occupied right = Occupied.of(List.of(Prism.of(turned(claw), Interval.ofMetres(0, 0.05))));
        Occupied left = right.shifted(new Point3(900_000, 0, 0));
        Occupied reach = Occupied.hullOf(
                List.of(Reach.over(Outline.rectangle(-0.29, 0.29, -0.15, 0.15), Interval.ofMetres(-0.6, -0.2))));
        Occupied meeting = right.minus(left);
        List<Zone> zones = ZoneCover.of(meeting, GAP, reach.minus(reach)).zones();
        Outline offsets = Outline.rectangle(-0.58, 0.58, -0.3, 0.3);

        Plot plot = new Plot(
                        "Offsets of two tool points: what is too near, and the zone that closes it",
                        -1340,
                        620,
                        -420,
                        420)
                .area(offsets, "#eef2f4", "#6d777d")
                .area(PlanArea.of(meeting.grown(GAP)).rings(), "#f4d9b8", "#b3671a")
                .area(PlanArea.of(meeting).rings(), "#e7b98a", "#b3671a");
        for (Zone zone : zones) {
            plot.dashed(Outline.rectangle(zone.x(), zone.y()), "#20292f");
        }
        plot.text(-180, 330, "grey: offsets that occur")
                .text(-1300, 380, "dark: the two claws meet")
                .text(-1300, 340, "light: nearer than the required gap")
                .text(-1300, -390, "dashed: the zone that closes what occurs of it");

        assertThat(zones).hasSize(1);
        ShownPicture.assertShows("clearance-interlock.svg", plot.svg());
    }

    private static Outline turned(Outline outline) {
        return Outline.hullOf(
                outline.vertices().stream().map(p -> new Point(p.y(), -p.x())).toList());
    }
}
