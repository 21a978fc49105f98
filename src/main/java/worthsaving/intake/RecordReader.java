package worthsaving.intake;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Splits delimited text into rows (RFC 4180) and goes on after damage.
 *
 * <p>A library parser gives up at a quote that is never closed, having read the rest of the file into
 * memory for it. Here a row is bounded ({@link #MAX_CHARACTERS}, {@link #MAX_LINES}); when a quote turns
 * out not to close, only the line it stands on is given up and reading goes on with the next one.
 */
final class RecordReader {

    static final int MAX_CHARACTERS = 200_000;
    static final int MAX_LINES = 200;

    private static final int BUFFER = 1 << 13;
    private static final int END = -1;

    private final Reader in;
    private final TextDecoding decoding;
    private final char[] buffer = new char[BUFFER];
    private final Deque<Pending> pending = new ArrayDeque<>();
    private final StringBuilder raw = new StringBuilder();
    private final StringBuilder cell = new StringBuilder();
    private int at;
    private int filled;
    private boolean afterCarriageReturn;
    private char separator = ',';
    private long line = 1;
    private long characters;
    private long foreignLine;
    private List<String> cells;
    private long startLine;
    private int firstBreak;
    private boolean zero;

    private enum State { START, PLAIN, QUOTED, QUOTE_SEEN }

    /** Text handed back, to be read again. */
    private static final class Pending {
        private final String text;
        private int at;

        private Pending(String text) {
            this.text = text;
        }
    }

    RecordReader(Reader in) {
        this.in = in;
        this.decoding = in instanceof TextDecoding d ? d : null;
    }

    void separator(char c) {
        separator = c;
    }

    /** Characters read so far, for progress. */
    long characters() {
        return characters;
    }

    /** First line with a byte that the encoding could not hold; 0 when there is none. */
    long foreignLine() {
        return foreignLine;
    }

    long line() {
        return line;
    }

    /** The next physical line without its end, at most {@link #MAX_CHARACTERS} of it; null at the end. */
    String line(StringBuilder into) throws IOException {
        into.setLength(0);
        int c = read();
        if (c == END) {
            return null;
        }
        for (; c != END && c != '\n'; c = read()) {
            if (into.length() < MAX_CHARACTERS) {
                into.append((char) c);
            }
        }
        line++;
        return into.toString();
    }

    /** Hands back whole lines; the last one handed back is read first. */
    void handBack(String text, long lineOfText) {
        pending.push(new Pending(text));
        line = lineOfText;
    }

    /** The next row that is not an empty line; null at the end of the text. */
    RawRow next() throws IOException {
        begin();
        State state = State.START;
        while (true) {
            int c = read();
            if (c == END) {
                return atEnd(state);
            }
            if (c != '\n' || state == State.QUOTED) {
                raw.append((char) c);
                zero |= c == 0;
            } else if (raw.length() == 0) {
                line++;
                begin();
                continue;
            }
            if (c == '\n') {
                line++;
            }
            if (raw.length() > MAX_CHARACTERS || line - startLine > MAX_LINES) {
                return firstBreak < 0 && c != '\n' ? tooLong() : unclosed();
            }
            switch (state) {
                case START, PLAIN -> {
                    if (c == '\n') {
                        return done();
                    } else if (c == separator) {
                        endCell();
                        state = State.START;
                    } else if (c == '"' && state == State.START) {
                        state = State.QUOTED;
                    } else {
                        cell.append((char) c);
                        state = State.PLAIN;
                    }
                }
                case QUOTED -> {
                    if (c == '"') {
                        state = State.QUOTE_SEEN;
                    } else {
                        cell.append((char) c);
                        firstBreak = c == '\n' && firstBreak < 0 ? raw.length() - 1 : firstBreak;
                    }
                }
                case QUOTE_SEEN -> {
                    if (c == '"') {
                        cell.append('"');
                        state = State.QUOTED;
                    } else if (c == '\n') {
                        return done();
                    } else if (c == separator) {
                        endCell();
                        state = State.START;
                    } else if (!Character.isWhitespace(c)) {
                        return textAfterQuote();
                    }
                }
            }
        }
    }

    private void begin() {
        raw.setLength(0);
        cell.setLength(0);
        cells = new ArrayList<>();
        startLine = line;
        firstBreak = -1;
        zero = false;
    }

    private RawRow atEnd(State state) {
        if (state == State.QUOTED) {
            return unclosed();
        }
        return raw.length() == 0 ? null : done();
    }

    private void endCell() {
        cells.add(cell.toString());
        cell.setLength(0);
    }

    private RawRow done() {
        endCell();
        return row(zero
                ? new RawRow.Damage(-1, "the row holds a NUL character", "delete it, or save the file as text again")
                : null);
    }

    private RawRow row(RawRow.Damage damage) {
        return new RawRow(startLine, cells, raw.toString(), Optional.ofNullable(damage));
    }

    private RawRow unclosed() {
        backToFirstLine();
        return row(new RawRow.Damage(cells.size(), "a quote is opened and never closed",
                "close it with \" at the end of the cell, or write \"\" for a quote inside a cell"));
    }

    private RawRow textAfterQuote() throws IOException {
        if (firstBreak >= 0) {
            return unclosed();
        }
        skipLine();
        return row(new RawRow.Damage(cells.size(), "there is text after a closing quote",
                "write \"\" for a quote inside a cell"));
    }

    private RawRow tooLong() throws IOException {
        skipLine();
        return row(new RawRow.Damage(-1, "the row is longer than " + MAX_CHARACTERS + " characters",
                "see whether line ends or separators were lost"));
    }

    private void skipLine() throws IOException {
        int c = read();
        for (; c != END && c != '\n'; c = read()) {
            if (raw.length() <= MAX_CHARACTERS) {
                raw.append((char) c);
            }
        }
        line++;
    }

    private void backToFirstLine() {
        if (firstBreak >= 0) {
            handBack(raw.substring(firstBreak + 1), startLine + 1);
            raw.setLength(firstBreak);
        }
    }

    /** The next character, any line end as a line feed. */
    private int read() throws IOException {
        while (!pending.isEmpty()) {
            Pending top = pending.peek();
            if (top.at < top.text.length()) {
                return top.text.charAt(top.at++);
            }
            pending.pop();
        }
        while (true) {
            if (at == filled && !refill()) {
                return END;
            }
            char c = buffer[at++];
            boolean secondHalf = c == '\n' && afterCarriageReturn;
            afterCarriageReturn = c == '\r';
            if (!secondHalf) {
                return c == '\r' ? '\n' : c;
            }
        }
    }

    private boolean refill() throws IOException {
        long foreign = decoding == null ? 0 : decoding.foreign();
        at = 0;
        filled = Math.max(0, in.read(buffer, 0, BUFFER));
        characters += filled;
        if (decoding != null && decoding.foreign() > foreign && foreignLine == 0) {
            foreignLine = line;
        }
        return filled > 0;
    }
}
