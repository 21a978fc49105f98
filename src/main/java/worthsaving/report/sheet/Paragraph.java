package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines, at spaces where it can and inside a word where it must. */
final class Paragraph {

    private final Typeface face;

    Paragraph(Typeface face) {
        this.face = face;
    }

    /** At least one line; none is wider than {@code width}, unless a single character is. */
    List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : face.showable(text).split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (face.width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (face.width(line, size) > width && line.codePointCount(0, line.length()) > 1) {
                int end = fitting(line, size, width);
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private int fitting(String word, double size, double width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (face.width(word.substring(0, next), size) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
