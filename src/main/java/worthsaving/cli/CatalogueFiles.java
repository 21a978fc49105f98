package worthsaving.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueReading;

/** The catalogue as it lies on the disk. */
final class CatalogueFiles {

    static final String FOLDER = "shared/catalogue";

    private CatalogueFiles() {}

    static CatalogueReading read(Path folder) {
        return CatalogueReader.read(name -> Files.exists(folder.resolve(name)) ? Resources.reader(folder.resolve(name)) : null);
    }

    /** @throws UserError when it has faults */
    static Catalogue load(Resources resources) {
        CatalogueReading reading = read(resources.path(FOLDER));
        if (reading instanceof CatalogueReading.Valid valid) {
            return valid.catalogue();
        }
        throw new UserError(ExitCode.INSTALLATION_FAULTY, "The catalogue has " + reading.faults().size()
                + " fault(s), the first: " + reading.faults().get(0) + "\nSee all with: worthsaving catalogue check");
    }
}
