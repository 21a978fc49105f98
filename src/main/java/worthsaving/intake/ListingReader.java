package worthsaving.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;

/**
 * Reads a table of listings: CSV with comma, semicolon, tab or bar, in our own columns or in those of open
 * price data. Columns are found by name, needed ones also by unmistakable content; encoding and separator
 * are found out. Good rows come through whatever happens to the others, and memory does not grow with the
 * table (repeats are looked for among the first {@value SeenBefore#MOST} rows).
 */
public final class ListingReader {

    private final Vocabulary vocabulary;
    private final IntakeSettings settings;

    public ListingReader(Vocabulary vocabulary, IntakeSettings settings) {
        this.vocabulary = vocabulary;
        this.settings = settings;
    }

    /**
     * Reads bytes in whatever encoding they are.
     *
     * @param name what to call the source in messages, such as a file name
     * @throws IOException when the stream itself fails; bad content is reported to the sink
     */
    public LotSummary read(InputStream in, String name, LotSink sink) throws IOException {
        return new TableReading(new TextDecoding(in), name, vocabulary, settings, sink).run();
    }

    /** As {@link #read(InputStream, String, LotSink)}, of characters. */
    public LotSummary read(Reader in, String name, LotSink sink) throws IOException {
        return new TableReading(in, name, vocabulary, settings, sink).run();
    }

    /** Reads a table of ordinary size into memory. */
    public Lot read(InputStream in, String name) throws IOException {
        Lot.Collector all = new Lot.Collector();
        return all.lot(read(in, name, all));
    }

    /** As {@link #read(InputStream, String)}, of characters. */
    public Lot read(Reader in, String name) throws IOException {
        Lot.Collector all = new Lot.Collector();
        return all.lot(read(in, name, all));
    }
}
