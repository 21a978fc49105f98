package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueReading;
import worthsaving.catalog.FindingKind;
import worthsaving.vehicle.Vin;

/** VINs and trouble codes against the collected outside values; each row of those names its source. */
class OutsideChecksTest {

    private static final Pattern TWO_BYTES = Pattern.compile("two bytes 0x([0-9A-F]{4})");

    @Test
    void two_bytes_decode_as_published() throws IOException {
        List<CSVRecord> rows = OutsideFiles.rows("checks/checks.csv").stream()
                .filter(r -> r.get("id").startsWith("DTC-") && r.get("input").startsWith("two bytes"))
                .toList();

        assertThat(rows).hasSize(6).allSatisfy(row -> {
            Matcher bytes = TWO_BYTES.matcher(row.get("input"));
            assertThat(bytes.matches()).isTrue();
            assertThat(TroubleCode.ofBytes(Integer.parseInt(bytes.group(1), 16)).text())
                    .as("%s, source: %s", row.get("id"), row.get("source"))
                    .isEqualTo(row.get("expected"));
        });
    }

    @Test
    void generic_codes_are_the_standards() throws IOException {
        List<CSVRecord> rows = OutsideFiles.rows("checks/dtc_generic.csv");

        assertThat(rows).hasSizeGreaterThan(30).allSatisfy(row ->
                assertThat(new TroubleCode(row.get("code")).definedBy())
                        .as(row.get("code"))
                        .isEqualTo(TroubleCode.DefinedBy.STANDARD));
    }

    /** Every row says something about the code; where the catalogue asks about it, the finding is found. */
    @Test
    void generic_codes_stand_for_findings() throws IOException {
        CodeTable table;
        try (Reader in = Files.newBufferedReader(Path.of("shared/vocabulary", CodeTable.FILE))) {
            table = CodeTable.read(in);
        }
        List<CSVRecord> rows = OutsideFiles.rows("checks/dtc_generic.csv");

        assertThat(rows).hasSize(35).allSatisfy(row -> {
            TroubleCode code = new TroubleCode(row.get("code"));
            assertThat(table.row(code)).as(row.get("code")).hasValueSatisfying(r ->
                    assertThat(r.meaning()).isNotBlank());
            assertThat(table.row(code).flatMap(CodeTable.Row::finding).isPresent()).as(row.get("code"))
                    .isEqualTo(!code.text().equals("P0325"));
        });
    }

    /** What the catalogue says of a code and what the table of codes says must not differ. */
    @Test
    void the_table_of_codes_agrees_with_the_catalogue() throws IOException {
        CodeTable table;
        try (Reader in = Files.newBufferedReader(Path.of("shared/vocabulary", CodeTable.FILE))) {
            table = CodeTable.read(in);
        }
        Catalogue catalogue = ((CatalogueReading.Valid) CatalogueReader.read(OutsideChecksTest::catalogueFile))
                .catalogue();

        assertThat(catalogue.findings()).filteredOn(f -> !f.codes().isEmpty()).hasSizeGreaterThan(20)
                .allSatisfy(f -> assertThat(f.codes()).allSatisfy(code ->
                        assertThat(table.row(new TroubleCode(code)).flatMap(CodeTable.Row::finding)).as(code)
                                .contains(f.id())));
        assertThat(catalogue.findings().stream().map(FindingKind::id)).containsAll(table.findings());
    }

    private static Reader catalogueFile(String name) {
        try {
            return Files.newBufferedReader(Path.of("shared/catalogue", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void classes_of_codes_are_as_published() throws IOException {
        assertThat(OutsideFiles.rows("checks/checks.csv")).filteredOn(r -> r.get("id").equals("DTC-CLASS")).hasSize(1)
                .allSatisfy(r -> assertThat(r.get("input")).contains("P1xxx,P3000-P33FF -> manufacturer"));
        for (int digits = 0; digits <= 0xfff; digits++) {
            String rest = String.format(Locale.ROOT, "%03X", digits);
            TroubleCode.DefinedBy third = digits < 0x400 ? TroubleCode.DefinedBy.MAKER : TroubleCode.DefinedBy.STANDARD;
            assertThat(new TroubleCode("P0" + rest).definedBy()).isEqualTo(TroubleCode.DefinedBy.STANDARD);
            assertThat(new TroubleCode("P1" + rest).definedBy()).isEqualTo(TroubleCode.DefinedBy.MAKER);
            assertThat(new TroubleCode("P2" + rest).definedBy()).isEqualTo(TroubleCode.DefinedBy.STANDARD);
            assertThat(new TroubleCode("P3" + rest).definedBy()).isEqualTo(third);
        }
    }

    @Test
    void vins_are_judged_as_published() throws IOException {
        List<CSVRecord> rows = OutsideFiles.rows("checks/checks.csv").stream()
                .filter(r -> r.get("id").startsWith("VIN-")).toList();

        assertThat(rows).hasSize(9).allSatisfy(row -> {
            JsonNode expected = row.get("expected").startsWith("{") || row.get("expected").startsWith("[")
                    ? new ObjectMapper().readTree(row.get("expected")) : null;
            switch (row.get("id")) {
                case "VIN-BAD2" -> assertThatThrownBy(() -> new Vin(row.get("input"))).hasMessageContaining("'I'");
                case "VIN-BAD3" -> {
                    Vin zeros = new Vin("0".repeat(17));
                    assertThat(zeros.checkDigitHolds()).isTrue();
                    assertThat(zeros.modelYear()).isEmpty();
                }
                case "VIN-BLIND" -> assertThat(expected).allSatisfy(group -> seesNothingOf(group.asText()));
                case "VIN-YEAR" -> expected.properties().forEach(code -> {
                    assertThat(new Vin("1HGCM8263" + code.getKey() + "A004352").modelYear())
                            .hasValue(code.getValue().get(0).asInt());
                    assertThat(new Vin("1HGCM8A63" + code.getKey() + "A004352").modelYear())
                            .hasValue(code.getValue().get(1).asInt());
                });
                default -> {
                    Vin vin = new Vin(row.get("input"));
                    JsonNode sum = expected.has("weighted sum") ? expected.get("weighted sum") : expected.get("sum");
                    JsonNode check = expected.has("check") ? expected.get("check") : expected.get("expected check");
                    assertThat(vin.weightedSum()).as(row.get("id")).isEqualTo(sum.asInt());
                    assertThat(String.valueOf(vin.expectedCheckDigit())).isEqualTo(check.asText());
                    assertThat(vin.checkDigitHolds()).isEqualTo(expected.get("valid").asBoolean());
                }
            }
        });
    }

    /** Within a group of equal value a change is not seen, at any place but that of the check digit itself. */
    private static void seesNothingOf(String group) {
        for (char a : group.toCharArray()) {
            for (char b : group.toCharArray()) {
                for (int i = 0; i < 17; i++) {
                    String with = "1".repeat(i) + a + "1".repeat(16 - i);
                    char check = i == 8 ? a : new Vin(with).expectedCheckDigit();
                    String good = i == 8 ? with : with.substring(0, 8) + check + with.substring(9);
                    String changed = good.substring(0, i) + b + good.substring(i + 1);
                    assertThat(new Vin(changed).weightedSum() == new Vin(good).weightedSum()).isTrue();
                    if (i != 8) {
                        assertThat(new Vin(changed).checkDigitHolds()).isTrue();
                    }
                }
            }
        }
    }

    /** Every other single change is caught, whatever the number: 2,000 numbers by chance, every place, every letter. */
    @Test
    void every_other_single_substitution_is_caught() {
        String allowed = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";
        List<String> blind = List.of("1AJ", "2BKS", "3CLT", "4DMU", "5ENV", "6FW", "7GPX", "8HY", "9RZ");
        SplittableRandom random = new SplittableRandom(565);
        for (int n = 0; n < 2_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 17; i++) {
                text.append(allowed.charAt(random.nextInt(allowed.length())));
            }
            text.setCharAt(8, new Vin(text.toString()).expectedCheckDigit());
            int i = random.nextInt(17);
            char old = text.charAt(i);
            for (char c : allowed.toCharArray()) {
                text.setCharAt(i, c);
                boolean unseen = c == old || i != 8 && blind.stream()
                        .anyMatch(g -> g.indexOf(c) >= 0 && g.indexOf(old) >= 0);
                assertThat(new Vin(text.toString()).checkDigitHolds()).as("%s at %s", text, i).isEqualTo(unseen);
            }
        }
    }
}
