package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import worthsaving.quantity.Distance;

/** Reads price tables row by row; a bad row is listed with its line, column and reason, the rest is kept. */
public final class PriceTableReader {

    static final int BAD_ROWS_KEPT = 1000;

    /** Between the headers of columns that make one field together, as a regular expression. */
    private static final String JOINED = " \\+ ";

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();

    private final DatasetShape shape;
    private final CellStyle style;
    private final Map<String, String> interned = new HashMap<>();
    private final List<BadRow> badRows = new ArrayList<>();
    private long badCount;

    private PriceTableReader(DatasetShape shape, CellStyle style) {
        this.shape = shape;
        this.style = style;
    }

    /**
     * Reads a whole table.
     *
     * @throws IllegalArgumentException when the header lacks a column of the mapping
     */
    public static PriceTable read(Reader reader, DatasetShape shape) throws IOException {
        return read(reader, shape, CellStyle.PLAIN);
    }

    /**
     * Reads a whole table whose cells are written in another style.
     *
     * @throws IllegalArgumentException when the header lacks a column of the mapping
     */
    public static PriceTable read(Reader reader, DatasetShape shape, CellStyle style) throws IOException {
        PriceTableReader self = new PriceTableReader(shape, style);
        List<PriceRow> rows = new ArrayList<>();
        self.each(reader, rows::add);
        return new PriceTable(shape, rows, self.badRows, self.badCount);
    }

    /**
     * Hands the good rows on one by one without keeping them; the table returned has the bad ones only.
     *
     * @throws IllegalArgumentException when the header lacks a column of the mapping
     */
    public static PriceTable stream(Reader reader, DatasetShape shape, Consumer<PriceRow> rows) throws IOException {
        PriceTableReader self = new PriceTableReader(shape, CellStyle.PLAIN);
        self.each(reader, rows);
        return new PriceTable(shape, List.of(), self.badRows, self.badCount);
    }

    private void each(Reader reader, Consumer<PriceRow> rows) throws IOException {
        try (CSVParser parser = CSVParser.parse(reader, format(style))) {
            checkHeader(parser.getHeaderNames());
            for (CSVRecord csvRow : parser) {
                PriceRow row = parse(csvRow, parser.getCurrentLineNumber());
                if (row != null) {
                    rows.accept(row);
                }
            }
        } catch (UncheckedIOException e) {
            throw new IOException(shape.name() + ": " + e.getCause().getMessage(), e);
        }
    }

    /** Tables that people keep by hand get leave for comments, unnamed columns and text after a closing quote. */
    static CSVFormat format(CellStyle style) {
        CSVFormat.Builder format = FORMAT.builder().setDelimiter(style.separator());
        return style.asPeopleWrite()
                ? format.setCommentMarker('#')
                        .setAllowMissingColumnNames(true)
                        .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_ALL)
                        .setTrailingData(true)
                        .setLenientEof(true)
                        .get()
                : format.get();
    }

    private void checkHeader(List<String> header) {
        List<String> missing = new ArrayList<>();
        Stream.concat(
                        Stream.concat(shape.columns().values().stream(), shape.features().values().stream()).flatMap(
                                c -> header.contains(c) ? Stream.of(c) : Stream.of(c.split(JOINED))),
                        shape.indicators().values().stream().flatMap(m -> m.keySet().stream()))
                .sorted()
                .filter(c -> !header.contains(c))
                .forEach(missing::add);
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException(shape.name() + ": the header has no column " + missing
                    + "; it has " + header + ". Mend the mapping or the header.");
        }
    }

    private PriceRow parse(CSVRecord csv, long line) {
        Map<Field, Double> numbers = new EnumMap<>(Field.class);
        Map<Field, String> words = new EnumMap<>(Field.class);
        LocalDate date = shape.fixedDate();
        for (Map.Entry<Field, String> column : shape.columns().entrySet()) {
            Field field = column.getKey();
            String header = column.getValue();
            String text = text(csv, header);
            if (text == null) {
                return bad(line, header, "", "is missing: the row is shorter than the header");
            }
            if (field == Field.DATE) {
                date = style.date(text);
                if (date == null) {
                    return bad(line, header, text, "is not a date such as 2019-04-30 or 2019-04");
                }
            } else if (field.isNumber()) {
                double value = style.number(field, text);
                if (Double.isInfinite(value)) {
                    return bad(line, header, text, "is not a number of zero or more");
                }
                numbers.put(field, value);
            } else {
                words.put(field, interned.computeIfAbsent(shape.translate(field, text), w -> w));
            }
        }
        shape.indicators().forEach((field, byHeader) -> words.put(field, indicated(csv, byHeader)));
        SortedMap<String, String> features = new TreeMap<>();
        for (Map.Entry<String, String> feature : shape.features().entrySet()) {
            String text = text(csv, feature.getValue());
            if (text == null) {
                return bad(line, feature.getValue(), "", "is missing: the row is shorter than the header");
            }
            features.put(feature.getKey(), interned.computeIfAbsent(text.strip().toLowerCase(Locale.ROOT), w -> w));
        }
        double price = numbers.get(Field.PRICE);
        if (Double.isNaN(price) || price == 0) {
            return bad(line, shape.columns().get(Field.PRICE), "" + price, "is no price; a row needs one above zero");
        }
        double distance = numbers.getOrDefault(Field.ODOMETER, Double.NaN);
        return new PriceRow(
                line,
                price,
                words.getOrDefault(Field.MAKE, ""),
                words.getOrDefault(Field.MODEL, ""),
                numbers.getOrDefault(Field.YEAR, shape.fixedYear()),
                Double.isNaN(distance) ? distance : new Distance(distance, shape.odometerUnit()).miles(),
                words.getOrDefault(Field.CONDITION, ""),
                numbers.getOrDefault(Field.CYLINDERS, Double.NaN),
                numbers.getOrDefault(Field.ENGINE_LITRES, Double.NaN),
                numbers.getOrDefault(Field.POWER, Double.NaN),
                words.getOrDefault(Field.FUEL, ""),
                words.getOrDefault(Field.GEARBOX, ""),
                words.getOrDefault(Field.BODY, ""),
                words.getOrDefault(Field.DRIVE, ""),
                words.getOrDefault(Field.TITLE, ""),
                numbers.getOrDefault(Field.UNREPAIRED_DAMAGE, Double.NaN),
                date,
                features);
    }

    /** The cell, or those of joined columns with a blank between them; null when one is missing. */
    private static String text(CSVRecord csv, String header) {
        if (!header.contains(" + ") || csv.isMapped(header)) {
            return csv.isSet(header) ? csv.get(header) : null;
        }
        List<String> cells = new ArrayList<>();
        for (String one : header.split(JOINED)) {
            if (!csv.isSet(one)) {
                return null;
            }
            cells.add(csv.get(one));
        }
        return String.join(" ", cells).strip();
    }

    /** The word of the first column that holds a 1. */
    private static String indicated(CSVRecord csv, Map<String, String> byHeader) {
        return byHeader.entrySet().stream()
                .filter(e -> csv.isSet(e.getKey()) && csv.get(e.getKey()).equals("1"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }

    private PriceRow bad(long line, String column, String value, String reason) {
        badCount++;
        if (badRows.size() < BAD_ROWS_KEPT) {
            badRows.add(new BadRow(line, column, value, reason));
        }
        return null;
    }
}
