package worthsaving.intake;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import worthsaving.intake.IntakeFault.Effect;

/** One pass over one table. */
final class TableReading {

    private static final int SAMPLE = 100;
    private static final int PROGRESS_EVERY = 1_000;
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private final TextDecoding decoding;
    private final RecordReader records;
    private final String name;
    private final Vocabulary vocabulary;
    private final RowParser parser;
    private final LotSink sink;
    private final TableColumns told;
    private final SeenBefore rowsSeen = new SeenBefore();
    private final SeenBefore idsSeen = new SeenBefore();
    private char separator = ',';
    private Columns columns = Columns.named(List.of());
    private long good;
    private long refused;
    private long warnings;

    TableReading(Reader in, String name, Vocabulary vocabulary, IntakeSettings settings,
            TableColumns told, LotSink sink) {
        this.decoding = in instanceof TextDecoding d ? d : null;
        this.records = new RecordReader(in);
        this.name = name;
        this.vocabulary = vocabulary;
        this.parser = new RowParser(settings, vocabulary);
        this.sink = sink;
        this.told = told;
    }

    LotSummary run() throws IOException {
        if (decoding != null && decoding.notText().isPresent()) {
            return refuseFile(0, "this is " + decoding.notText().get() + ", not a table in text form",
                    "save it as CSV and give that file");
        }
        RawRow header = header();
        if (header == null) {
            return refuseFile(0, "the file is empty", "give a table with a header line and a listing on each line");
        }
        columns = Columns.named(header.cells());
        if (header.damage().isPresent()) {
            RawRow.Damage damage = header.damage().get();
            return refuseFile(header.line(), "the header cannot be read: " + damage.what(), damage.mend());
        }
        ColumnChoice remembered = told.memory().of(header.cells()).orElse(ColumnChoice.NONE);
        columns = columns.told(remembered, new ArrayList<>());
        List<String> wrong = new ArrayList<>();
        columns = columns.told(told.now(), wrong);
        if (!wrong.isEmpty()) {
            return refuseFile(header.line(), String.join("; ", wrong), "name a field and a column, as in price=Asking");
        }
        Deque<RawRow> sample = new ArrayDeque<>();
        if (!columns.missing().isEmpty() || !columns.unused().isEmpty()) {
            RawRow row = next();
            while (row != null) {
                sample.add(row);
                row = sample.size() < SAMPLE ? next() : null;
            }
            ColumnChoice ignoring = told.now().isEmpty() ? remembered : told.now();
            columns = columns.completedBy(List.copyOf(sample), vocabulary.makes(), ignoring);
        }
        if (!columns.missing().isEmpty()) {
            return refuseFile(header.line(), wrongHeader(), headerMend());
        }
        sink.header(header.text());
        sink.columns(header.cells());
        boolean cancelled = rows(sample);
        if (good + refused == 0) {
            warn(new IntakeFault(name, 0, "", Effect.WARNING, "the table has a header and no rows",
                    "add a line for each listing"));
        }
        if (records.foreignLine() > 0) {
            warn(new IntakeFault(name, records.foreignLine(), "", Effect.WARNING,
                    decoding.foreign() + " byte(s), the first in this row, are not in the encoding "
                            + decoding.charset() + " and were read as windows-1252",
                    "save the file as UTF-8 if letters look wrong"));
        }
        return summary(true, cancelled);
    }

    private boolean rows(Deque<RawRow> sample) throws IOException {
        long rows = 0;
        for (RawRow row = next(sample); row != null; row = next(sample)) {
            take(row);
            if (++rows % PROGRESS_EVERY == 0 && !sink.goOn(rows, records.characters())) {
                return true;
            }
        }
        return false;
    }

    private RawRow next(Deque<RawRow> first) throws IOException {
        return first.isEmpty() ? next() : first.poll();
    }

    private RawRow next() throws IOException {
        RawRow row = records.next();
        while (row != null && row.blank()) {
            row = records.next();
        }
        return row;
    }

    private void take(RawRow row) {
        Cells cells = new Cells(name, row, columns);
        row.damage().ifPresent(d -> cells.refuse(columns.name(d.cell()), d.what(), d.mend()));
        if (!cells.refused()) {
            checkWidth(row, cells);
        }
        if (!cells.refused()) {
            boolean wasFull = rowsSeen.full();
            long same = rowsSeen.earlier(row.text(), row.line());
            if (same > 0) {
                cells.refuse("", "the row is the same as row " + same,
                        "delete one of the two, or tell them apart by an id");
            } else if (rowsSeen.full() && !wasFull) {
                warn(new IntakeFault(name, row.line(), "", Effect.WARNING,
                        "from here on repeated rows are no longer looked for", "split the table if it may hold some"));
            }
        }
        if (!cells.refused()) {
            String id = id(cells);
            parser.entry(cells, id).ifPresent(entry -> {
                good++;
                sink.good(entry);
            });
        }
        if (cells.refused()) {
            refused++;
            sink.refused(new RefusedRow(row.line(), row.text(), row.cells(), cells.faults()));
        } else {
            cells.faults().forEach(this::warn);
        }
    }

    private void checkWidth(RawRow row, Cells cells) {
        int width = columns.width();
        int found = row.cells().size();
        if (found < width) {
            cells.refuse(columns.name(found), "the row has " + found + " cells and the header " + width,
                    "add what is missing, or the separators for blank cells");
        } else if (row.cells().subList(width, found).stream().anyMatch(c -> !c.isBlank())) {
            cells.refuse("", "the row has " + found + " cells and the header " + width,
                    "put cells that hold the separator in double quotes");
        }
    }

    private String id(Cells cells) {
        String id = cells.text(Field.ID);
        if (id.isEmpty()) {
            return "row" + cells.row();
        }
        long same = idsSeen.earlier(id, cells.row());
        if (same > 0) {
            String changed = id + "-row" + cells.row();
            cells.warn(Field.ID, "the id " + Cells.shown(id) + " is that of row " + same + " already",
                    "give each listing its own; this one is called " + changed + " here");
            return changed;
        }
        return id;
    }

    /** The header row, after comment lines; the separator is the one that gives most known names. */
    private RawRow header() throws IOException {
        StringBuilder line = new StringBuilder();
        long lineNumber = records.line();
        for (String text = records.line(line); text != null; text = records.line(line)) {
            String bare = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            boolean said = bare.length() == 5 && bare.startsWith("sep=");
            if (!bare.isBlank() && !bare.startsWith("#") && !said) {
                separator = separator(bare);
                records.separator(separator);
                records.handBack(bare + "\n", lineNumber);
                return records.next();
            }
            lineNumber = records.line();
        }
        return null;
    }

    private static char separator(String header) {
        char best = ',';
        long bestScore = -1;
        for (char candidate : SEPARATORS) {
            List<String> cells = Arrays.stream(header.split(Pattern.quote(String.valueOf(candidate)), -1))
                    .map(c -> c.replace("\"", "").strip())
                    .toList();
            long score = Columns.known(cells) * 1000 + Math.min(999, cells.size());
            if (score > bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    private String wrongHeader() {
        if (columns.looksLikeData()) {
            return "the first row looks like data, not like a header";
        }
        String missing = columns.missing().stream().map(Field::title).collect(Collectors.joining(", "));
        String found = columns.header().stream().limit(40).map(Cells::shown).collect(Collectors.joining(", "));
        return "no column for " + missing + "; the header has " + found;
    }

    private String headerMend() {
        String needed = Field.NEEDED.stream().map(Field::title).collect(Collectors.joining(", "));
        List<String> names = Field.allNames().toList();
        String slips = columns.unused().stream()
                .limit(40)
                .flatMap(h -> Nearest.to(Field.plain(h), names)
                        .filter(n -> Field.named(n).filter(columns.missing()::contains).isPresent())
                        .map(n -> Cells.shown(h) + " may be " + n).stream())
                .collect(Collectors.joining(", "));
        return "name the columns " + needed + " in the first line" + (slips.isEmpty() ? "" : "; " + slips);
    }

    private LotSummary refuseFile(long row, String what, String mend) {
        warn(new IntakeFault(name, row, "", Effect.FILE_REFUSED, what, mend));
        return summary(false, false);
    }

    private void warn(IntakeFault fault) {
        warnings++;
        sink.warning(fault);
    }

    private LotSummary summary(boolean readable, boolean cancelled) {
        Map<String, String> matched = new LinkedHashMap<>();
        for (Field field : Field.values()) {
            columns.get(field).ifPresent(c -> matched.put(field.title(), c.header()));
        }
        return new LotSummary(name, decoding == null ? "" : decoding.charset().name(), separator,
                Collections.unmodifiableMap(matched),
                columns.used().stream()
                        .map(c -> new LotSummary.ColumnUse(c.field().title(), c.header(), c.why())).toList(),
                columns.header(), columns.unused(), good, refused, warnings, readable, cancelled);
    }
}
