/**
 * For the command {@code doctor}: what this machine offers. Each {@link headgate.app.doctor.Probe} looks at one thing and
 * answers with a {@link headgate.app.doctor.Diagnosis}.
 */
@NullMarked
package headgate.app.doctor;

import org.jspecify.annotations.NullMarked;
