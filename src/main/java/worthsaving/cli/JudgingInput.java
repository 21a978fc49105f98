package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Mixin;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Judged;
import worthsaving.shell.MarketGround;
import worthsaving.valuation.Valuer;

/** What every judging command takes: a table of listings, and what to judge them by. */
final class JudgingInput {

    @Mixin
    private ListingSource source;

    @Mixin
    private JudgeOptions options;

    /**
     * The table read, beside the catalogue and the price model.
     *
     * @param catalogue with its money in the market's currency
     * @param note what people must know of currency and units
     */
    record Opened(Resources resources, Catalogue catalogue, MarketGround ground, String note, ReadLot lot) {

        Valuer valuer() {
            return ground.valuer();
        }

        /** For many cars: without the reasons of each value. */
        Judge judge(JudgeSettings settings) {
            return new Judge(catalogue, valuer()::forecastWithoutReasons, settings);
        }
    }

    Path file() {
        return source.file();
    }

    LocalDate today() {
        return source.today();
    }

    /** @throws UserError when there is no such table */
    void mustBeThere() {
        source.mustBeThere();
    }

    /**
     * @param most listings to read at most
     * @throws UserError when something is missing or cannot be read
     */
    Opened open(int most, PrintWriter err) throws IOException {
        source.mustBeThere();
        Opened opened = openWithoutTable();
        return new Opened(opened.resources(), opened.catalogue(), opened.ground(), opened.note(),
                source.lot(opened.resources(), opened.catalogue(), opened.ground(), most, err));
    }

    /**
     * The table told row by row, on ground opened without it.
     *
     * @throws UserError when it is no table of listings
     */
    void read(Opened opened, FaultTeller sink, PrintWriter err) throws IOException {
        source.read(opened.resources(), opened.catalogue(), opened.ground(), sink, err);
    }

    /** The same without a table, for a car that is in none. */
    Opened openWithoutTable() throws IOException {
        Resources resources = Resources.find();
        Catalogue asWritten = CatalogueFiles.load(resources);
        MarketGround ground = options.market(resources, source.today());
        return new Opened(resources, ground.in(asWritten), ground, ground.note(asWritten), ReadLot.none());
    }

    /** @throws UserError when an option is out of range */
    JudgeSettings settings(Catalogue catalogue, Seed seed) {
        return options.settings(catalogue, seed);
    }

    /**
     * @param who names the car in the message
     * @throws UserError when it was refused
     */
    static Appraisal appraisal(Judged judged, String who) {
        if (judged instanceof Judged.Refused no) {
            throw new UserError(ExitCode.SOME_ROWS_REFUSED,
                    who + " cannot be judged: " + no.reason() + "; " + no.mend());
        }
        return ((Judged.Done) judged).appraisal();
    }
}
