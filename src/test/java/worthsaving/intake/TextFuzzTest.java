package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

/** The small readers take any text: a value in range or nothing, never a crash. */
class TextFuzzTest {

    private static final int TEXTS = 100_000;
    private static final List<String> PIECES = List.of(
            "0", "1", "9", "12", "345", "2012", ".", ",", " ", "'", "-", "+", "k", "K", "x", "xxx", "*", "$", "\u20ac",
            "km", "mi", "USD", "eur", "P", "C", "B", "U", "A", "F", "!", "(", ")", "/", "\u00a0", "\0", "\n", "\ud83d",
            "\u0664", "price", "odometer", "_", "band", "year");

    @Test
    void amounts() {
        SplittableRandom random = Seed.DEFAULT.derive("amount fuzz").generator();
        int read = 0;
        for (int i = 0; i < TEXTS; i++) {
            String text = text(random);
            var amount = Amount.parse(text);
            if (amount.isPresent()) {
                read++;
                assertThat(amount.get().value()).as(text).isFinite();
                assertThat(text.chars()).as(text).anyMatch(c -> c >= '0' && c <= '9');
            }
        }
        assertThat(read).isGreaterThan(TEXTS / 20);
    }

    @Test
    void trouble_codes() {
        SplittableRandom random = Seed.DEFAULT.derive("code fuzz").generator();
        int read = 0;
        for (int i = 0; i < TEXTS; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = 4 + random.nextInt(3); k > 0; k--) {
                text.append("PCBUpcbu0123456789ABCDEFGX".charAt(random.nextInt(26)));
            }
            var code = TroubleCode.parse(text.toString());
            if (code.isPresent()) {
                read++;
                assertThat(code.get().text()).isEqualToIgnoringCase(text);
                assertThat(TroubleCode.ofBytes(code.get().bytes())).isEqualTo(code.get());
            }
        }
        assertThat(read).isGreaterThan(TEXTS / 500);
    }

    @Test
    void headers() {
        SplittableRandom random = Seed.DEFAULT.derive("header fuzz").generator();
        int read = 0;
        for (int i = 0; i < TEXTS; i++) {
            String text = text(random);
            var column = Column.named(text, 0);
            if (column.isPresent()) {
                read++;
                assertThat(column.get().header()).isEqualTo(text);
                assertThat(column.get().unit().isEmpty() || column.get().field() == Field.ODOMETER).isTrue();
            }
        }
        assertThat(read).isGreaterThan(TEXTS / 200);
    }

    /** A cell of any text in any column: the row is a listing or refused with a reason. */
    @Test
    void cells() {
        SplittableRandom random = Seed.DEFAULT.derive("cell fuzz").generator();
        Field[] fields = Field.values();
        int refused = 0;
        for (int i = 0; i < TEXTS / 5; i++) {
            Field field = fields[random.nextInt(fields.length)];
            String cell = "\"" + text(random).replace("\"", "\"\"") + "\"";
            Lot lot = Field.NEEDED.contains(field) || field == Field.ID
                    ? Tables.read(Tables.HEADER, row(field, cell))
                    : Tables.withColumn(field.title(), cell);
            assertThat(lot.entries().size() + lot.refused().size()).as("%s %s", field, cell).isEqualTo(1);
            assertThat(lot.refused()).allSatisfy(r -> assertThat(r.faults()).isNotEmpty());
            refused += lot.refused().size();
        }
        assertThat(refused).isBetween(TEXTS / 100, TEXTS / 6);
    }

    private static String row(Field field, String cell) {
        return switch (field) {
            case ID -> cell + ",2012,ford,focus,90000,1500";
            case YEAR -> "A1," + cell + ",ford,focus,90000,1500";
            case MAKE -> "A1,2012," + cell + ",focus,90000,1500";
            case MODEL -> "A1,2012,ford," + cell + ",90000,1500";
            case ODOMETER -> "A1,2012,ford,focus," + cell + ",1500";
            default -> "A1,2012,ford,focus,90000," + cell;
        };
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int k = 1 + random.nextInt(5); k > 0; k--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }
}
