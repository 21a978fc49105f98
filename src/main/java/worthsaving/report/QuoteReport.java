package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.quantity.Range;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.ShopQuote;
import worthsaving.repair.Quote;

/** A workshop's quote as it is handed to the owner. */
public final class QuoteReport implements Exported {

    private static final int VERSION = 1;

    private final Appraisal appraisal;
    private final ShopQuote work;
    private final VinGuard vin;

    public QuoteReport(Appraisal appraisal, ShopQuote work) {
        this(appraisal, work, VinGuard.HIDDEN);
    }

    /** With or without the vehicle identification number in an id. */
    public QuoteReport(Appraisal appraisal, ShopQuote work, VinGuard vin) {
        this.vin = vin;
        this.appraisal = appraisal;
        this.work = work;
    }

    @Override
    public void markdown(Appendable out) throws IOException {
        Prose.document(out, vin.text(heading()), this::body);
    }

    /** For people. */
    public void text(Appendable out) throws IOException {
        Prose prose = Prose.plain(out);
        prose.say(heading());
        body(prose);
    }

    private String heading() {
        return "Quote for " + appraisal.listing().id() + ", " + appraisal.listing().vehicle().label() + ", at "
                + Words.whole(work.quote().hourly()) + " " + work.quote().hourly().currency().getCurrencyCode() + " an hour";
    }

    private void body(Prose out) throws IOException {
        Quote quote = work.quote();
        out.say("Taken for failed: " + String.join("; ", work.assumed()) + ".");
        TextTable table = new TextTable().left("stage").left("for", 56).right("hours").right("amount");
        for (Quote.Line line : quote.lines()) {
            table.row(stage(line.stage()), line.name(), line.hours().high() == 0 ? "" : hours(line.hours()),
                    Words.range(line.amount().amount()));
        }
        for (Quote.Stage stage : Quote.Stage.values()) {
            table.row("total", stage(stage), "", Words.range(quote.total(stage).amount()));
        }
        out.table(table);
        out.say("This work: " + Words.whole(quote.mean()) + " on average, " + Words.hours(quote.hours().value())
                + " hours; doing the jobs together saves " + Words.hours(quote.hoursSaved().value()) + " hours.");
        out.say("Whatever the complaint turns out to be: " + Words.whole(work.price().mean())
                + " on average; not over "
                + Words.whole(work.notExceeded(.8)) + " with 80 %, not over " + Words.whole(work.notExceeded(.95))
                + " with 95 %.");
        out.say("Ceiling to agree in writing: " + Words.whole(work.ceiling()) + "; " + Words.percent(
                work.chanceAbove(work.ceiling())) + " chance that it is not enough.");
        calls(out);
        cautions(out);
    }

    private void calls(Prose out) throws IOException {
        out.title("Call the owner and wait for a yes");
        out.point("before opening up: that costs about " + Words.whole(work.openingUp())
                + " even if the answer is then"
                + " no, and the car fetches about " + Words.whole(work.stopValue()) + " in pieces (guesses);");
        out.point("before any part is ordered, once it is open, when one of these is found;");
        out.point("whenever the work would pass " + Words.whole(work.ceiling()) + ".");
        if (!work.calls().isEmpty()) {
            TextTable table = new TextTable().left("found", 64).left("").right("chance").right("change")
                    .right("price then")
                    .left("");
            for (ShopQuote.CallPoint c : work.calls()) {
                table.row(c.name(), c.sound() ? "is sound" : "failed too", Words.percent(c.chance()),
                        Words.whole(c.change()), Words.whole(c.price()),
                        c.price().compareTo(work.ceiling()) > 0 ? "over the ceiling" : "");
            }
            out.table(table);
        }
    }

    private void cautions(Prose out) throws IOException {
        out.title("Cautions");
        for (String caution : work.cautions()) {
            out.point(caution);
        }
        out.point("Stands on rated points, fuel pressure relieved, battery off where airbags or high voltage are near;"
                + " trained persons only on high voltage. Local rules on estimates and authorisation come first.");
    }

    @Override
    public void rows(RowWriter.Maker form) throws IOException {
        RowWriter rows = form.of("stage", "id", "name", "hours_low", "hours_mode", "hours_high", "amount_low",
                "amount_mode", "amount_high", "needed_by");
        for (Quote.Line line : work.quote().lines()) {
            Range h = line.hours();
            Range a = line.amount().amount();
            rows.row(stage(line.stage()), line.id(), line.name(), h.low(), h.mode(), h.high(), a.low(), a.mode(),
                    a.high(), String.join(" ", line.neededBy()));
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/quote", VERSION)
                .field("id", vin.text(appraisal.listing().id()))
                .field("hourly", work.quote().hourly().amount())
                .field("mean", work.quote().mean().amount())
                .field("hours", work.quote().hours().value())
                .field("price_mean", work.price().mean())
                .field("not_exceeded_80", work.notExceeded(.8).amount())
                .field("not_exceeded_95", work.notExceeded(.95).amount())
                .field("ceiling", work.ceiling().amount())
                .field("chance_above_ceiling", work.chanceAbove(work.ceiling()))
                .field("opening_up", work.openingUp().amount());
        json.beginList("lines");
        for (Quote.Line line : work.quote().lines()) {
            json.element(Map.of("stage", stage(line.stage()), "id", line.id(), "name", line.name(), "hours",
                    List.of(line.hours().low(), line.hours().mode(), line.hours().high()), "amount",
                    List.of(line.amount().amount().low(), line.amount().amount().mode(), line.amount().amount()
                            .high())));
        }
        json.endList().beginList("calls");
        for (ShopQuote.CallPoint c : work.calls()) {
            json.element(Map.of("item", c.item(), "sound", c.sound(), "chance", c.chance(), "change",
                    c.change().amount(), "price", c.price().amount()));
        }
        json.endList().field("cautions", work.cautions()).end();
    }

    private static String stage(Quote.Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    private static String hours(Range range) {
        return range.width() == 0 ? Words.hours(range.low()) : Words.hours(range.low()) + " to "
                + Words.hours(range.high());
    }
}
