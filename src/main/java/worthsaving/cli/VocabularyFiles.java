package worthsaving.cli;

import java.util.Collection;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.CodeTable;
import worthsaving.intake.advert.Vocabulary;
import worthsaving.intake.advert.VocabularyException;

/** The vocabulary as it lies on the disk. */
final class VocabularyFiles {

    private static final String FOLDER = "shared/vocabulary/";

    private VocabularyFiles() {}

    /** @throws UserError when it has faults */
    static Vocabulary load(Resources resources) {
        try {
            return Vocabulary.read(name -> resources.reader(FOLDER + name));
        } catch (VocabularyException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        }
    }

    /**
     * What tables of listings may name.
     *
     * @throws UserError when the table of trouble codes has faults
     */
    static worthsaving.intake.Vocabulary ofTables(Resources resources, Catalogue catalogue, Collection<String> makes) {
        try {
            return worthsaving.intake.Vocabulary.of(
                    catalogue, makes, CodeTable.read(resources.reader(FOLDER + CodeTable.FILE)));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        }
    }
}
