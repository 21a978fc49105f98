package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Machines with little memory, without a screen and without fonts, each played by a process of its own. */
class HardPlacesTest {

    private static final int MANY_ROWS = 100_000;
    private static final List<String> SMALL = List.of("-Xmx256m");
    /** As ./worthsaving starts the program. */
    private static final String BY_SCRIPT = "-Dworthsaving.command=./worthsaving";
    private static final Map<String, String> NO_SCREEN = Map.of("DISPLAY", "", "WAYLAND_DISPLAY", "");

    @TempDir
    Path folder;

    @Test
    void the_sample_lot_is_ranked_in_256_megabytes_and_without_a_screen() throws Exception {
        Processes.Ended ended = Processes.java(folder, SMALL, NO_SCREEN, Main.class.getName(), "rank",
                "shared/samples/lot.csv", "--today", "2026-01-15");

        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.OK);
        assertThat(ended.out().lines().count()).isGreaterThan(10);
        assertThat(ended.err()).doesNotContain("OutOfMemory");
    }

    @Test
    void a_hundred_thousand_rows_are_checked_in_256_megabytes() throws Exception {
        Path lot = folder.resolve("many.csv");
        try (BufferedWriter rows = Files.newBufferedWriter(lot)) {
            rows.write("id,year,make,model,odometer,price,currency,title,present,story\n");
            for (int i = 0; i < MANY_ROWS; i++) {
                rows.write("R" + i + "," + (1995 + i % 25) + ",honda,civic," + (40_000 + i) + "," + (500 + i % 4_000)
                        + ",USD,clean,NO_CRANK,\"invented car number " + i + ", starts when it likes\"\n");
            }
            rows.write("BAD,two thousand,honda,civic,1,1,USD,clean,,\n");
        }

        Processes.Ended ended = Processes.java(folder, SMALL, NO_SCREEN, Main.class.getName(), "lot", "check",
                lot.toString());

        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.SOME_ROWS_REFUSED);
        assertThat((ended.out() + ended.err()).replaceAll("[, ](?=\\d{3}\\b)", "")).contains("100000");
        assertThat(ended.out() + ended.err()).contains("two thousand");
    }

    @Test
    void the_window_without_a_screen_says_so_and_names_the_command() throws Exception {
        Processes.Ended ended = Processes.java(folder, List.of(BY_SCRIPT), NO_SCREEN, "worthsaving.desktop.Main");

        if (System.getProperty("os.name").toLowerCase(java.util.Locale.ROOT).contains("linux")) {
            assertThat(ended.code()).isEqualTo(5);
            assertThat(ended.err()).contains("DISPLAY", "./worthsaving rank").doesNotContain("Exception");
        }
    }

    /** No folder of fonts is known to fontconfig and the user's own is empty; the sheet brings its typeface along. */
    @Test
    void a_sheet_needs_no_font_of_the_machine() throws Exception {
        Path pdf = folder.resolve("sheet.pdf");
        Path car = Files.writeString(folder.resolve("car.csv"), """
                id,year,make,model,odometer,price,currency,title,present
                A1,2014,honda,civic,98000,900,USD,clean,NO_CRANK
                """);

        Processes.Ended ended = Processes.java(folder,
                List.of("-Duser.home=" + Files.createDirectory(folder.resolve("nobody")), "-Djava.awt.headless=true"),
                Map.of("FONTCONFIG_FILE", noFonts().toString(), "DISPLAY", ""), Main.class.getName(), "sheet", car.toString(),
                "--today", "2026-01-15", "--to", pdf.toString());

        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.OK);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("2014 Honda Civic");
            assertThat(document.getPage(0).getResources().getFontNames()).isNotEmpty()
                    .allSatisfy(f -> assertThat(document.getPage(0).getResources().getFont(f).isEmbedded()).isTrue());
        }
    }

    @Test
    void the_window_without_any_font_says_what_it_lacks() throws Exception {
        assumeTrue(System.getProperty("os.name").equals("Linux") && System.getenv("DISPLAY") != null,
                "needs a screen; run the tests under: xvfb-run -a");
        Processes.Ended ended = Processes.java(folder, List.of("-Dprism.order=sw", BY_SCRIPT),
                Map.of("FONTCONFIG_FILE", noFonts().toString()), "worthsaving.desktop.Main");

        assertThat(ended.code()).isEqualTo(5);
        assertThat(ended.err()).contains("The window cannot be opened", "fonts-dejavu-core", "./worthsaving rank")
                .doesNotContain("\tat ");
    }

    private Path noFonts() throws IOException {
        return Files.writeString(folder.resolve("fonts.conf"),
                "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>");
    }

    @Test
    void results_that_a_full_drive_does_not_take_are_not_called_done() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.isWritable(full), "a drive that is always full is a thing of Linux");
        Processes.Ended ended = Processes.java(folder, full, Main.class.getName(), "catalogue", "check");

        assertThat(ended.err()).contains("could not all be written");
        assertThat(ended.code()).isEqualTo(ExitCode.FILE_UNUSABLE);
    }

    @Test
    void a_result_that_cannot_be_written_is_told_and_leaves_nothing_half_done() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.isWritable(full), "a drive that is always full is a thing of Linux");
        Processes.Ended ended = Processes.java(folder, List.of(), NO_SCREEN, Main.class.getName(), "lot", "check",
                "shared/samples/bad/figures.csv", "--bad-rows", full.toString());

        assertThat(ended.code()).as(ended.err()).isEqualTo(ExitCode.FILE_UNUSABLE);
        assertThat(ended.err()).contains("No space left");
    }
}
