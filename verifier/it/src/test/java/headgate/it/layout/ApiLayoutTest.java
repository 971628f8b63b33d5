package headgate.it.layout;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import headgate.api.annotation.ApiStatus;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What partners meet: the library that heads are written against, and our own heads as examples of its use. */
class ApiLayoutTest {

    /** A class without a public or protected constructor cannot be extended from outside its package. */
    private static final DescribedPredicate<JavaClass> CAN_ONLY_BE_EXTENDED_HERE =
            DescribedPredicate.describe("have no constructor for others", type -> type.getConstructors().stream()
                    .noneMatch(each -> each.getModifiers().contains(JavaModifier.PUBLIC)
                            || each.getModifiers().contains(JavaModifier.PROTECTED)));

    @Test
    void everyPublicTypeOfTheApiSaysHowStableItIs() {
        classes()
                .that()
                .resideInAPackage("headgate.api..")
                .and()
                .arePublic()
                .should()
                .beAnnotatedWith(ApiStatus.class)
                .check(Code.classes());
    }

    @Test
    void publicClassesOfTheApiAreNotExtendedByAccident() {
        classes()
                .that()
                .resideInAPackage("headgate.api..")
                .and()
                .arePublic()
                .and()
                .areNotInterfaces()
                .and(DescribedPredicate.not(CAN_ONLY_BE_EXTENDED_HERE))
                .should()
                .haveModifier(JavaModifier.FINAL)
                .check(Code.classes());
    }

    @Test
    void headsUseTheApiAndNothingElseOfOurs() {
        noClasses()
                .that()
                .resideInAPackage("headgate.sample..")
                .should()
                .dependOnClassesThat()
                .resideOutsideOfPackages("headgate.sample..", "headgate.api..", "java..", "org.pf4j", "org.jspecify..")
                .check(Code.classes());
    }

    @Test
    void everyPackageSaysWhatItIsForAndIsCheckedForNulls() {
        NavigableSet<String> seen = new TreeSet<>();
        NavigableSet<String> bare = new TreeSet<>();
        for (JavaClass each : Code.classes()) {
            JavaPackage own = each.getPackage();
            seen.add(own.getName());
            // Our sample heads are written as a partner would: with sdk-api and nothing else.
            if (!own.getName().startsWith("headgate.sample") && !own.isAnnotatedWith(NullMarked.class)) {
                bare.add(own.getName());
            }
        }
        assertThat(seen).hasSizeGreaterThan(30);
        assertThat(bare)
                .as("packages without a package-info that says @NullMarked")
                .isEmpty();
    }
}
