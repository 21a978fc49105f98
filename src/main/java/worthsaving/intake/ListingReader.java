package worthsaving.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;

/**
 * Reads a table of listings: CSV with comma, semicolon, tab or bar, in our own columns or in those of open
 * price data. Columns are found as told, by name, or by unmistakable content; encoding and separator
 * are found out. Good rows come through whatever happens to the others, and memory does not grow with the
 * table (repeats are looked for among the first {@value SeenBefore#MOST} rows).
 */
public final class ListingReader {

    private final Vocabulary vocabulary;
    private final IntakeSettings settings;
    private final TableColumns told;

    public ListingReader(Vocabulary vocabulary, IntakeSettings settings) {
        this(vocabulary, settings, TableColumns.UNTOLD);
    }

    /** @param told what people have said of the columns */
    public ListingReader(Vocabulary vocabulary, IntakeSettings settings, TableColumns told) {
        this.vocabulary = vocabulary;
        this.settings = settings;
        this.told = told;
    }

    /**
     * Reads bytes in whatever encoding they are.
     *
     * @param name what to call the source in messages, such as a file name
     * @throws IOException when the stream itself fails; bad content is reported to the sink
     */
    public LotSummary read(InputStream in, String name, LotSink sink) throws IOException {
        return new TableReading(new TextDecoding(in), name, vocabulary, settings, told, sink).run();
    }

    /** As {@link #read(InputStream, String, LotSink)}, of characters. */
    public LotSummary read(Reader in, String name, LotSink sink) throws IOException {
        return new TableReading(in, name, vocabulary, settings, told, sink).run();
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
