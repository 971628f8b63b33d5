package headgate.it.layout;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Executable;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Habits that keep answers the same on every machine and every run, and partner code out of our process. */
class HabitsTest {

    /** Code that runs in the head's own process, which takes the streams from the head and loads its classes. */
    private static final String CHILD = "headgate.runtime.child";

    /** Members that read the machine's language or character set behind the caller's back. */
    private static final Set<String> DEFAULTS = Set.of(
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.lang.String.getBytes()",
            "java.lang.String.format(java.lang.String, java.lang.Object[])",
            "java.lang.String.formatted(java.lang.Object[])",
            "java.lang.String.<init>(byte[])",
            "java.lang.String.<init>(byte[], int, int)",
            "java.io.PrintStream.printf(java.lang.String, java.lang.Object[])",
            "java.io.PrintStream.<init>(java.io.OutputStream)",
            "java.io.PrintStream.<init>(java.io.OutputStream, boolean)",
            "java.io.PrintWriter.<init>(java.io.OutputStream)",
            "java.io.InputStreamReader.<init>(java.io.InputStream)",
            "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
            "java.io.FileReader.<init>(java.io.File)",
            "java.io.FileReader.<init>(java.lang.String)",
            "java.io.FileWriter.<init>(java.io.File)",
            "java.io.FileWriter.<init>(java.lang.String)",
            "java.io.ByteArrayOutputStream.toString()",
            "java.util.Formatter.<init>()",
            "java.util.Scanner.<init>(java.io.InputStream)",
            "java.util.Locale.getDefault()",
            "java.nio.charset.Charset.defaultCharset()",
            "java.lang.System.lineSeparator()",
            "java.text.NumberFormat.getInstance()",
            "java.text.DecimalFormat.<init>(java.lang.String)",
            "java.util.TimeZone.getDefault()",
            "java.time.ZoneId.systemDefault()");

    private static final Set<String> CHANCE = Set.of("java.util.Random.<init>()", "java.lang.Math.random()");

    private static final Set<String> CLOCKS = Set.of(
            "java.lang.System.currentTimeMillis()",
            "java.time.Instant.now()",
            "java.time.LocalDate.now()",
            "java.time.LocalDateTime.now()",
            "java.time.ZonedDateTime.now()",
            "java.time.OffsetDateTime.now()",
            "java.time.Clock.systemUTC()",
            "java.time.Clock.systemDefaultZone()",
            "java.util.Date.<init>()");

    private static final Set<String> LOADING = Set.of(
            "java.lang.Class.forName(java.lang.String)",
            "java.lang.Class.forName(java.lang.String, boolean, java.lang.ClassLoader)",
            "java.lang.ClassLoader.loadClass(java.lang.String)",
            "java.net.URLClassLoader.<init>(java.net.URL[])",
            "java.net.URLClassLoader.<init>(java.net.URL[], java.lang.ClassLoader)",
            "java.util.ServiceLoader.load(java.lang.Class)",
            "java.util.ServiceLoader.load(java.lang.Class, java.lang.ClassLoader)",
            "java.lang.invoke.MethodHandles$Lookup.defineClass(byte[])");

    @Test
    void onlyTheProgramOwnsTheStandardStreams() {
        Predicate<String> streams = Set.of(
                "java.lang.System.out", "java.lang.System.err", "java.lang.Throwable.printStackTrace()")::contains;
        assertThat(uses(streams, "headgate.app", CHILD)).isEmpty();
    }

    @Test
    void chanceHasASeed() {
        assertThat(uses(CHANCE::contains)).isEmpty();
        assertThat(uses(each -> each.startsWith("java.util.concurrent.ThreadLocalRandom")))
                .isEmpty();
    }

    @Test
    void noAnswerDependsOnTheClock() {
        assertThat(uses(CLOCKS::contains)).isEmpty();
    }

    /** What is not measured cannot get into a report or a digest. */
    @Test
    void timeIsMeasuredOnlyWhereAHeadProcessIsGivenADeadline() {
        assertThat(uses("java.lang.System.nanoTime()"::equals, "headgate.runtime.process"))
                .isEmpty();
        assertThat(uses("java.lang.System.nanoTime()"::equals)).isNotEmpty();
    }

    @Test
    void noTextDependsOnTheMachine() {
        assertThat(uses(DEFAULTS::contains)).isEmpty();
    }

    @Test
    void partnerClassesAreLoadedInTheHeadProcessOnly() {
        assertThat(uses(LOADING::contains, CHILD)).isEmpty();
    }

    @Test
    void theListsNameMembersThatExist() {
        // A misspelt member in a list would hold for ever.
        List<String> missing = Stream.of(DEFAULTS, CHANCE, CLOCKS, LOADING)
                .flatMap(Collection::stream)
                .filter(each -> !exists(each))
                .toList();
        assertThat(missing).isEmpty();
    }

    @Test
    void theSearchSeesWhatIsThere() {
        // Each kind of access is found where this project surely has it.
        assertThat(uses(each -> each.startsWith("java.lang.String.format(java.util.Locale")))
                .isNotEmpty();
        assertThat(uses(each -> each.startsWith("java.util.ArrayList.<init>("))).isNotEmpty();
        assertThat(uses("java.util.Locale.ROOT"::equals)).isNotEmpty();
    }

    /** Who uses a member, method references included, outside some packages. */
    private static Set<String> uses(Predicate<String> member, String... allowed) {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : Code.classes()) {
            if (!List.of(allowed).contains(each.getPackageName())) {
                Stream.concat(each.getAccessesFromSelf().stream(), each.getCodeUnitReferencesFromSelf().stream())
                        .filter(access -> member.test(name(access)))
                        .forEach(access -> found.add(name(access) + " in " + access.getSourceCodeLocation()));
            }
        }
        return found;
    }

    private static String name(JavaAccess<?> access) {
        return plain(access.getTarget().getFullName());
    }

    /** Array types as they are written in a source. */
    private static String plain(String name) {
        return name.replaceAll("\\[L([^;]+);", "$1[]").replace("[B", "byte[]").replace("[C", "char[]");
    }

    private static boolean exists(String member) {
        String before = member.substring(0, member.indexOf('('));
        try {
            Class<?> type = Class.forName(before.substring(0, before.lastIndexOf('.')));
            return Stream.<Executable>concat(Arrays.stream(type.getMethods()), Arrays.stream(type.getConstructors()))
                    .map(HabitsTest::name)
                    .anyMatch(member::equals);
        } catch (ClassNotFoundException misspelt) {
            return false;
        }
    }

    private static String name(Executable each) {
        String member = each instanceof java.lang.reflect.Constructor ? "<init>" : each.getName();
        String parameters = Arrays.stream(each.getParameterTypes())
                .map(type -> plain(type.getName()))
                .collect(Collectors.joining(", ", "(", ")"));
        return each.getDeclaringClass().getName() + "." + member + parameters;
    }
}
