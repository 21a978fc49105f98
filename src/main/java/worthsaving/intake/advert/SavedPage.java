package worthsaving.intake.advert;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.james.mime4j.MimeException;
import org.apache.james.mime4j.stream.EntityState;
import org.apache.james.mime4j.stream.MimeConfig;
import org.apache.james.mime4j.stream.MimeTokenStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;
import worthsaving.intake.PlainText;

/**
 * The words of an advert that was saved as a page or a mail. Nothing that the page refers to is fetched, and nothing in
 * it is run.
 *
 * @param text what a reader would have seen, or empty
 * @param problem why nothing could be read, if so
 */
public record SavedPage(String text, Optional<String> problem) {

    /** Larger files are no adverts. */
    public static final int MOST_BYTES = 8_000_000;

    private static final Set<String> LEFT_OUT = Set.of("script", "style", "noscript", "template", "svg", "iframe",
            "object", "head", "nav", "footer", "form");
    private static final int SNIFFED = 2_000;

    /**
     * @param name name of the file; its ending decides what it is, where the content does not
     * @param bytes the whole file
     */
    public static SavedPage of(String name, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return new SavedPage("", Optional.of("it is larger than " + MOST_BYTES + " bytes; save the advert alone"));
        }
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        try {
            PlainText plain = PlainText.read(new ByteArrayInputStream(bytes), MOST_BYTES);
            if (plain.notText().isPresent()) {
                return new SavedPage("", Optional.of("it is " + plain.notText().get() + ", not a text"));
            }
            String text = plain.text();
            boolean mail = Set.of("eml", "mht", "mhtml").contains(ending) || looksLikeMail(text);
            String read = mail ? mail(bytes) : isHtml(text) ? html(text) : text;
            return read.isBlank() ? new SavedPage("", Optional.of("there is no text in it"))
                    : new SavedPage(read.strip(), Optional.empty());
        } catch (IOException | MimeException e) {
            return new SavedPage("", Optional.of("it cannot be taken apart: " + e.getMessage()));
        }
    }

    private static boolean looksLikeMail(String text) {
        String head = text.substring(0, Math.min(SNIFFED, text.length()));
        return head.matches("(?si)(?:[a-z-]+: [^\\n]*\\n(?:[ \\t][^\\n]*\\n)*){2,}.*")
                && head.matches("(?si).*(?:^|\\n)mime-version:.*");
    }

    private static boolean isHtml(String text) {
        String head = text.substring(0, Math.min(SNIFFED, text.length())).toLowerCase(Locale.ROOT);
        return head.contains("<html") || head.contains("<!doctype") || head.contains("<body") || head.contains("<div")
                || head.contains("<p>") || head.contains("<br") || head.contains("<table");
    }

    /** What can be read of a page: its title and its text, a line for each block. */
    static String html(String text) {
        Document page = Jsoup.parse(text);
        StringBuilder words = new StringBuilder();
        String title = page.title();
        page.body().traverse(new NodeVisitor() {
            @Override
            public void head(Node node, int depth) {
                if (node instanceof TextNode t && !hidden(t)) {
                    words.append(t.getWholeText().replaceAll("\\s+", " "));
                } else if (node instanceof Element e && (e.isBlock() || e.normalName().equals("br"))) {
                    words.append('\n');
                }
            }

            @Override
            public void tail(Node node, int depth) {
                if (node instanceof Element e && !e.normalName().equals("br")
                        && (e.isBlock() || e.normalName().equals("td"))) {
                    words.append(e.isBlock() ? '\n' : ' ');
                }
            }
        });
        String body = words.toString().replaceAll("[ \\t\\u00a0]+", " ").replaceAll(" ?\\n ?", "\n")
                .replaceAll("\\n{3,}", "\n\n").strip();
        return body.contains(title) || title.isBlank() ? body : title + "\n" + body;
    }

    private static boolean hidden(TextNode text) {
        for (Node node = text.parent(); node instanceof Element e; node = node.parent()) {
            if (LEFT_OUT.contains(e.normalName()) || e.hasAttr("hidden")
                    || e.attr("style").replace(" ", "").contains("display:none")) {
                return true;
            }
        }
        return false;
    }

    /** Subject and first readable part of a mail, plain text before HTML. */
    private static String mail(byte[] bytes) throws IOException, MimeException {
        MimeTokenStream stream = new MimeTokenStream(MimeConfig.PERMISSIVE);
        stream.parse(new ByteArrayInputStream(bytes));
        String subject = "";
        String plain = "";
        String html = "";
        for (EntityState state = stream.getState(); state != EntityState.T_END_OF_STREAM; state = stream.next()) {
            if (state == EntityState.T_FIELD && subject.isEmpty()
                    && stream.getField().getName().equalsIgnoreCase("subject")) {
                subject = stream.getField().getBody().strip();
            } else if (state == EntityState.T_BODY) {
                String type = stream.getBodyDescriptor().getMimeType();
                if (type.equals("text/plain") && plain.isBlank()) {
                    plain = body(stream.getDecodedInputStream());
                } else if (type.equals("text/html") && html.isBlank()) {
                    html = html(body(stream.getDecodedInputStream()));
                }
            }
        }
        String read = plain.isBlank() ? html : plain;
        String title = org.apache.james.mime4j.codec.DecoderUtil.decodeEncodedWords(subject,
                org.apache.james.mime4j.codec.DecodeMonitor.SILENT);
        return read.isBlank() || title.isBlank() ? read : title + "\n" + read;
    }

    private static String body(InputStream in) throws IOException {
        return PlainText.read(in, MOST_BYTES).text();
    }
}
