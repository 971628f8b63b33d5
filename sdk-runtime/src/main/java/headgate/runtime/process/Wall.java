package headgate.runtime.process;

import java.util.Optional;

/** What the operating system holds a head process with, from the strictest on. */
public enum Wall {
    /** By {@code bwrap}: no network, no process of anybody else, no file but Java, its libraries and a small folder. */
    BWRAP("bwrap", ""),
    /** By {@code unshare}: no network, no process of anybody else; files stay as they are. */
    UNSHARE(
            "unshare",
            "The head ran behind a wall by unshare, which shuts it off from the network and from other processes, but not"
                    + " from the files that this account can read. Where bwrap works, it does that too."),
    /** None: only the bounds that the virtual machine and the parent set. */
    NONE(
            "none",
            "The head ran without a wall by the operating system: one that got past the package rules could have read"
                    + " files, opened connections and left processes behind. 'headgate doctor' says what is missing.");

    private final String word;
    private final String note;

    Wall(String word, String note) {
        this.word = word;
        this.note = note;
    }

    /** {@return the word for it in settings and tables: the tool that makes it, or "none"} */
    public String word() {
        return word;
    }

    /** {@return what a report has to say of it, as sentences; empty if nothing is missing} */
    public Optional<String> note() {
        return note.isEmpty() ? Optional.empty() : Optional.of(note);
    }
}
