package worthsaving.desktop.car;

import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.Term;
import worthsaving.desktop.Ground;
import worthsaving.desktop.Texts;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.Rescue;
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.ShopQuote;
import worthsaving.report.VinGuard;
import worthsaving.report.sheet.Audience;
import worthsaving.report.sheet.DecisionSheet;
import worthsaving.report.sheet.FlipperSheet;
import worthsaving.report.sheet.OwnerSheet;
import worthsaving.report.sheet.SheetSettings;
import worthsaving.report.sheet.WorkshopSheet;

/** Makes the decision sheet of the car on the screen, with the levers where they stand. Takes a second or so. */
final class SheetWork {

    private final Ground ground;
    private final Levers levers;

    SheetWork(Ground ground) {
        this.ground = ground;
        this.levers = new Levers(ground.settings());
    }

    /**
     * @param appraisal of the scenario
     * @param terms of the owner
     * @throws SheetRefused when there is nothing to quote
     */
    DecisionSheet of(Scenario scenario, Appraisal appraisal, Audience audience, RescueTerms terms) {
        Catalogue catalogue = levers.catalogue(ground.catalogue(), scenario);
        JudgeSettings settings = levers.settings(scenario);
        SheetSettings about = new SheetSettings(ground.today(), VinGuard.HIDDEN);
        return switch (audience) {
            case FLIPPER -> FlipperSheet.of(appraisal, catalogue, about);
            case OWNER -> OwnerSheet.of(rescue(scenario, appraisal, terms), catalogue, about);
            case WORKSHOP -> {
                ShopQuote work = new Quoter(catalogue, settings, settings.terms().money(Term.SHOP_HOURLY))
                        .write(appraisal, Optional.empty())
                        .orElseThrow(() -> new SheetRefused(Texts.of("sheet.nothing_to_quote")));
                yield WorkshopSheet.of(appraisal, work, catalogue, about);
            }
        };
    }

    /** Mending the car and keeping it against replacing it, with the levers where they stand. */
    Rescue rescue(Scenario scenario, Appraisal appraisal, RescueTerms terms) {
        return new Rescuer(levers.catalogue(ground.catalogue(), scenario), levers.values(ground.values(), scenario),
                levers.settings(scenario)).compare(appraisal, terms);
    }

    /** There is no such sheet of this car; the message says why. */
    static final class SheetRefused extends RuntimeException {

        private static final long serialVersionUID = 1L;

        SheetRefused(String message) {
            super(message);
        }
    }
}
