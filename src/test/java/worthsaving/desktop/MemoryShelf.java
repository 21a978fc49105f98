package worthsaving.desktop;

import java.io.IOException;
import java.util.stream.Collectors;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueText;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.desktop.catalogue.Shelf;

/** The shipped catalogue on a shelf that forgets, for tests. */
public final class MemoryShelf implements Shelf {

    private CatalogueText text = new CatalogueText(
            CatalogueReader.FILES.stream().collect(Collectors.toMap(f -> f, ShippedCatalogue::text)));
    private boolean locked;

    /** From now on nothing can be kept. */
    public void lock() {
        locked = true;
    }

    @Override
    public CatalogueText read() {
        return text;
    }

    @Override
    public void keep(CatalogueText changed) throws IOException {
        if (locked) {
            throw new IOException("no space left");
        }
        text = changed;
    }

    @Override
    public String place() {
        return "the shelf";
    }
}
