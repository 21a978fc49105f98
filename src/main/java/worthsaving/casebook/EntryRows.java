package worthsaving.casebook;

import java.time.Instant;
import java.util.Optional;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

/** Journal entries as rows and back. */
final class EntryRows {

    private EntryRows() {}

    static Row row(long number, String caseId, JournalEntry entry) {
        Row row = new Row().with("id", number).with("case_id", caseId).with("at", entry.at().toString())
                .with("stage", entry.stage()).with("kind", kind(entry.what())).with("text", entry.text())
                .with("amount", null).with("currency", null).with("subject", null).with("sight", null)
                .with("witness", null).with("planned", null);
        if (entry.what() instanceof What.Finding finding) {
            Observation seen = finding.seen();
            row.with("subject", seen.subject()).with("sight", seen.sight().name()).with("witness", seen.witness().name());
        } else if (entry.what() instanceof What.Work work) {
            row.with("amount", work.hours().value()).with("planned", work.planned().map(Hours::value).orElse(null));
        } else if (entry.what() instanceof What.Receipt receipt) {
            row.with("amount", receipt.paid().amount()).with("currency", receipt.paid().currency().getCurrencyCode())
                    .with("planned", receipt.planned().map(Money::amount).orElse(null));
        } else if (entry.what() instanceof What.Opened opened) {
            row.with("subject", opened.step());
        } else if (entry.what() instanceof What.PartBought part) {
            row.with("subject", part.item()).with("amount", part.paid().amount())
                    .with("currency", part.paid().currency().getCurrencyCode())
                    .with("planned", part.planned().map(Money::amount).orElse(null));
        } else if (entry.what() instanceof What.Mended mended) {
            row.with("subject", mended.item());
        }
        return row;
    }

    static JournalEntry entry(Row row) {
        return new JournalEntry(Instant.parse(row.text("at")), row.text("stage"), what(row), row.text("text"));
    }

    private static String kind(What what) {
        if (what instanceof What.Note) {
            return "NOTE";
        } else if (what instanceof What.Decision) {
            return "DECISION";
        } else if (what instanceof What.Finding) {
            return "FINDING";
        } else if (what instanceof What.Work) {
            return "HOURS";
        } else if (what instanceof What.Receipt) {
            return "RECEIPT";
        } else if (what instanceof What.Opened) {
            return "OPENED";
        }
        return what instanceof What.PartBought ? "PART" : "MENDED";
    }

    private static What what(Row row) {
        Optional<Double> planned = row.maybeNumber("planned");
        return switch (row.text("kind")) {
            case "NOTE" -> new What.Note();
            case "DECISION" -> new What.Decision();
            case "FINDING" -> new What.Finding(observation(row));
            case "HOURS" -> new What.Work(Hours.of(row.number("amount")), planned.map(Hours::of));
            case "RECEIPT" -> new What.Receipt(Money.of(row.number("amount"), row.text("currency")),
                    planned.map(p -> Money.of(p, row.text("currency"))));
            case "OPENED" -> new What.Opened(row.text("subject"));
            case "PART" -> new What.PartBought(row.text("subject"), Money.of(row.number("amount"), row.text("currency")),
                    planned.map(p -> Money.of(p, row.text("currency"))));
            case "MENDED" -> new What.Mended(row.text("subject"));
            default -> throw new IllegalArgumentException("unknown kind of entry: " + row.text("kind"));
        };
    }

    static Observation observation(Row row) {
        return new Observation(row.text("subject"), Observation.Sight.valueOf(row.text("sight")),
                Observation.Witness.valueOf(row.text("witness")));
    }
}
