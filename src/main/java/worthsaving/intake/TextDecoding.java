package worthsaving.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Bytes to characters when nobody said which encoding they are in.
 *
 * <p>A byte order mark decides; without one, the pattern of zero bytes tells UTF-16. Everything else is
 * read as UTF-8, and a byte that cannot be UTF-8 is read as windows-1252 and counted, so that a file in
 * that encoding, or one with a single strange byte far down, loses nothing. A foreign byte is handed out
 * by a read of its own: whoever reads in order knows the line it stands on.
 */
final class TextDecoding extends Reader {

    private static final int BUFFER = 1 << 16;
    private static final int MARK = 4;
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final byte[][] MAGIC = {
        {'P', 'K', 3, 4}, {'%', 'P', 'D', 'F'}, {0x1f, (byte) 0x8b}, {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0},
        {(byte) 0x89, 'P', 'N', 'G'}, {(byte) 0xff, (byte) 0xd8, (byte) 0xff}
    };
    private static final String[] MAGIC_NAME = {
        "a spreadsheet or another zipped file", "a PDF", "a gzip archive", "an old spreadsheet or office file",
        "a picture", "a picture"
    };

    private final InputStream in;
    private final ByteBuffer bytes = ByteBuffer.wrap(new byte[BUFFER]).limit(0);
    private final Charset charset;
    private final CharsetDecoder decoder;
    private final String notText;
    private boolean ended;
    private long foreign;

    TextDecoding(InputStream in) throws IOException {
        this.in = in;
        refill();
        notText = magic();
        charset = detect();
        decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    Charset charset() {
        return charset;
    }

    /** What the file is when its first bytes show that it is no text. */
    Optional<String> notText() {
        return Optional.ofNullable(notText);
    }

    /** Count of bytes handed out so far that the encoding could not hold. */
    long foreign() {
        return foreign;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        if (length < 2) {
            throw new IllegalArgumentException("a buffer of two characters at least, for surrogate pairs");
        }
        CharBuffer out = CharBuffer.wrap(buffer, offset, length);
        while (true) {
            CoderResult result = decoder.decode(bytes, out, ended);
            if (out.position() > offset) {
                return out.position() - offset;
            }
            if (result.isError()) {
                out.put(standIn(result.length()));
                foreign++;
                return 1;
            }
            if (ended) {
                return -1;
            }
            refill();
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    private char standIn(int length) {
        if (!charset.equals(StandardCharsets.UTF_8)) {
            bytes.position(bytes.position() + Math.min(2, length));
            return '\ufffd';
        }
        return new String(new byte[] {bytes.get()}, WINDOWS).charAt(0);
    }

    private void refill() throws IOException {
        bytes.compact();
        while (bytes.position() < MARK || bytes.position() == 0) {
            int n = in.read(bytes.array(), bytes.position(), bytes.remaining());
            if (n < 0) {
                ended = true;
                break;
            }
            bytes.position(bytes.position() + n);
        }
        bytes.flip();
    }

    private String magic() {
        for (int i = 0; i < MAGIC.length; i++) {
            if (startsWith(MAGIC[i])) {
                return MAGIC_NAME[i];
            }
        }
        return null;
    }

    private Charset detect() {
        if (startsWith((byte) 0xef, (byte) 0xbb, (byte) 0xbf)) {
            bytes.position(3);
            return StandardCharsets.UTF_8;
        }
        if (startsWith((byte) 0xff, (byte) 0xfe)) {
            bytes.position(2);
            return StandardCharsets.UTF_16LE;
        }
        if (startsWith((byte) 0xfe, (byte) 0xff)) {
            bytes.position(2);
            return StandardCharsets.UTF_16BE;
        }
        int[] zeros = new int[2];
        for (int i = 0; i < bytes.limit(); i++) {
            zeros[i % 2] += bytes.get(i) == 0 ? 1 : 0;
        }
        int many = Math.max(1, bytes.limit() / 5);
        if (zeros[1] >= many && zeros[0] < many / 4 + 1) {
            return StandardCharsets.UTF_16LE;
        }
        return zeros[0] >= many && zeros[1] < many / 4 + 1 ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    private boolean startsWith(byte... start) {
        if (bytes.limit() < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if (bytes.get(i) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
