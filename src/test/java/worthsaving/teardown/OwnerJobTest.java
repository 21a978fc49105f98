package worthsaving.teardown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

class OwnerJobTest {

    private static final Journal JOURNAL = Journal.EMPTY
            .with(new Entry.Worked("", "cover off", Hours.of(4), ""))
            .with(new Entry.Paid("", "oil", Money.usd(40), ""))
            .with(new Entry.PartBought("", "WATER_PUMP", Money.usd(160), ""));

    @Test
    void hours_at_the_rate_and_all_receipts_are_on_the_bill() {
        OwnerJob job = OwnerJob.of(JOURNAL, Money.usd(100), Optional.of(Money.usd(900)));
        assertThat(job.labour()).isEqualTo(Money.usd(400));
        assertThat(job.billed()).isEqualTo(Money.usd(600));
        assertThat(job.left()).contains(Money.usd(300));
        assertThat(OwnerJob.of(JOURNAL, Money.usd(100), Optional.of(Money.usd(500))).left()).contains(Money.usd(-100));
        assertThat(OwnerJob.of(JOURNAL, Money.usd(100), Optional.empty()).left()).isEmpty();
        assertThatThrownBy(() -> OwnerJob.of(JOURNAL, Money.usd(100), Optional.of(Money.of(5, "EUR"))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
