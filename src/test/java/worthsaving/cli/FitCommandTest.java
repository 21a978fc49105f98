package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.quantity.Seed;

/** Fitting on a table as a user keeps it; prices made up by a formula. */
class FitCommandTest {

    @TempDir
    private Path folder;

    private String table(String header) throws IOException {
        SplittableRandom random = Seed.DEFAULT.derive("a user's table").generator();
        StringBuilder text = new StringBuilder(header).append('\n');
        for (int i = 0; i < 120; i++) {
            int year = 2004 + random.nextInt(18);
            double km = Math.rint((2025 - year) * 12_000 * (0.6 + random.nextDouble()));
            double price = 16_000 * Math.exp(-0.1 * (2025 - year) - 1e-6 * km) * Math.exp(0.2 * (random.nextDouble() - 0.5));
            text.append(String.format(Locale.ROOT, "%.0f \u20ac;Opel;%s;%d;%.0f;%02d.03.2025%n", price,
                    i % 2 == 0 ? "Astra" : "Corsa", year, km, 1 + i % 28));
        }
        text.append("call;Opel;Astra;2012;90000;01.03.2025\n");
        return Files.writeString(folder.resolve("mine.csv"), text).toString();
    }

    @Test
    void fits_without_a_shape_says_how_it_read_the_table_and_judges_with_the_result() throws IOException {
        String data = table("Preis;Marke;Modell;Baujahr;km;Datum");
        String model = folder.resolve("mine.json").toString();
        Run run = Run.of("fit", data, model);

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.OK);
        assertThat(run.err()).contains("price             from 'Preis' in EUR", "odometer          from 'km' in km",
                "market DE (Germany)", "mine.csv: line 122, column Preis: 'call'", "100 % done");
        assertThat(run.out()).contains("market DE, EUR, asking prices of 2025-03-01 to 2025-03-28, 120 rows");

        String lot = Files.writeString(folder.resolve("lot.csv"),
                "id,year,make,model,odometer,price,title\nA,2014,opel,astra,110000,1500,clean\n").toString();
        Run judged = Run.of("judge", lot, "--model", model, "--today", "2025-06-01");
        assertThat(judged.code()).as(judged.err()).isEqualTo(ExitCode.OK);
        assertThat(judged.out()).contains("prices by mine.csv", "money in EUR, odometers in km");
    }

    @Test
    void asks_for_what_it_cannot_tell_and_writes_nothing() throws IOException {
        String data = table("a;b;c;d;e;f");
        Run run = Run.of("fit", data, folder.resolve("mine.json").toString());

        assertThat(run.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run.err()).contains("--date 2025-11-01").contains("It has the columns a, b, c, d, e, f");
        assertThat(folder.resolve("mine.json")).doesNotExist();
    }

    @Test
    void a_model_that_is_no_json_file_and_a_wrong_column_are_refused() throws IOException {
        String data = table("Preis;Marke;Modell;Baujahr;km;Datum");

        assertThat(Run.of("fit", data, "us_cars_2005").code()).isEqualTo(ExitCode.USAGE);
        Run run = Run.of("data", data, "--column", "price=Cost", "--column", "colour=Marke");
        assertThat(run.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(run.err()).contains("there is no column 'Cost' for the price", "'colour' is no field");
    }

    @Test
    void reports_on_a_table_without_a_shape() throws IOException {
        Run run = Run.of("data", table("Preis;Marke;Modell;Baujahr;km;Datum"), "--units", "mi");

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.err()).contains("in miles (as you say)");
        assertThat(run.out()).contains("120 rows read, 1 unreadable, 120 kept", "odometer");
    }
}
