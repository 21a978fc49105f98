package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.deal.WayOut;
import worthsaving.desktop.Figures;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.car.Why.Topic;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source.Label;

class WhysTest {

    private static final HandTurned THREADS = new HandTurned();
    private static final CarModel MODEL = new CarModel(Cars.GROUND, THREADS.background(), THREADS.screen());

    @BeforeAll
    static void open() {
        MODEL.open(Cars.overheated());
        THREADS.turnAll();
    }

    private static Why why(Topic topic) {
        CarPicture.Seen seen = MODEL.seen().orElseThrow();
        return MODEL.whys().of(topic, seen.items().get(0).id(), seen);
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void every_key_figure_has_its_reasons(Topic topic) {
        Why why = why(topic);
        assertThat(why.title()).isNotBlank();
        assertThat(why.parts()).isNotEmpty().allSatisfy(p -> assertThat(p.spoken()).isNotBlank());
    }

    @ParameterizedTest
    @EnumSource(value = Topic.class, names = {"MOST", "PROFIT", "DAYS", "HOURS", "ITEM", "COST", "OPENING"})
    void it_says_how_far_the_parts_can_be_trusted(Topic topic) {
        assertThat(why(topic).parts()).anySatisfy(p -> assertThat(p.label()).isPresent());
    }

    /** Lines are rounded to whole money, so that their sum may be off by half a unit each. */
    @Test
    void the_lines_of_the_expected_profit_add_up_to_it() {
        CarPicture.Seen seen = MODEL.seen().orElseThrow();
        assertThat(seen.shown()).isEqualTo(WayOut.REPAIR_AND_SELL);
        Why why = why(Topic.PROFIT);
        double sum = why.parts().stream().mapToDouble(p -> money(p.figure())).sum();
        double profit = seen.appraisal().assessment().way(seen.shown()).expectedProfit();
        assertThat(Math.abs(sum - profit)).isLessThanOrEqualTo(0.5 * why.parts().size());
        assertThat(why.title()).contains(Figures.money(Money.usd(profit)));
    }

    @Test
    void the_rule_is_the_users_and_the_opening_share_common_practice() {
        assertThat(why(Topic.MOST).parts().get(0).label()).isEqualTo(Optional.of(Label.USER));
        assertThat(why(Topic.OPENING).parts()).anySatisfy(
                p -> assertThat(p.label()).isEqualTo(Optional.of(Label.COMMON_PRACTICE)));
    }

    private static double money(String figure) {
        Matcher money = Pattern.compile("USD (\u2212?)([\\d,]+)").matcher(figure);
        return money.matches() ? (money.group(1).isEmpty() ? 1 : -1)
                * Double.parseDouble(money.group(2).replace(",", "")) : 0;
    }
}
