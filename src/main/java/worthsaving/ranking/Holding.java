package worthsaving.ranking;

import java.util.HashMap;
import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Onset;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Listing;

/**
 * How long and how far a car is kept once it runs.
 *
 * @param years above 0
 * @param milesPerYear zero or more
 */
public record Holding(double years, double milesPerYear) {

    public Holding {
        if (!(years > 0 && years <= 30) || !(milesPerYear >= 0 && milesPerYear <= 200_000)) {
            throw new IllegalArgumentException("a car is kept more than 0 and at most 30 years and driven 0 to 200,000"
                    + " miles a year, not " + years + " and " + milesPerYear);
        }
    }

    /**
     * Chance of each item being needed in that time: it has failed already, or it fails meanwhile,
     * p + (1 - p)(F(t + h) - F(t)) / (1 - F(t)), with p as believed now and F the item's onset. F is the chance of
     * standing failed and unmended, so a guess at failures to come; beyond {@link Onset#LAST_WEAR} years of wear
     * it knows of none.
     */
    public Map<String, Probability> needed(Catalogue catalogue, Listing listing, Diagnosis diagnosis) {
        Map<String, FailureItem> items = catalogue.itemsById();
        Map<String, Probability> needed = new HashMap<>();
        for (Belief belief : diagnosis.beliefs()) {
            double meanwhile = meanwhile(items.get(belief.item()).onset(), listing);
            double p = belief.posterior().value();
            needed.put(belief.item(), Probability.of(Math.min(1, p + (1 - p) * meanwhile)));
        }
        return needed;
    }

    /** (F(t + h) - F(t)) / (1 - F(t)): the chance that what is sound now fails in that time. */
    double meanwhile(Onset onset, Listing listing) {
        double miles = odometer(listing).miles();
        double now = onset.prior(age(listing), Distance.ofMiles(miles)).value();
        double then = onset.prior(age(listing) + years, Distance.ofMiles(miles + years * milesPerYear)).value();
        return now < 1 ? Math.max(0, then - now) / (1 - now) : 0;
    }

    /** As stated, or else the usual miles for its age. */
    Distance odometer(Listing listing) {
        return listing.vehicle().odometer().get().orElseGet(() -> Distance.ofMiles(
                listing.vehicle().ageYears(listing.seen()).orElse(0) * Onset.MILES_PER_YEAR));
    }

    /** Years, or else those that its miles stand for. */
    double age(Listing listing) {
        return listing.vehicle().ageYears(listing.seen()).orElseGet(
                () -> odometer(listing).miles() / Onset.MILES_PER_YEAR);
    }
}
