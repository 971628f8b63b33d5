package headgate.api.annotation;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Says how far partner code may rely on a public type of this library. Every public type carries it. */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public @interface ApiStatus {

    /** {@return how stable the type is} */
    Status value();

    /** {@return the first version, in the form major.minor.patch, that had the type} */
    String since();

    /** The degrees of stability. */
    @ApiStatus(value = Status.EXPERIMENTAL, since = "0.1.0")
    enum Status {
        /** May change in any release; a change is named in the change log. */
        EXPERIMENTAL,
        /** Changes in a binary compatible way only, within one major version. */
        STABLE,
        /** For this project's own modules; partner code must not use it. */
        INTERNAL
    }
}
