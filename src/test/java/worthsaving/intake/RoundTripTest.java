package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.QuoteMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Listing;

/** The same table in another writing is the same lot. */
class RoundTripTest {

    private static final Vocabulary UNCHECKED = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
    private static final Path LOT = Path.of("shared/samples/lot.csv");

    static Stream<Arguments> writings() {
        return Stream.of(',', ';', '\t', '|').flatMap(separator ->
                Stream.of("UTF-8", "UTF-16LE", "UTF-16BE", "UTF-16", "windows-1252").flatMap(charset ->
                        Stream.of("\n", "\r\n", "\r").map(end -> Arguments.of(separator, charset, end))));
    }

    @ParameterizedTest
    @MethodSource("writings")
    void the_sample_lot_reads_alike_in_every_writing(char separator, String charset, String end) throws IOException {
        CSVFormat from = CSVFormat.RFC4180.builder().setCommentMarker('#').get();
        CSVFormat to = CSVFormat.RFC4180.builder().setDelimiter(separator).setRecordSeparator(end)
                .setQuoteMode(QuoteMode.ALL).get();
        StringBuilder text = new StringBuilder();
        try (CSVParser parser = CSVParser.parse(Files.readString(LOT), from)) {
            for (var row : parser) {
                to.printRecord(text, row.toList().toArray());
            }
        }
        List<Listing> plain = read(Files.readAllBytes(LOT)).listings();
        Lot other = read(text.toString().getBytes(Charset.forName(charset)));

        assertThat(other.faults()).isEmpty();
        // The comment line of the original moves its rows down by one.
        assertThat(other.listings()).usingRecursiveComparison().ignoringFields("origin").isEqualTo(plain);
    }

    private static Lot read(byte[] bytes) throws IOException {
        return new ListingReader(UNCHECKED, Tables.SETTINGS).read(new ByteArrayInputStream(bytes), "lot.csv");
    }

    /** Any amount, in any of the usual ways to write it, is the same amount. */
    @Test
    void amounts_read_alike_in_every_writing() {
        SplittableRandom random = Seed.DEFAULT.derive("amount writings").generator();
        for (int i = 0; i < 5_000; i++) {
            long cents = random.nextLong(0, 100_000_000_000L) >> random.nextInt(30);
            double value = cents / 100.0;
            String american = String.format(Locale.ROOT, "%,.2f", value);
            String german = american.replace(',', '#').replace('.', ',').replace('#', '.');
            for (String text : List.of(american, german, american.replace(",", ""), german.replace(".", ""),
                    american.replace(',', '\u00a0'), german.replace('.', ' '), american.replace(',', '\''),
                    "$" + american, german + " \u20ac", "EUR " + german, " " + american + " ", "-" + american)) {
                assertThat(Amount.parse(text)).as(text).hasValueSatisfying(a ->
                        assertThat(Math.abs(a.value())).isEqualTo(value, within(1e-6)));
            }
        }
    }

    /** Whole amounts without decimals: a group of three is thousands, whatever separates it. */
    @Test
    void whole_amounts_read_alike_in_every_writing() {
        SplittableRandom random = Seed.DEFAULT.derive("whole writings").generator();
        for (int i = 0; i < 5_000; i++) {
            long value = random.nextLong(1, 1_000_000_000L) >> random.nextInt(20);
            String american = String.format(Locale.ROOT, "%,d", value);
            for (String separator : List.of(",", ".", " ", "'", "\u2019", "\u202f", "")) {
                String text = american.replace(",", separator);
                assertThat(Amount.parse(text)).as(text).hasValueSatisfying(a ->
                        assertThat(a.value()).isEqualTo(value));
            }
        }
    }
}
