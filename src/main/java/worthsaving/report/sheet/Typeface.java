package worthsaving.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Widths of the one typeface of a sheet: Liberation Sans, SIL Open Font License 1.1, which comes with PDFBox and may
 * be embedded. Its widths are those of Arial and Helvetica, so that lines break alike on screen. Immutable.
 */
final class Typeface {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int BMP = 0x10000;
    private static final char UNKNOWN = '\u25a1';

    /** Advance width in thousandths of the size, or -1 where the typeface has no such character. */
    private final short[] advance;

    private Typeface(short[] advance) {
        this.advance = advance;
    }

    /** Read once, on first use. */
    static Typeface get() {
        return Holder.FACE;
    }

    static InputStream file() {
        InputStream file = Typeface.class.getResourceAsStream(FILE);
        if (file == null) {
            throw new IllegalStateException("the typeface " + FILE + " is missing from the program's libraries");
        }
        return file;
    }

    /** Width of a line in points. Bold is the same letters with a stroke, so no wider. */
    double width(String text, double size) {
        double sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += Math.max(0, advance[text.charAt(i)]);
        }
        return sum * size / 1000;
    }

    /** Text that the typeface can show: what it lacks is taken apart, else stands as an empty box. */
    String showable(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder shown = new StringBuilder(composed.length());
        composed.codePoints().forEach(c -> {
            if (has(c)) {
                shown.appendCodePoint(c);
                return;
            }
            String parts = Normalizer.normalize(new String(Character.toChars(c)), Normalizer.Form.NFKD);
            StringBuilder known = new StringBuilder();
            parts.codePoints().filter(this::has).forEach(known::appendCodePoint);
            shown.append(known.isEmpty() ? String.valueOf(UNKNOWN) : known);
        });
        return shown.toString();
    }

    private boolean has(int codePoint) {
        return codePoint < BMP && advance[codePoint] >= 0;
    }

    private static final class Holder {
        private static final Typeface FACE = read();

        private static Typeface read() {
            try (InputStream in = file(); TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
                CmapLookup map = font.getUnicodeCmapLookup();
                short[] advance = new short[BMP];
                for (int c = 0; c < BMP; c++) {
                    int glyph = c < ' ' ? 0 : map.getGlyphId(c);
                    advance[c] = glyph == 0 ? -1
                            : (short) Math.round(1000.0 * font.getAdvanceWidth(glyph) / font.getUnitsPerEm());
                }
                return new Typeface(advance);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
