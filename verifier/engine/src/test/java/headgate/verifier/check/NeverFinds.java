package headgate.verifier.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Stands on the test of a rule that cannot come to an outcome that tests of rules usually show. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface NeverFinds {

    /** {@return the outcomes} */
    Outcome[] value();

    /** {@return why it cannot} */
    String because();
}
