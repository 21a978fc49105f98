package worthsaving.deal;

import java.util.Locale;
import java.util.Optional;
import worthsaving.catalog.MoneyLine.Unit;
import worthsaving.quantity.Range;

/**
 * Every money line a deal knows, with the figure used when neither catalogue nor user gives one. The
 * built-in figures are common practice in the United States, no source; each can be edited. Percentages
 * are kept as written: 6 means 6 %.
 */
public enum Term {
    /** Zero in a private sale. */
    AUCTION_PREMIUM(Unit.PERCENT, 0, 0, 0, "buyer premium at an auction"),
    GATE_FEES(Unit.MONEY, 0, 0, 0, "gate, document and online fees"),
    SALES_TAX(Unit.PERCENT, 6, 6, 6, "sales or use tax on the price"),
    TOW_HOOK_UP(Unit.MONEY, 75, 110, 150, "tow, hook-up"),
    TOW_PER_MILE(Unit.MONEY_PER_MILE, 2.5, 4, 7, "tow, per mile"),
    TITLE_TRANSFER(Unit.MONEY, 25, 95, 300, "title transfer and plates"),
    TITLE_HISTORY(Unit.MONEY, 5, 10, 20, "title history query"),
    /** Zero unless somebody is paid to look. */
    INSPECTION_PAID(Unit.MONEY, 0, 0, 0, "inspection before buying"),
    STORAGE_PER_DAY_YARD(Unit.MONEY_PER_DAY, 20, 40, 75, "yard storage per day"),
    DAYS_IN_YARD(Unit.DAYS, 0, 0, 0, "days in the yard before it is fetched"),
    HOLDING_PER_DAY_OWN(Unit.MONEY_PER_DAY, 2, 4, 10, "own space and insurance per day"),
    CAPITAL_RATE(Unit.PERCENT_PER_YEAR, 8, 12, 25, "cost of the money tied up"),
    DAYS_WAITING(Unit.DAYS, 5, 14, 45, "days waiting for parts and papers"),
    WORK_PER_DAY(Unit.HOURS, 2, 3, 5, "hours of work per day held"),
    DAYS_TO_SELL(Unit.DAYS, 5, 14, 45, "days to sell once ready"),
    PARTS_SHIPPING(Unit.MONEY, 0, 25, 120, "parts shipping, per car mended"),
    /** Comes back with the old part: cash that is needed, no cost. */
    CORE_CHARGE(Unit.MONEY, 30, 90, 400, "core charge, until the old part goes back"),
    DISPOSAL(Unit.MONEY, 5, 20, 60, "disposal of oil, coolant, tyres, battery"),
    /** Of a shop's labour; own hands buy what the jobs name. */
    SHOP_SUPPLIES(Unit.PERCENT, 3, 5, 8, "shop supplies, share of a shop's labour"),
    SHOP_SUPPLIES_CAP(Unit.MONEY, 40, 60, 80, "shop supplies, at most"),
    DETAILING(Unit.MONEY, 40, 120, 250, "cleaning and detailing"),
    LISTING_FEE(Unit.MONEY, 0, 25, 60, "listing fee"),
    EMISSIONS_INSPECTION(Unit.MONEY, 15, 40, 120, "emissions or safety inspection"),
    /** Zero unless it is sold on to the trade. */
    WHOLESALE_DISCOUNT(Unit.PERCENT, 0, 0, 0, "given up by selling to the trade, share of the value"),
    /** Taken off only when the value is an asking price. */
    HAGGLE(Unit.PERCENT, 3, 6, 10, "haggle from the asking price"),
    COMEBACK_RESERVE(Unit.PERCENT, 1, 2, 5, "goodwill reserve after the sale"),
    /** Share of a job that fails again which the seller bears. */
    REPEAT_BORNE(Unit.PERCENT, 100, 100, 100, "share of a repeated job that you bear"),
    /** See {@link DealCase#usualFaults()}. */
    USUAL_FAULTS_SHARE(Unit.PERCENT, 75, 100, 110, "cost of the faults usual at its age that need not be borne"),
    REBUILT_INSPECTION(Unit.MONEY, 60, 200, 500, "rebuilt-title inspection and papers"),
    /** Off unless the user turns it on. */
    INCOME_TAX(Unit.PERCENT, 0, 0, 0, "income tax on the profit"),
    OWN_HOURLY(Unit.MONEY_PER_HOUR, 35, 35, 35, "what an own hour is worth"),
    SHOP_HOURLY(Unit.MONEY_PER_HOUR, 90, 130, 180, "independent shop per hour"),
    DEALER_HOURLY(Unit.MONEY_PER_HOUR, 140, 180, 260, "dealer per hour"),
    /** Common factor on all hours of a car: a slow worker is slow in every job. */
    SPEED(Unit.PERCENT, 80, 100, 140, "hours needed against the estimate"),
    /** Common factor on all parts of a car: a make that is dear is dear in every part. */
    PARTS_PRICE(Unit.PERCENT, 85, 100, 125, "parts cost against the estimate"),
    OPEN_UP_HOURS(Unit.HOURS, 2, 5, 10, "hours until it is known what has failed"),
    SCRAP_PER_TON(Unit.MONEY_PER_TON, 100, 165, 220, "scrap per short ton"),
    SCRAP_TONS(Unit.TONS, 1.3, 1.6, 2.2, "short tons of the complete car"),
    JUNK_WHOLE(Unit.MONEY, 150, 300, 525, "whole car to a junk yard, picked up"),
    ASIS_SHARE(Unit.PERCENT, 15, 30, 45, "price as it stands, share of the running value"),
    /** A car in pieces fetches less than one that has not been touched. */
    OPENED_UP_SHARE(Unit.PERCENT, 40, 60, 80, "price in pieces, share of the price as it stands"),
    PARTOUT_GROSS(Unit.MONEY, 800, 2_200, 6_000, "parting out, gross"),
    PARTOUT_LOSS(Unit.PERCENT, 40, 50, 60, "parting out, fees and unsold parts"),
    PARTOUT_HOURS(Unit.HOURS, 25, 40, 60, "parting out, own hours"),
    PARTOUT_DAYS(Unit.DAYS, 60, 90, 120, "parting out, days");

    private final Unit unit;
    private final Range usual;
    private final String label;

    Term(Unit unit, double low, double mode, double high, String label) {
        this.unit = unit;
        this.usual = new Range(low, mode, high);
        this.label = label;
    }

    /** The id that the catalogue's money lines use, such as {@code tow_hook_up}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Unit unit() {
        return unit;
    }

    /** The built-in figure. */
    public Range usual() {
        return usual;
    }

    public String label() {
        return label;
    }

    public static Optional<Term> ofId(String id) {
        for (Term term : values()) {
            if (term.id().equals(id)) {
                return Optional.of(term);
            }
        }
        return Optional.empty();
    }

    /** Why a range cannot stand for this line; empty when it can. */
    Optional<String> fault(Range range) {
        boolean mayExceedOne = this == SPEED || this == PARTS_PRICE || this == USUAL_FAULTS_SHARE;
        double greatest = unit == Unit.PERCENT ? (mayExceedOne ? 1_000 : 100) : Double.MAX_VALUE;
        boolean divides = this == SPEED || this == WORK_PER_DAY;
        if (range.low() < 0 || (divides && range.low() == 0) || range.high() > greatest) {
            return Optional.of(id() + " must lie " + (divides ? "above 0" : "at 0 or more")
                    + (greatest < Double.MAX_VALUE ? " and at most " + (int) greatest : "") + ", not "
                    + range.low() + " to " + range.high());
        }
        return Optional.empty();
    }
}
