package headgate.verifier.gate;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.PackageProblem;
import headgate.verifier.evidence.Evidence;
import headgate.verifier.gate.JavaLibrary.Member;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Refused if and only if not listed: one tiny head for every member of the base module that a class of somebody else can
 * reach, called, as a method handle, as a super call, and by inheritance. For the Java that runs the tests, and for the
 * newest one beside it.
 */
class EveryMemberOfJavaTest {

    private static final String ID = "package-gate";

    /** Every how many members the short run takes one; a prime, so that it meets classes of all sizes. */
    private static final int STEP = 97;

    private record Count(int members, int heads, int refused) {}

    @Test
    void everyNinetySeventhIsRefusedIfAndOnlyIfItIsNotListed() throws IOException {
        Count count = check(JavaLibrary.running(), STEP);
        assertThat(count.heads()).isGreaterThan(400);
        if (Runtime.version().feature() == 17) {
            Evidence committed = Evidence.read(ID);
            assertThat(committed.whole("java 17, every 97th: heads")).isEqualTo(count.heads());
            assertThat(committed.whole("java 17, every 97th: refused")).isEqualTo(count.refused());
        }
    }

    @Test
    @Tag("evidence")
    void allAreRefusedIfAndOnlyIfTheyAreNotListed() throws IOException {
        Count slice = check(JavaLibrary.running(), STEP);
        Evidence evidence = Evidence.of(ID)
                .with("claim", "of all accessible members of java.base the gate refuses exactly those not listed")
                .with("command", "mvn -B -ntp -Pevidence verify")
                .with("java 17, every 97th: heads", slice.heads())
                .with("java 17, every 97th: refused", slice.refused());
        tell(evidence, JavaLibrary.running());
        Optional<JavaLibrary> newest = JavaLibrary.newest();
        if (newest.isPresent()) {
            try (JavaLibrary library = newest.get()) {
                tell(evidence, library);
            }
        }
        evidence.write();
    }

    private static void tell(Evidence evidence, JavaLibrary library) throws IOException {
        Count count = check(library, 1);
        assertThat(count.members()).isGreaterThan(15_000);
        evidence.with("java " + library.feature() + ": members", count.members())
                .with("java " + library.feature() + ": heads", count.heads())
                .with("java " + library.feature() + ": refused", count.refused())
                .with("java " + library.feature() + ": allowed", count.heads() - count.refused());
    }

    private static Count check(JavaLibrary library, int step) throws IOException {
        ListText list = new ListText(library);
        List<Member> members = new ArrayList<>(library.accessible());
        members.addAll(list.inherited());
        List<String> wrong = new ArrayList<>();
        int taken = 0;
        int heads = 0;
        int refused = 0;
        for (int i = 0; i < members.size(); i += step) {
            Member member = members.get(i);
            taken++;
            for (TinyHead form : TinyHead.values()) {
                if (form.suits(member)) {
                    boolean expected = form == TinyHead.INHERITED ? list.allowsInherited(member) : list.allows(member);
                    List<PackageProblem> problems = problems(form.using(member));
                    heads++;
                    refused += problems.isEmpty() ? 0 : 1;
                    if (problems.isEmpty() != expected) {
                        wrong.add(form + " " + member + " listed " + expected + ", found " + problems);
                    }
                }
            }
        }
        assertThat(wrong.stream().limit(30)).isEmpty();
        return new Count(taken, heads, refused);
    }

    private static List<PackageProblem> problems(byte[] jar) {
        return ((Inspected) HeadPackage.inspect(jar)).facts().problems();
    }
}
