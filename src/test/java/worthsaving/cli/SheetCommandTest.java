package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.TestPhotos;

class SheetCommandTest {

    @TempDir
    private Path folder;
    private Path lot;

    @BeforeEach
    void write() throws IOException {
        lot = Files.writeString(folder.resolve("lot.csv"), """
                id,year,make,model,odometer,price,currency,title,present,vin
                A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK CRANK_LOCKED,1M8GDM9AXKP042788
                """);
    }

    private Run run(Path to, String... more) {
        List<String> args = new ArrayList<>(List.of("sheet", lot.toString(), "--today", "2026-01-15", "--to",
                to.toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource({"flipper, for the buyer", "owner, for the owner", "workshop, workshop's quote"})
    void writes_a_page_for_each_reader(String whom, String says) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        Path html = folder.resolve("sheet.HTML");

        assertThat(run(pdf, "--for", whom, "--paper", "a4").code()).isEqualTo(ExitCode.OK);
        assertThat(run(html, "--for", whom, "--quote", "4200", "--rate", "111").code()).isEqualTo(ExitCode.OK);

        assertThat(text(pdf)).contains("2014 Honda Civic", says, "prepared 2026-01-15").doesNotContain("1M8GDM9AX");
        assertThat(Files.readString(html)).contains("2014 Honda Civic").doesNotContain("1M8GDM9AX");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString())).doesNotContain(".sheet.pdf.part");
        }
    }

    @Test
    void shows_the_identification_number_when_asked_and_names_photos_that_cannot_be_shown() throws IOException {
        Path photo = Files.writeString(folder.resolve("front.heic"), "no picture");
        Run run = run(folder.resolve("s.pdf"), "--with-vin", "--photo", photo.toString(), "--photo",
                folder.resolve("gone.jpg").toString());

        assertThat(run.code()).isEqualTo(ExitCode.OK);
        assertThat(run.err()).contains("front.heic: neither JPEG nor PNG", "gone.jpg: cannot be read");
        assertThat(text(folder.resolve("s.pdf"))).contains("VIN 1M8GDM9AXKP042788", "Photos not shown", "front.heic",
                "gone.jpg");
    }

    @Test
    void shows_the_newest_photos_of_the_journal() throws IOException {
        String book = folder.resolve("book.db").toString();
        Run.of("casebook", "add", "--casebook", book, "--today", "2026-01-15", lot.toString());
        Path picture = Files.write(folder.resolve("IMG_9.png"), TestPhotos.png());
        for (int taken = 1; taken <= 5; taken++) {
            Run.of("casebook", "photo", "--casebook", book, "A1", "--on", "2026-01-0" + taken, picture.toString(),
                    "view " + taken);
        }
        Path html = folder.resolve("s.html");

        assertThat(run(html, "--journal", "--casebook", book).code()).isEqualTo(ExitCode.OK);
        assertThat(Files.readString(html)).containsSubsequence("view 5", "view 4", "view 3", "view 2")
                .doesNotContain("view 1");
        Files.delete(picture);
        Run gone = run(html, "--journal", "--casebook", book);
        assertThat(gone.err()).contains("Not shown: view 5: cannot be read");
        assertThat(run(html).code()).isEqualTo(ExitCode.OK);
        assertThat(Files.readString(html)).doesNotContain("view 5");
    }

    @Test
    void says_when_the_casebook_holds_no_such_case() {
        Run run = run(folder.resolve("s.html"), "--journal", "--casebook", folder.resolve("none.db").toString());

        assertThat(run.code()).isNotEqualTo(ExitCode.OK);
        assertThat(folder.resolve("s.html")).doesNotExist();
    }

    @Test
    void refuses_what_it_cannot_write() {
        assertThat(run(folder.resolve("sheet.doc")).code()).isEqualTo(ExitCode.USAGE);
        Run nowhere = run(folder.resolve("no").resolve("sheet.pdf"));
        assertThat(nowhere.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(nowhere.err()).contains("There is no folder");
        assertThat(run(folder.resolve("s.pdf"), "--for", "nobody").code()).isEqualTo(ExitCode.USAGE);
        assertThat(run(folder.resolve("s.pdf"), "--id", "nobody").code()).isEqualTo(ExitCode.USAGE);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isOne();
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
