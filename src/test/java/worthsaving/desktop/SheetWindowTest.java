package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import worthsaving.TestPhotos;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Photo;
import worthsaving.casebook.PhotoFile;
import worthsaving.report.sheet.Audience;

/** The decision sheet from the real window: asked for by key, saved to a folder, read again. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class SheetWindowTest {

    @TempDir
    static Path folder;

    private final RealWindow window = new RealWindow();

    @BeforeAll
    static void software() {
        RealWindow.software();
    }

    @Start
    void start(Stage stage) throws IOException {
        window.start(stage, folder);
    }

    @BeforeEach
    void judged() throws TimeoutException {
        window.judged();
    }

    @AfterEach
    void end() {
        window.end();
    }

    @Test
    void the_sheet_of_the_car_on_the_screen_is_saved(FxRobot robot) throws IOException, TimeoutException {
        Path file = folder.resolve("sheet.pdf");
        window.bench().saveTo((chooser, owner) -> file.toFile());
        window.openCar(robot, "C");
        robot.push(KeyCode.CONTROL, KeyCode.P);
        robot.clickOn("#sheet-pdf");
        window.until(() -> Files.exists(file));
        window.until(() -> window.text(robot, "#sheet-message").contains("sheet.pdf"));
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text).contains("2010 Toyota Prius", window.text(robot, "#car-headline"));
        }
        assertThat(Files.list(folder)).noneMatch(p -> p.toString().endsWith(".part"));
        robot.type(KeyCode.ESCAPE);
    }

    /** From the teardown's screen, with another car open before: the sheet is of the one taken apart. */
    @Test
    void the_photos_of_the_journal_are_on_the_sheet(FxRobot robot) throws IOException, TimeoutException {
        Path picture = Files.write(folder.resolve("IMG_3.png"), TestPhotos.png());
        Path file = folder.resolve("journal.pdf");
        window.bench().saveTo((chooser, owner) -> file.toFile());
        robot.interact(() -> {
            window.book().save(new Edit.AddCase(window.bench().lot().listing("C").orElseThrow()));
            window.book().save(new Edit.AddPhoto("C", photo(picture)));
        });
        window.until(() -> !window.book().busyProperty().get());
        window.openCar(robot, "A");
        robot.interact(window.bench()::showTeardown);
        robot.interact(() -> window.bench().teardown().choose("C"));
        window.until(() -> window.bench().teardown().fileProperty().get() != null);
        robot.push(KeyCode.CONTROL, KeyCode.P);
        assertThat(robot.lookup("#sheet-journal").<CheckBox>query().getText()).contains("pump out, shaft loose");
        window.reckoned();
        robot.clickOn("#sheet-pdf");
        window.until(() -> Files.exists(file));
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("2010 Toyota Prius", "pump out, shaft loose");
            assertThat(pdf.getPage(0).getResources().getXObjectNames()).isNotEmpty();
        }
        robot.type(KeyCode.ESCAPE);
    }

    private Photo photo(Path picture) {
        try {
            return PhotoFile.of(picture, window.book().file(), Instant.EPOCH, "opened up",
                    "pump out, shaft loose");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void an_owner_may_give_a_shops_quote_and_a_wrong_one_is_told(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "C");
        robot.push(KeyCode.CONTROL, KeyCode.P);
        TextField quote = robot.lookup("#sheet-quote").query();
        assertThat(quote.isDisabled()).isTrue();
        robot.interact(() -> robot.lookup("#sheet-for").<ComboBox<Audience>>query().setValue(Audience.OWNER));
        assertThat(quote.isDisabled()).isFalse();
        robot.clickOn("#sheet-quote").write("much");
        assertThat(window.text(robot, "#sheet-message")).contains("much");
        robot.type(KeyCode.ESCAPE);
    }

    @Test
    void without_a_car_the_key_says_what_to_do(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.P);
        assertThat(robot.lookup(".label").queryAll())
                .anyMatch(n -> n instanceof Label l && l.getText().equals(Texts.of("screen.no_car")));
        robot.type(KeyCode.ESCAPE);
    }
}
