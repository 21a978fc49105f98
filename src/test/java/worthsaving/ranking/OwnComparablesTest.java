package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.intake.LotEntry;
import worthsaving.market.PriceKind;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;

/** Invented rows of a user's own table. */
class OwnComparablesTest {

    private static LotEntry row(String id, Fact<Money> price, String kind) {
        Listing l = Lots.listing(id, 1);
        return new LotEntry(1, new Listing(id, l.vehicle(), price, l.seen(), l.towMiles(), l.exposure(), l.observations(),
                "", "mine.csv, row " + id), Fact.unknown(), kind, List.of());
    }

    @Test
    void words_beside_the_price_tell_asked_from_sold() {
        OwnComparables read = OwnComparables.of(List.of(row("1", Fact.known(Money.usd(4_000)), ""),
                row("2", Fact.known(Money.usd(3_800)), "Sold"), row("3", Fact.known(Money.usd(4_200)), "advertised")),
                Money.USD);

        assertThat(read.faults()).isEmpty();
        assertThat(read.good()).extracting(c -> c.kind())
                .containsExactly(PriceKind.ASKING, PriceKind.SALE, PriceKind.ASKING);
        assertThat(read.good()).extracting(c -> c.price().amount()).containsExactly(4_000.0, 3_800.0, 4_200.0);
    }

    @Test
    void rows_that_cannot_serve_are_named_and_the_others_go_in() {
        OwnComparables read = OwnComparables.of(List.of(row("1", Fact.unknown(), "sold"),
                row("2", Fact.known(Money.of(3_000, "EUR")), "sold"), row("3", Fact.known(Money.usd(3_000)), "bartered"),
                row("4", Fact.known(Money.usd(3_000)), "paid")), Money.USD);

        assertThat(read.good()).hasSize(1);
        assertThat(read.faults()).hasSize(3);
        assertThat(read.faults().get(0)).contains("row 1", "there is none");
        assertThat(read.faults().get(1)).contains("row 2", "EUR", "USD");
        assertThat(read.faults().get(2)).contains("row 3", "'bartered'");
    }
}
