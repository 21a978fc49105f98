package worthsaving.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * The characters of a file whose encoding nobody told: UTF-8, UTF-16 or windows-1252.
 *
 * @param text its beginning, where it is longer than asked for
 * @param cut whether it was longer
 * @param notText what it is when its first bytes show that it is no text; the text is then empty
 */
public record PlainText(String text, boolean cut, Optional<String> notText) {

    private static final int CHUNK = 1 << 14;

    /**
     * @param in left open
     * @param most characters to read at most
     * @throws IOException when the stream itself fails
     */
    public static PlainText read(InputStream in, int most) throws IOException {
        TextDecoding decoding = new TextDecoding(in);
        if (decoding.notText().isPresent()) {
            return new PlainText("", false, decoding.notText());
        }
        StringBuilder text = new StringBuilder();
        char[] chunk = new char[CHUNK];
        int n = decoding.read(chunk, 0, CHUNK);
        while (n >= 0 && text.length() <= most) {
            text.append(chunk, 0, n);
            n = decoding.read(chunk, 0, CHUNK);
        }
        boolean cut = text.length() > most;
        return new PlainText(cut ? text.substring(0, most) : text.toString(), cut, Optional.empty());
    }
}
