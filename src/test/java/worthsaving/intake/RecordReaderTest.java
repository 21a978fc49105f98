package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

class RecordReaderTest {

    /** Any table that Commons CSV writes is split as Commons CSV splits it. */
    @Test
    void agrees_with_commons_csv_on_sound_tables() throws IOException {
        SplittableRandom random = Seed.DEFAULT.derive("record reader").generator();
        for (int table = 0; table < 2_000; table++) {
            char separator = ",;\t|".charAt(random.nextInt(4));
            CSVFormat format = CSVFormat.RFC4180.builder()
                    .setDelimiter(separator)
                    .setQuoteMode(random.nextBoolean() ? QuoteMode.ALL : QuoteMode.MINIMAL)
                    .setRecordSeparator(random.nextBoolean() ? "\r\n" : "\n")
                    .setIgnoreEmptyLines(true)
                    .get();
            String text = table(random, format, 1 + random.nextInt(5));
            try (CSVParser parser = CSVParser.parse(text, format)) {
                List<List<String>> expected = parser.stream().map(CSVRecord::toList).toList();
                assertThat(rows(text, separator)).extracting(RawRow::cells).as("%s", text).isEqualTo(expected);
            }
        }
    }

    private static String table(SplittableRandom random, CSVFormat format, int width) throws IOException {
        String alphabet = "ab1 ,;\"\n\t'\u00e4";
        StringBuilder text = new StringBuilder();
        for (int row = random.nextInt(6); row > 0; row--) {
            Object[] cells = new Object[width];
            for (int i = 0; i < width; i++) {
                StringBuilder cell = new StringBuilder();
                for (int k = random.nextInt(6); k > 0; k--) {
                    cell.append(alphabet.charAt(random.nextInt(alphabet.length())));
                }
                cells[i] = cell.toString();
            }
            format.printRecord(text, cells);
        }
        return text.toString();
    }

    @Test
    void counts_lines_across_cells_of_several_lines() throws IOException {
        List<RawRow> rows = rows("a,b\r\n1,\"x\r\ny\"\r\n\r\n2,z\r3,w", ',');

        assertThat(rows).extracting(RawRow::line).containsExactly(1L, 2L, 5L, 6L);
        assertThat(rows.get(1).cells()).containsExactly("1", "x\ny");
    }

    @Test
    void gives_up_only_the_line_whose_quote_never_closes() throws IOException {
        List<RawRow> rows = rows("a,b\n1,\"x\n2,y\n3,z\n", ',');

        assertThat(rows).hasSize(4);
        assertThat(rows.get(1).damage()).hasValueSatisfying(d -> assertThat(d.cell()).isEqualTo(1));
        assertThat(rows.get(1).text()).isEqualTo("1,\"x");
        assertThat(rows.get(2).cells()).containsExactly("2", "y");
        assertThat(rows).extracting(RawRow::line).containsExactly(1L, 2L, 3L, 4L);
    }

    @Test
    void a_later_quote_does_not_swallow_the_rows_between() throws IOException {
        List<RawRow> rows = rows("1,\"x\n2,y\n3,\"z\"\n4,w\n", ',');

        assertThat(rows).extracting(r -> r.damage().isPresent()).containsExactly(true, false, false, false);
        assertThat(rows.get(2).cells()).containsExactly("3", "z");
    }

    @Test
    void names_the_cell_with_text_after_its_quote() throws IOException {
        List<RawRow> rows = rows("1,\"x\"y,\"z\n2,\"y\"  ,z\n", ',');

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).damage()).hasValueSatisfying(d -> {
            assertThat(d.cell()).isEqualTo(1);
            assertThat(d.what()).contains("after a closing quote");
        });
        assertThat(rows.get(1).cells()).containsExactly("2", "y", "z");
    }

    @Test
    void goes_on_after_a_line_without_end() throws IOException {
        String endless = "x".repeat(3 * RecordReader.MAX_CHARACTERS);
        List<RawRow> rows = rows("1,a\n2," + endless + "\n3,\"" + endless + "\n4,d\n", ',');

        assertThat(rows).extracting(r -> r.damage().isPresent()).containsExactly(false, true, true, false);
        assertThat(rows).extracting(RawRow::line).containsExactly(1L, 2L, 3L, 4L);
        assertThat(rows).allSatisfy(
                r -> assertThat(r.text().length()).isLessThanOrEqualTo(RecordReader.MAX_CHARACTERS + 1));
    }

    @Test
    void a_cell_of_too_many_lines_counts_as_a_lost_quote() throws IOException {
        List<RawRow> rows = rows("1,\"" + "a\n".repeat(RecordReader.MAX_LINES + 50) + "9,z\n", ',');

        assertThat(rows.get(0).damage()).isPresent();
        assertThat(rows.get(rows.size() - 1).cells()).containsExactly("9", "z");
        assertThat(rows).hasSize(RecordReader.MAX_LINES + 51);
    }

    /** Each line opens a quote that the next one closes: the work must stay in proportion. */
    @Test
    void a_table_of_nothing_but_damage_ends() throws IOException {
        String line = "\"\",a\",\"\n";
        int lines = 20_000;

        assertThat(rows(line.repeat(lines), ',')).hasSizeBetween(lines / RecordReader.MAX_LINES, lines);
    }

    private static List<RawRow> rows(String text, char separator) throws IOException {
        RecordReader reader = new RecordReader(new StringReader(text));
        reader.separator(separator);
        List<RawRow> rows = new ArrayList<>();
        for (RawRow row = reader.next(); row != null; row = reader.next()) {
            rows.add(row);
        }
        return rows;
    }
}
