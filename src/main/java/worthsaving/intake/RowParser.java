package worthsaving.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Vehicle;

/** A row of cells to a listing. */
final class RowParser {

    private final IntakeSettings settings;
    private final Vocabulary vocabulary;

    RowParser(IntakeSettings settings, Vocabulary vocabulary) {
        this.settings = settings;
        this.vocabulary = vocabulary;
    }

    /** Reads every cell, so that all faults of a row are found at once; empty when the row is refused. */
    Optional<LotEntry> entry(Cells cells, String id) {
        FigureCells figures = new FigureCells(cells, settings);
        MoneyCells money = new MoneyCells(cells, settings.currency());
        EvidenceCells evidence = new EvidenceCells(cells, vocabulary);
        LocalDate seen = figures.seen();
        Vehicle vehicle = new CarCells(cells, figures, vocabulary).vehicle(seen);
        Fact<Money> ask = money.read(Field.PRICE);
        Fact<Double> tow = figures.towMiles();
        Fact<Money> quote = money.read(Field.QUOTE);
        Exposure exposure = evidence.exposure();
        List<ReadCode> codes = evidence.codes();
        List<Observation> observations = evidence.observations(codes);
        if (cells.refused()) {
            return Optional.empty();
        }
        if (ask.get().isEmpty()) {
            cells.warn(Field.PRICE, "no price is stated", "the most to pay can still be told");
        }
        Listing listing = new Listing(
                id, vehicle, ask, seen, tow, exposure, observations, cells.text(Field.STORY), cells.place());
        return Optional.of(new LotEntry(cells.row(), listing, quote, cells.text(Field.PRICE_KIND), codes));
    }
}
