package worthsaving.catalog;

import java.util.List;
import java.util.stream.Collectors;

/** What reading the catalogue files gave: a valid catalogue, or every fault at once. */
public sealed interface CatalogueReading {

    /** All files hold together. */
    record Valid(Catalogue catalogue) implements CatalogueReading {}

    /**
     * Nothing may be computed with these files.
     *
     * @param faults at least one, by file and line
     */
    record Faulty(List<CatalogueFault> faults) implements CatalogueReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }

    /** Every fault, none when valid. */
    default List<CatalogueFault> faults() {
        return this instanceof Faulty faulty ? faulty.faults() : List.of();
    }

    /**
     * The catalogue, for callers that cannot go on without one.
     *
     * @throws IllegalStateException with all faults in its message
     */
    default Catalogue orElseThrow() {
        if (this instanceof Valid valid) {
            return valid.catalogue();
        }
        throw new IllegalStateException("the catalogue has faults:\n"
                + faults().stream().map(CatalogueFault::toString).collect(Collectors.joining("\n")));
    }
}
