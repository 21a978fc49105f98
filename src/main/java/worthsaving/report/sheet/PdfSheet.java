package worthsaving.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.Currency;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import worthsaving.quantity.Money;

/** A sheet as one PDF page: real text in an embedded typeface, photos as they are. */
public final class PdfSheet {

    /** More are named below the others. */
    public static final int MOST_PHOTOS = 4;

    /** Paper, upright. */
    public enum Paper {
        A4(PDRectangle.A4),
        LETTER(PDRectangle.LETTER);

        private final PDRectangle size;

        Paper(PDRectangle size) {
            this.size = size;
        }

        /** Letter where dollars are paid in the United States, A4 elsewhere. */
        public static Paper usualFor(Currency currency) {
            return currency.equals(Money.USD) ? LETTER : A4;
        }
    }

    private static final float BOLD_STROKE = 0.032f;

    private final Paper paper;
    private final float left;
    private final float top;
    private final Map<Photo, PDImageXObject> images = new HashMap<>();

    private PdfSheet(Paper paper) {
        this.paper = paper;
        this.left = (paper.size.getWidth() - (float) PageComposer.WIDTH) / 2;
        this.top = paper.size.getHeight() - (paper.size.getHeight() - (float) PageComposer.HEIGHT) / 2;
    }

    /** Writes the document; {@code out} stays open. */
    public static void write(DecisionSheet sheet, Paper paper, OutputStream out) throws IOException {
        DecisionSheet fitted = PageFit.to(sheet, PageComposer.HEIGHT);
        try (PDDocument document = new PDDocument()) {
            new PdfSheet(paper).draw(document, fitted);
            document.save(out);
        }
    }

    private void draw(PDDocument document, DecisionSheet sheet) throws IOException {
        describe(document, sheet);
        PDPage page = new PDPage(paper.size);
        document.addPage(page);
        PDFont font;
        try (InputStream file = Typeface.file()) {
            font = PDType0Font.load(document, file, true);
        }
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            for (Mark mark : PageComposer.compose(sheet).marks()) {
                if (mark instanceof Mark.Text text) {
                    text(content, font, text);
                } else if (mark instanceof Mark.Box box) {
                    content.setNonStrokingColor(box.ink().red(), box.ink().green(), box.ink().blue());
                    content.addRect(x(box.x()), y(box.y() + box.height()), (float) box.width(), (float) box.height());
                    content.fill();
                } else if (mark instanceof Mark.Rule rule) {
                    content.setStrokingColor(rule.ink().red(), rule.ink().green(), rule.ink().blue());
                    content.setLineWidth((float) rule.thickness());
                    content.moveTo(x(rule.x1()), y(rule.y1()));
                    content.lineTo(x(rule.x2()), y(rule.y2()));
                    content.stroke();
                } else if (mark instanceof Mark.Image image) {
                    image(document, content, font, image);
                }
            }
        }
    }

    private static void describe(PDDocument document, DecisionSheet sheet) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(sheet.title() + ": " + sheet.headline());
        about.setSubject("Decision sheet, " + sheet.audience().label());
        about.setCreator("Worthsaving");
        Calendar day = GregorianCalendar.from(sheet.provenance().prepared().atStartOfDay(ZoneOffset.UTC));
        about.setCreationDate(day);
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences view = new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        view.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(view);
    }

    /** Bold is filled and stroked: the same letters, so that one embedded typeface does. */
    private void text(PDPageContentStream content, PDFont font, Mark.Text text) throws IOException {
        if (text.text().isBlank()) {
            return;
        }
        content.beginText();
        content.setFont(font, (float) text.size());
        content.setNonStrokingColor(text.ink().red(), text.ink().green(), text.ink().blue());
        content.setRenderingMode(text.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        if (text.bold()) {
            content.setStrokingColor(text.ink().red(), text.ink().green(), text.ink().blue());
            content.setLineWidth((float) text.size() * BOLD_STROKE);
        }
        content.newLineAtOffset(x(text.x()), y(text.y()));
        content.showText(Typeface.get().showable(text.text()));
        content.endText();
    }

    private void image(PDDocument document, PDPageContentStream content, PDFont font, Mark.Image image)
            throws IOException {
        PDImageXObject picture;
        try {
            picture = images.get(image.photo());
            if (picture == null) {
                picture = PDImageXObject.createFromByteArray(document, image.photo().bytes(), image.photo().name());
                images.put(image.photo(), picture);
            }
        } catch (IOException | RuntimeException e) {
            frame(content, font, image);
            return;
        }
        float[] m = image.photo().turn().matrix();
        content.saveGraphicsState();
        content.transform(new Matrix((float) image.width(), 0, 0, (float) image.height(), x(image.x()),
                y(image.y() + image.height())));
        content.transform(new Matrix(m[0], m[1], m[2], m[3], m[4], m[5]));
        content.drawImage(picture, 0, 0, 1, 1);
        content.restoreGraphicsState();
    }

    /** A picture whose inside turns out to be broken leaves its place marked. */
    private void frame(PDPageContentStream content, PDFont font, Mark.Image image) throws IOException {
        content.setStrokingColor(Ink.LINE.red(), Ink.LINE.green(), Ink.LINE.blue());
        content.setLineWidth(0.6f);
        content.addRect(x(image.x()), y(image.y() + image.height()), (float) image.width(), (float) image.height());
        content.stroke();
        text(content, font, new Mark.Text(image.x() + 4, image.y() + 12, PageComposer.SMALL, false, Ink.SOFT,
                "cannot be drawn"));
    }

    private float x(double x) {
        return left + (float) x;
    }

    private float y(double y) {
        return top - (float) y;
    }
}
