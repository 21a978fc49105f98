package worthsaving.desktop.lot;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import worthsaving.deal.MostToPay;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/** Invented rows of a lot. */
final class Rows {

    private Rows() {}

    static LotRow row(int rank, String id, String model, Verdict.Kind kind, double profit, String story) {
        Listing listing = new Listing(id,
                Vehicle.builder().year(Fact.known(2010)).make(Fact.known("ford")).model(Fact.known(model)).build(),
                Fact.known(Money.usd(1_000 + rank)), LocalDate.of(2025, 11, 1), Fact.unknown(), Exposure.UNKNOWN,
                List.of(), story, "invented");
        WayOut way = kind == Verdict.Kind.WALK_AWAY ? WayOut.WALK_AWAY : WayOut.REPAIR_AND_SELL;
        Standing standing = new Standing(listing, new Verdict(kind, "headline", List.of(), List.of()),
                new MostToPay(Optional.of(Money.usd(1_200.9)), Optional.empty(), Optional.empty(), way,
                        MostToPay.Binding.TARGET_PROFIT),
                way, Money.usd(5_000), Money.usd(4_000), Money.usd(6_000), Money.usd(profit), 0.2, Money.usd(-900),
                IntStream.range(0, 10).mapToObj(i -> profit - 900 + 200.0 * i).toList(), Hours.of(12.34),
                OptionalDouble.of(50), Money.usd(2_000), 33.4, List.of(), Optional.empty(), List.of());
        return new LotRow(rank, standing, Optional.empty(), List.of("Head gasket", "Water pump"), false);
    }

    static List<LotRow> three() {
        return List.of(
                row(1, "A", "ranger", Verdict.Kind.BUY, 1_500, "clutch went to the floor"),
                row(2, "B", "focus se", Verdict.Kind.BUY_BELOW, -50, "jerks"),
                row(3, "C", "escape", Verdict.Kind.WALK_AWAY, 0, "=overheated"));
    }
}
