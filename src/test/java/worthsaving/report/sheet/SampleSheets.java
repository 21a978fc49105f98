package worthsaving.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.SampleLot;
import worthsaving.report.VinGuard;
import worthsaving.vehicle.Listing;

/** Sheets of the invented sample cars, made once. */
final class SampleSheets {

    static final SheetSettings ABOUT = new SheetSettings(LocalDate.of(2025, 11, 25), VinGuard.HIDDEN);

    private SampleSheets() {}

    static final class Holder {
        static final List<DecisionSheet> ALL = make();

        private static List<DecisionSheet> make() {
            Catalogue catalogue = ShippedCatalogue.load();
            JudgeSettings settings = JudgeSettings.usual(catalogue, Seed.DEFAULT);
            Judge judge = new Judge(catalogue, SampleLot.byAge(), settings);
            Rescuer rescuer = new Rescuer(catalogue, SampleLot.byAge(), settings);
            Quoter quoter = new Quoter(catalogue, settings, settings.terms().money(Term.SHOP_HOURLY));
            List<DecisionSheet> sheets = new ArrayList<>();
            for (Listing listing : SampleLot.read(catalogue)) {
                Appraisal appraisal = ((Judged.Done) judge.judge(listing)).appraisal();
                sheets.add(FlipperSheet.of(appraisal, catalogue, ABOUT));
                sheets.add(OwnerSheet.of(rescuer.compare(appraisal,
                        RescueTerms.of(3, 12_000).withQuote(Money.usd(4_800))), catalogue, ABOUT));
                quoter.write(appraisal, Optional.empty())
                        .ifPresent(q -> sheets.add(WorkshopSheet.of(appraisal, q, catalogue, ABOUT)));
            }
            return List.copyOf(sheets);
        }
    }

    static List<DecisionSheet> all() {
        return Holder.ALL;
    }

    static DecisionSheet of(Audience audience) {
        return all().stream().filter(s -> s.audience() == audience).findFirst().orElseThrow();
    }
}
