package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.TestPhotos;
import worthsaving.desktop.HandTurned;
import worthsaving.report.sheet.Audience;
import worthsaving.shell.PhotoToShow;

class SheetModelTest {

    private final HandTurned threads = new HandTurned();
    private List<PhotoToShow> journal = List.of();
    private final CarModel car = new CarModel(Cars.GROUND, threads.background(), threads.screen());
    private final SheetModel sheet = new SheetModel(
            car, () -> Keeping.USUAL, () -> journal, Cars.GROUND, threads.background(), threads.screen());

    @TempDir
    private Path folder;

    @BeforeEach
    void open() {
        car.open(Cars.overheated());
        threads.turnAll();
        sheet.begin();
    }

    private String saved(String name) throws IOException {
        Path file = folder.resolve(name);
        sheet.save(file);
        assertThat(sheet.busyProperty().get()).isTrue();
        threads.turnAll();
        assertThat(sheet.messageProperty().get()).isEqualTo("Saved: " + file);
        if (!name.endsWith(".pdf")) {
            return Files.readString(file);
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void saves_what_the_screen_shows_with_the_levers_where_they_stand() throws IOException {
        car.drag(Lever.PRICE, 777);
        car.letGo();
        threads.turnAll();

        assertThat(saved("s.pdf")).contains("at USD 777",
                car.seen().orElseThrow().appraisal().verdict().headline());
    }

    @Test
    void each_reader_gets_a_sheet_and_the_owner_one_with_the_quote_typed() throws IOException {
        sheet.setAudience(Audience.OWNER);
        sheet.setQuote("4,250");
        assertThat(saved("o.html")).contains("pay the quote", "4,250").contains("for the owner");
        sheet.setAudience(Audience.WORKSHOP);
        assertThat(saved("w.html")).contains("Call the owner");
    }

    @Test
    void says_what_is_no_amount_and_reckons_without_it() throws IOException {
        sheet.setAudience(Audience.OWNER);
        sheet.setQuote("much");
        assertThat(sheet.messageProperty().get()).contains("much");
        assertThat(saved("o.html")).doesNotContain("pay the quote");
    }

    @Test
    void names_a_photo_that_is_gone() throws IOException {
        sheet.addPhotos(List.of(folder.resolve("gone.png")));

        assertThat(sheet.photoNamesProperty().get()).isEqualTo("gone.png");
        assertThat(saved("p.html")).contains("gone.png: cannot be read");
    }

    @Test
    void shows_the_photos_of_the_journal_unless_told_not_to() throws IOException {
        Path picture = folder.resolve("IMG_7.png");
        Files.write(picture, TestPhotos.png());
        journal = List.of(new PhotoToShow(picture, "chain, cover off"), new PhotoToShow(folder.resolve("gone.png")));

        assertThat(sheet.journalPhotos()).containsExactly("chain, cover off", "gone.png");
        assertThat(saved("s.html")).contains("<figcaption>chain, cover off</figcaption>", "gone.png: cannot be read");
        assertThat(saved("s.pdf")).contains("chain, cover off");
        sheet.showJournalPhotos(false);
        assertThat(saved("t.html")).doesNotContain("chain, cover off").doesNotContain("gone.png");
    }

    @Test
    void what_was_chosen_for_one_car_is_not_on_the_sheet_of_the_next() throws IOException {
        sheet.addPhotos(List.of(folder.resolve("first.png")));
        sheet.setAudience(Audience.OWNER);
        sheet.setQuote("4250");
        sheet.begin();

        assertThat(sheet.photoNamesProperty().get()).isEmpty();
        assertThat(saved("next.html")).doesNotContain("first.png").doesNotContain("4,250").doesNotContain("for the owner");
    }

    @Test
    void says_when_the_file_cannot_be_written_and_leaves_nothing_behind() {
        sheet.save(folder.resolve("no").resolve("s.pdf"));
        threads.turnAll();

        assertThat(sheet.messageProperty().get()).startsWith("The file cannot be used");
        assertThat(sheet.busyProperty().get()).isFalse();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void says_when_there_is_no_judgement_yet() {
        car.open(Cars.overheated());
        sheet.save(folder.resolve("s.pdf"));

        assertThat(sheet.messageProperty().get()).startsWith("The car is not judged yet");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void draws_the_page_for_a_printer() {
        List<SheetPicture> drawn = new ArrayList<>();
        sheet.draw(drawn::add);
        threads.turnAll();

        SheetPicture page = drawn.get(0);
        // 8.5 by 11 inches at 300 dots; the renderer rounds down, in single precision
        assertThat(page.width()).isBetween(2549, 2550);
        assertThat(page.height()).isBetween(3299, 3300);
        assertThat(page.argb()).contains(0xffffffff).hasSize(page.width() * page.height());
        int dark = 0;
        for (int pixel : page.argb()) {
            dark += (pixel & 0xff) < 128 ? 1 : 0;
        }
        assertThat(dark).isBetween(20_000, 2_000_000);
    }
}
