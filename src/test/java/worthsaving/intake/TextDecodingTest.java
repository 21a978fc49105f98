package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextDecodingTest {

    private static final String TEXT = "make,\u00e4\u20ac,\ud83d\ude97\nford,na\u00efve,ok\n";

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void reads_unicode_without_a_mark(String charset) throws IOException {
        TextDecoding decoding = decoding(TEXT.getBytes(charset));

        assertThat(all(decoding)).isEqualTo(TEXT);
        assertThat(decoding.charset()).isEqualTo(Charset.forName(charset));
        assertThat(decoding.foreign()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void takes_the_mark_off(String charset) throws IOException {
        assertThat(all(decoding(("\ufeff" + TEXT).getBytes(charset)))).isEqualTo(TEXT);
    }

    @Test
    void reads_windows_bytes_and_counts_them() throws IOException {
        String text = "f\u00fcr 5 \u20ac \u201cok\u201d";
        TextDecoding decoding = decoding(text.getBytes("windows-1252"));

        assertThat(all(decoding)).isEqualTo(text);
        assertThat(decoding.foreign()).isEqualTo(4);
    }

    /** One strange byte far down must not change how the rest is read. */
    @Test
    void a_single_foreign_byte_leaves_the_others_alone() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("\u00e4".repeat(100_001).getBytes(StandardCharsets.UTF_8));
        bytes.write(0xfc);
        bytes.write("\u00e4".repeat(100_001).getBytes(StandardCharsets.UTF_8));
        TextDecoding decoding = decoding(bytes.toByteArray());

        assertThat(all(decoding)).isEqualTo("\u00e4".repeat(100_001) + "\u00fc" + "\u00e4".repeat(100_001));
        assertThat(decoding.foreign()).isEqualTo(1);
    }

    @Test
    void a_cut_off_character_at_the_end_is_foreign() throws IOException {
        TextDecoding decoding = decoding(new byte[] {'a', (byte) 0xc3});

        assertThat(all(decoding)).isEqualTo("a\u00c3");
        assertThat(decoding.foreign()).isEqualTo(1);
    }

    @Test
    void half_a_pair_in_utf_16_becomes_a_replacement_mark() throws IOException {
        TextDecoding decoding = decoding(new byte[] {(byte) 0xff, (byte) 0xfe, 0x00, (byte) 0xd8, 'a', 0, 'b', 0});

        assertThat(all(decoding)).isEqualTo("\ufffdab");
        assertThat(decoding.foreign()).isEqualTo(1);
    }

    @Test
    void names_files_that_are_no_text() throws IOException {
        assertThat(decoding(new byte[] {'P', 'K', 3, 4, 0, 0}).notText()).hasValueSatisfying(
                what -> assertThat(what).contains("spreadsheet"));
        assertThat(decoding("%PDF-1.7".getBytes(StandardCharsets.US_ASCII)).notText()).contains("a PDF");
        assertThat(decoding("PKW,year".getBytes(StandardCharsets.US_ASCII)).notText()).isEmpty();
    }

    @Test
    void an_empty_stream_is_an_empty_text() throws IOException {
        assertThat(all(decoding(new byte[0]))).isEmpty();
    }

    private static TextDecoding decoding(byte[] bytes) throws IOException {
        return new TextDecoding(new OneByOne(bytes));
    }

    private static String all(TextDecoding decoding) throws IOException {
        StringBuilder all = new StringBuilder();
        char[] buffer = new char[7];
        for (int n = decoding.read(buffer, 0, 7); n >= 0; n = decoding.read(buffer, 0, 7)) {
            all.append(buffer, 0, n);
        }
        return all.toString();
    }

    /** Hands out three bytes at a time at most, as a slow stream would. */
    private static final class OneByOne extends InputStream {
        private final ByteArrayInputStream in;

        private OneByOne(byte[] bytes) {
            in = new ByteArrayInputStream(bytes);
        }

        @Override
        public int read() {
            return in.read();
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            return in.read(into, offset, Math.min(3, length));
        }
    }
}
