package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;

/** Several adverts in one text, and adverts out of saved pages and mails. All invented. */
class AdvertPileTest {

    private static final String A = "2014 Honda Civic LX, 98k, no start, $2,600, Dayton OH";
    private static final String B = "2011 Ford Escape XLT 140k miles overheats, $1,500 obo";
    private static final AdvertPile PILE = new AdvertPile(Vocabularies.READER);

    @ParameterizedTest
    @ValueSource(strings = {"\n---\n", "\n\n=====\n\n", "\n* * *\n", "\r\n-----\r\n", "\n\n\n", "\n\n", "\n"})
    void adverts_are_told_apart_by(String between) {
        assertThat(PILE.split(A + between + B, Vocabularies.DAY)).containsExactly(A, B);
    }

    @Test
    void numbered_adverts_are_told_apart() {
        assertThat(PILE.split("Seen tonight:\n1. " + A + "\nclean title\n2) " + B, Vocabularies.DAY))
                .containsExactly(A + "\nclean title", B);
    }

    @Test
    void one_advert_of_several_paragraphs_stays_one() {
        String one = A + "\n\nClean title. Runs rough.\n\nCall after 5. 2 owners.";

        assertThat(PILE.split(one, Vocabularies.DAY)).containsExactly(one);
        assertThat(PILE.split("  \n ", Vocabularies.DAY)).isEmpty();
    }

    @Test
    void a_page_is_read_without_what_nobody_sees() {
        String html = "<html><head><title>Honda</title><script>var year=1999</script><style>p{}</style></head><body>"
                + "<nav>home</nav><p>2014 Honda Civic LX</p><div>98k&nbsp;miles<br>$2,600</div>"
                + "<span hidden>1999 Ford</span><img src='http://example.invalid/x.png'></body></html>";

        SavedPage page = SavedPage.of("a.html", html.getBytes(StandardCharsets.UTF_8));

        assertThat(page.text()).isEqualTo("2014 Honda Civic LX\n\n98k miles\n$2,600");
    }

    @Test
    void a_mail_is_read_whatever_its_coding() {
        String body = Base64.getMimeEncoder().encodeToString(A.getBytes(StandardCharsets.UTF_8));
        String mail = "From: a@example.invalid\r\nSubject: car\r\nMIME-Version: 1.0\r\n"
                + "Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n" + body + "\r\n";

        assertThat(SavedPage.of("x.eml", mail.getBytes(StandardCharsets.UTF_8)).text()).isEqualTo("car\n" + A);
    }

    @Test
    void what_is_no_text_is_turned_away_with_its_reason() {
        assertThat(SavedPage.of("a.txt", new byte[] {'%', 'P', 'D', 'F', '-'}).problem()).hasValueSatisfying(why ->
                assertThat(why).contains("PDF"));
        assertThat(SavedPage.of("a.txt", new byte[0]).problem()).contains("there is no text in it");
    }

    @Test
    void codes_in_an_advert_are_findings_on_the_sellers_word() {
        AdvertReading reading = Vocabularies.read("2014 Mini Cooper S, throws P0016 and P0300, maybe P0420? also P1345");

        assertThat(reading.condition().codes()).extracting(c -> c.value().code().text())
                .containsExactly("P0016", "P0300", "P0420", "P1345");
        List<Observation> seen = reading.toListing("a", "t").observations();
        assertThat(seen).contains(
                new Observation("CODE_CAM_CRANK", Sight.PRESENT, Observation.Witness.SELLER),
                new Observation("CODE_MISFIRE", Sight.PRESENT, Observation.Witness.SELLER),
                new Observation("CODE_CATALYST", Sight.UNSURE, Observation.Witness.SELLER));
    }

    @Test
    void the_number_of_the_car_is_held_against_the_year() {
        AdvertReading reading = Vocabularies.read("2015 Honda Accord EX 98k $2,600 VIN 1HGCM82633A004352");

        assertThat(reading.notes()).anySatisfy(note ->
                assertThat(note).contains("model year 2003, the advert 2015").doesNotContain("1HGCM"));
    }
}
