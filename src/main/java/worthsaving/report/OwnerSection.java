package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import worthsaving.quantity.Money;
import worthsaving.ranking.ShopQuote;
import worthsaving.teardown.OwnerJob;

/**
 * Work for an owner: what is on the bill, how far it may go, and when to call.
 *
 * @param quote for what is left to do, at the workshop's rate
 */
record OwnerSection(ShopQuote quote, OwnerJob job) {

    private static final int CALLS_SHOWN = 8;

    void text(Appendable out) throws IOException {
        say(out, "Work for an owner");
        say(out, bill() + " What is left to do comes to " + Words.whole(quote.price().mean()) + " on average, not over "
                + Words.whole(quote.notExceeded(.95)) + " with 95 %; " + Words.percent(quote.chanceAbove(quote.ceiling()))
                + " chance that " + Words.whole(quote.ceiling()) + " is not enough.");
        for (ShopQuote.CallPoint c : quote.calls().stream().limit(CALLS_SHOWN).toList()) {
            say(out, "- call the owner when " + c.name() + (c.sound() ? " is sound" : " has failed too") + " ("
                    + Words.percent(c.chance()) + "): " + (c.change().amount() < 0 ? "" : "+")
                    + Words.whole(c.change()) + ", the rest then " + Words.whole(c.price())
                    + (c.price().compareTo(quote.ceiling()) > 0 ? ", over the ceiling" : ""));
        }
    }

    private String bill() {
        if (job.left().isEmpty()) {
            return "Hours on the bill " + Words.whole(job.labour()) + ". Ceiling to agree for the rest: "
                    + Words.whole(quote.ceiling()) + ", all in all " + Words.whole(job.labour().plus(quote.ceiling())) + ".";
        }
        Money left = job.left().get();
        return "Agreed " + Words.whole(job.agreed().orElseThrow()) + "; on the bill " + Words.whole(job.billed())
                + " (hours " + Words.whole(job.labour()) + ", receipts " + Words.whole(job.receipts()) + "); "
                + (left.amount() > 0 ? Words.whole(left) + " of it left."
                        : "passed by " + Words.whole(left.times(-1)) + ": call before anything more is done.");
    }

    Map<String, Object> fields() {
        Map<String, Object> bill = new LinkedHashMap<>();
        bill.put("labour", job.labour().amount());
        bill.put("receipts", job.receipts().amount());
        job.agreed().ifPresent(a -> bill.put("agreed", a.amount()));
        bill.put("rest_mean", quote.price().mean());
        bill.put("rest_not_exceeded_95", quote.notExceeded(.95).amount());
        bill.put("rest_ceiling", quote.ceiling().amount());
        bill.put("chance_above_ceiling", quote.chanceAbove(quote.ceiling()));
        bill.put("calls", quote.calls().stream().map(c -> Map.of("item", c.item(), "sound", c.sound(), "chance",
                c.chance(), "change", c.change().amount(), "price", c.price().amount())).toList());
        return bill;
    }

    private static void say(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }
}
