package headgate.verifier.rules.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import headgate.verifier.remedy.NarrowBand;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand arithmetic: the head reaches 100 mm to either side of its mount, so its strip is 200 mm wide. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet has a reach, every plan its lanes")
class StripCoversLaneTest {

    @Test
    void passesALaneThatIsNarrowerThanTheStrip() {
        Finding finding = check(weeding(0.16, 0));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message())
                .isEqualTo(
                        "The strips cover each of the 4 lanes; on lane 1 the strip ends 20 mm beyond the lane's edge.");
        assertThat(finding.comparison().orElseThrow().margin()).isCloseTo(0.04, within(1e-9));
    }

    @Test
    void holdsAtTheLimit() {
        assertThat(check(weeding(0.2, 0)).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(weeding(0.16, 0.02)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsByWhatIsLeftOutAndProposesANarrowerBand() {
        // 180 mm and 15 mm of wander to both sides: 210 mm, of which 10 mm are left out, 5 mm at either edge.
        Case wide = weeding(0.18, 0.015);

        Finding finding = check(wide);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .isEqualTo("Of 210 mm of lane 1 (on the row) the strip of arm a1 leaves 10 mm out; 4 of 4 lanes are not"
                        + " covered.");
        assertThat(finding.comparison().orElseThrow().margin()).isCloseTo(-0.01, within(1e-9));
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("weed a band of 170 mm along each row");
        assertThat(check(finding.proposals().get(0).apply(wide)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsTheWholeSurfaceAndProposesNarrowerRows() {
        // A row's share of the surface is the spacing, 300 mm; at 200 mm the strips meet, though heads do not pass.
        Case whole = Cases.weeding()
                .rows(new CropPlan.Rows(0.5, 4, 0.4, 0.0))
                .plan(p -> p.withWanted(new CropPlan.Wanted(
                        p.wanted().operation(),
                        0.2,
                        0.85,
                        Optional.empty(),
                        Optional.of(CropPlan.Ground.FULL_SURFACE),
                        Optional.empty(),
                        Optional.empty())))
                .build();

        Finding finding = check(whole);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .startsWith("Of 500 mm of lane 1 (the whole surface) the strip of arm a1 leaves 300 mm");
        assertThat(finding.proposals()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.21, 0.2", "0.2, 0.2", "0.35, 0.2"})
    void aNarrowerBandNeverWidensOne(double now, double wanted) {
        Case narrowed = new NarrowBand(wanted).apply(weeding(now, 0));

        assertThat(narrowed.plan().value().weeds().orElseThrow().bandWidth()).isEqualTo(Math.min(now, wanted));
    }

    private static Case weeding(double band, double wander) {
        return Cases.weeding()
                .rows(new CropPlan.Rows(0.5, 4, 0.4, wander))
                .weeds(2.0, band, Optional.of(0.95), Optional.of(0.1))
                .build();
    }

    private static Finding check(Case subject) {
        List<Finding> findings = new StripCoversLane().check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
