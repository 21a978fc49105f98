package worthsaving.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.TestPhotos;
import worthsaving.quantity.Seed;

/** Pictures made here, written by the Java platform's own encoders. */
class PhotoReadingTest {

    /** The JPEG with an Exif segment of one entry, orientation, and a place after it. */
    private static byte[] exif(int orientation, boolean little) throws IOException {
        byte[] jpeg = TestPhotos.encoded("jpg");
        byte[] head = little
                ? new byte[] {'I', 'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 1, 3, 0, 1, 0, 0, 0, (byte) orientation, 0, 0, 0}
                : new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0};
        byte[] place = "GPS 52.5 13.4".getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xff, (byte) 0xe1, 0, (byte) (2 + 6 + head.length + place.length)});
        out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.write(head);
        out.write(place);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static Photo shown(byte[] bytes) {
        return ((PhotoReading.Shown) PhotoReading.of("p", bytes)).photo();
    }

    @ParameterizedTest
    @CsvSource({"jpg, JPEG", "png, PNG"})
    void reads_size_and_format(String format, Photo.Format expected) throws IOException {
        Photo photo = shown(TestPhotos.encoded(format));

        assertThat(photo.format()).isEqualTo(expected);
        assertThat(List.of(photo.width(), photo.height())).containsExactly(80, 40);
        assertThat(photo.turn()).isEqualTo(Photo.Turn.UPRIGHT);
    }

    @ParameterizedTest
    @CsvSource({"1, true, 80", "3, false, 80", "6, true, 40", "8, false, 40", "0, true, 80", "9, false, 80"})
    void takes_the_orientation_and_leaves_place_and_camera(int orientation, boolean little, int width)
            throws IOException {
        Photo photo = shown(exif(orientation, little));

        assertThat(photo.width()).isEqualTo(width);
        assertThat(new String(photo.bytes(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif").doesNotContain("GPS");
    }

    /** Where red is to be seen, by Exif 2.32, tag 0x0112: 0th row and 0th column of the stored picture. */
    @ParameterizedTest
    @CsvSource({
        "1, true, true", "2, false, false", "3, false, false", "4, true, true",
        "5, true, false", "6, true, false", "7, false, true", "8, false, true"
    })
    void is_turned_as_its_camera_was_held(int orientation, boolean upperLeft, boolean lowerLeft)
            throws IOException {
        Photo photo = shown(exif(orientation, true));
        DecisionSheet sheet = SampleSheets.of(Audience.OWNER).withPhotos(List.of(new PhotoReading.Shown(photo)));
        Mark.Image place = PageComposer.compose(PageFit.to(sheet, PageComposer.HEIGHT)).marks().stream()
                .filter(Mark.Image.class::isInstance).map(Mark.Image.class::cast).findFirst().orElseThrow();
        double left = (595.28 - PageComposer.WIDTH) / 2 + place.x();
        double top = (841.89 - PageComposer.HEIGHT) / 2 + place.y();
        try (PDDocument document = Loader.loadPDF(Pdf.of(sheet, PdfSheet.Paper.A4).bytes())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 72);
            assertThat(red(page, left + place.width() * 0.2, top + place.height() * 0.2)).isEqualTo(upperLeft);
            assertThat(red(page, left + place.width() * 0.2, top + place.height() * 0.8)).isEqualTo(lowerLeft);
        }
    }

    private static boolean red(BufferedImage page, double x, double y) {
        int rgb = page.getRGB((int) Math.round(x), (int) Math.round(y));
        return (rgb >> 16 & 0xff) > (rgb & 0xff);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void names_what_is_cut_off_and_never_fails_on_damage(String format) throws IOException {
        byte[] whole = TestPhotos.encoded(format);
        SplittableRandom random = Seed.DEFAULT.derive("photos " + format).generator();
        for (int length = 0; length < whole.length; length += 7) {
            assertThat(PhotoReading.of("p", Arrays.copyOf(whole, length))).isInstanceOf(PhotoReading.Named.class);
        }
        for (int i = 0; i < 3_000; i++) {
            byte[] damaged = whole.clone();
            for (int k = random.nextInt(4); k >= 0; k--) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            assertThat(PhotoReading.of("p", damaged)).isNotNull();
        }
    }

    @Test
    void names_what_is_too_large_or_something_else() {
        assertThat(PhotoReading.of("a.heic", new byte[100])).isEqualTo(
                new PhotoReading.Named("a.heic", "neither JPEG nor PNG"));
        assertThat(PhotoReading.of("b.jpg", new byte[PhotoReading.MOST_BYTES + 1])).isEqualTo(
                PhotoReading.tooLarge("b.jpg"));
    }

    @Test
    void four_photos_at_most_are_shown_and_the_others_named() throws IOException {
        PhotoReading one = PhotoReading.of("p.jpg", TestPhotos.encoded("jpg"));
        DecisionSheet sheet = SampleSheets.of(Audience.FLIPPER)
                .withPhotos(List.of(one, one, one, one, one, new PhotoReading.Named("q", "broken")));
        DecisionSheet fitted = PageFit.to(sheet, PageComposer.HEIGHT);
        Pdf pdf = Pdf.of(sheet, PdfSheet.Paper.LETTER);
        StringBuilder html = new StringBuilder();
        HtmlSheet.write(sheet, html);

        assertThat(fitted.photos()).hasSize(4);
        assertThat(fitted.unshown()).containsExactly("q: broken", "p.jpg: no room");
        assertThat(pdf.pages()).isOne();
        assertThat(pdf.text()).contains("Photos not shown: q: broken; p.jpg: no room.");
        assertThat(html.toString()).contains("data:image/jpeg;base64,");
    }
}
