package headgate.runtime.stand;

import headgate.runtime.origin.FileProblem;
import java.util.List;

/**
 * What a stand holds, known once it has been read to its end.
 *
 * @param file the file's name as it was given
 * @param sha256 digest of the file's bytes, lower-case hexadecimal
 * @param plants number of plants
 * @param crop number of them that are plants of the crop
 * @param least least position of any plant, in x and in y apart; the origin if there is none
 * @param most largest position of any plant, in x and in y apart; the origin if there is none
 * @param notes what is not wrong but worth a second look
 */
public record StandSummary(
        String file,
        String sha256,
        long plants,
        long crop,
        Plant.Position least,
        Plant.Position most,
        List<FileProblem> notes) {

    /** Copies the list. */
    public StandSummary {
        notes = List.copyOf(notes);
    }
}
