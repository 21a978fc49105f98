package worthsaving.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HtmlSheetTest {

    static Stream<DecisionSheet> sheets() {
        return SampleSheets.all().stream();
    }

    /** Read by a parser that is not ours: with its three void elements closed, the markup is well-formed XML. */
    @ParameterizedTest
    @MethodSource("sheets")
    void is_well_formed_and_says_what_the_model_says(DecisionSheet sheet) throws Exception {
        Document page = parsed(sheet);
        String text = page.getDocumentElement().getTextContent();

        assertThat(text).contains(sheet.title(), sheet.headline(), sheet.facts(), DecisionSheet.ADVICE,
                sheet.provenance().words(), sheet.chart().title());
        sheet.figures().forEach(f -> assertThat(text).contains(f.label(), f.value()));
        assertThat(names(page)).doesNotContain("script", "link", "img", "iframe", "object", "a");
        assertThat(page.getElementsByTagName("svg").getLength()).isOne();
        assertThat(page.getElementsByTagName("rect").getLength()).isGreaterThan(2);
    }

    private static Document parsed(DecisionSheet sheet) throws Exception {
        StringBuilder html = new StringBuilder();
        HtmlSheet.write(sheet, html);
        String xml = html.toString().replace("<!DOCTYPE html>", "").replaceAll("<meta ([^>]*)>", "<meta $1/>");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    private static List<String> names(Document page) {
        NodeList all = page.getElementsByTagName("*");
        List<String> names = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            names.add(all.item(i).getNodeName());
        }
        return names;
    }
}
