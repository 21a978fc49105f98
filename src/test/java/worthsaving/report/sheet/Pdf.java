package worthsaving.report.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a reader of a PDF gets out of it. */
record Pdf(int pages, String text, List<String> outside, byte[] bytes) {

    private static final double MARGIN = 36 - 0.5;

    static Pdf of(DecisionSheet sheet, PdfSheet.Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfSheet.write(sheet, paper, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            PDRectangle page = document.getPage(0).getMediaBox();
            List<String> outside = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition at) {
                    double left = at.getXDirAdj();
                    double bottom = at.getYDirAdj();
                    if (left < MARGIN - 0.5 || left + at.getWidthDirAdj() > page.getWidth() - MARGIN
                            || bottom - at.getHeightDir() < MARGIN || bottom > page.getHeight() - MARGIN) {
                        outside.add(at.getUnicode() + " at " + left + ", " + bottom);
                    }
                    super.processTextPosition(at);
                }
            };
            String text = stripper.getText(document).replaceAll("\\s+", " ");
            return new Pdf(document.getNumberOfPages(), text, List.copyOf(outside), out.toByteArray());
        }
    }
}
