package worthsaving.desktop.catalogue;

import java.io.IOException;
import worthsaving.catalog.CatalogueText;

/** Where the catalogue's files stand. */
public interface Shelf {

    CatalogueText read() throws IOException;

    /** Replaces what differs; a file is either the old or the new one, never half of each. */
    void keep(CatalogueText text) throws IOException;

    /** Named in messages. */
    String place();
}
