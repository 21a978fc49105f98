package worthsaving.deal;

import worthsaving.quantity.Money;
import worthsaving.vehicle.TitleBrand;

/**
 * The cash flow of each way out at every point.
 *
 * <p>Profit = sale (1 - reserve) - selling - fixed - holding x days - repair - jobs that come back -
 * capital, with fixed = fees, tow, title, history, inspection and yard; capital = rate x days / 365 x
 * (price all-in + fixed + cash of the repair). The cash of the repair holds shipping, disposal and a shop's supplies;
 * a core charge is laid out and comes back. Common practice, no source.
 */
final class Flows {

    private static final double DAYS_PER_YEAR = 365;

    private final DealCase deal;
    private final TermDraws t;
    private final RepairDraws repair;
    private final double[] value;
    private final int atoms;

    Flows(DealCase deal, TermDraws terms, RepairDraws repair, double[] value) {
        this.deal = deal;
        this.t = terms;
        this.repair = repair;
        this.value = value;
        this.atoms = value.length;
    }

    /** Mend and sell. */
    Flow finish(Levelling level) {
        return finish(repair, level);
    }

    /** As if nothing had to be mended. */
    Flow finishNothing() {
        return finish(RepairDraws.ofSize(atoms), Levelling.NONE);
    }

    private Flow finish(RepairDraws work, Levelling level) {
        Flow flow = Flow.ofSize(atoms);
        double rate = deal.labour().hourly().amount();
        boolean own = deal.labour().own();
        for (int i = 0; i < atoms; i++) {
            double speed = at(Term.SPEED, i);
            double hours = level.hours() * work.hours()[i] * speed;
            double parts = at(Term.PARTS_PRICE, i);
            double cash = level.cash() * work.cash()[i] * parts + (own ? 0 : hours * rate + supplies(hours * rate, i))
                    + at(Term.PARTS_SHIPPING, i) + at(Term.DISPOSAL, i);
            double back = at(Term.REPEAT_BORNE, i) * (level.backCash() * work.backCash()[i] * parts
                    + level.backHours() * work.backHours()[i] * speed * rate);
            double days = yardDays(i) + at(Term.DAYS_WAITING, i) + hours / at(Term.WORK_PER_DAY, i)
                    + at(Term.DAYS_TO_SELL, i);
            double spared = at(Term.USUAL_FAULTS_SHARE, i) * deal.usualFaults().amount();
            double sale = (level.value() * value[i] + spared) * (1 - at(Term.HAGGLE, i))
                    * (1 - at(Term.WHOLESALE_DISCOUNT, i)) * (1 - at(Term.COMEBACK_RESERVE, i));
            double selling = at(Term.DETAILING, i) + at(Term.LISTING_FEE, i) + at(Term.EMISSIONS_INSPECTION, i)
                    + (deal.title() == TitleBrand.SALVAGE ? at(Term.REBUILT_INSPECTION, i) : 0);
            double ownHours = own ? hours : 0;
            set(flow, i, sale - selling - back, cash, ownHours, ownHours * rate, days);
            flow.cashOut()[i] += at(Term.CORE_CHARGE, i);
        }
        return flow;
    }

    private double supplies(double labour, int i) {
        return Math.min(at(Term.SHOP_SUPPLIES, i) * labour, at(Term.SHOP_SUPPLIES_CAP, i));
    }

    /** @param opened after it has been taken apart far enough to know what has failed */
    Flow asItStands(boolean opened) {
        Flow flow = Flow.ofSize(atoms);
        double ceiling = deal.offeredAt().map(Money::amount).orElse(Double.POSITIVE_INFINITY);
        for (int i = 0; i < atoms; i++) {
            double offer = Math.min(ceiling, value[i] * (1 - at(Term.HAGGLE, i)) * at(Term.ASIS_SHARE, i));
            double sale = offer * (opened ? at(Term.OPENED_UP_SHARE, i) : 1) - at(Term.LISTING_FEE, i);
            leave(flow, i, sale, 0, at(Term.DAYS_TO_SELL, i), opened);
        }
        return flow;
    }

    Flow partOut(boolean opened) {
        Flow flow = Flow.ofSize(atoms);
        for (int i = 0; i < atoms; i++) {
            double net = at(Term.PARTOUT_GROSS, i) * (1 - at(Term.PARTOUT_LOSS, i));
            leave(flow, i, net, at(Term.PARTOUT_HOURS, i), at(Term.PARTOUT_DAYS, i), opened);
        }
        return flow;
    }

    Flow scrap(boolean opened) {
        Flow flow = Flow.ofSize(atoms);
        for (int i = 0; i < atoms; i++) {
            double byWeight = at(Term.SCRAP_PER_TON, i) * at(Term.SCRAP_TONS, i) - at(Term.TOW_HOOK_UP, i);
            leave(flow, i, Math.max(byWeight, at(Term.JUNK_WHOLE, i)), 0, 0, opened);
        }
        return flow;
    }

    private void leave(Flow flow, int i, double receipt, double exitHours, double exitDays, boolean opened) {
        double opening = opened ? at(Term.OPEN_UP_HOURS, i) * at(Term.SPEED, i) : 0;
        double rate = deal.labour().hourly().amount();
        boolean own = deal.labour().own();
        double labour = exitHours * at(Term.OWN_HOURLY, i) + (own ? opening * rate : 0);
        double days = yardDays(i) + opening / at(Term.WORK_PER_DAY, i) + exitDays;
        set(flow, i, receipt, own ? 0 : opening * rate, exitHours + (own ? opening : 0), labour, days);
    }

    private void set(
            Flow flow, int i, double receipt, double cash, double ownHours, double ownLabour, double days) {
        double yardDays = yardDays(i);
        double fixed = deal.bought() ? 0 : buying(i);
        double holding = at(Term.HOLDING_PER_DAY_OWN, i) * (days - yardDays);
        double capital = at(Term.CAPITAL_RATE, i) * days / DAYS_PER_YEAR;
        double priceFactor = (1 + at(Term.AUCTION_PREMIUM, i)) * (1 + at(Term.SALES_TAX, i));
        flow.before()[i] = receipt - fixed - holding - cash - ownLabour - capital * (fixed + cash);
        flow.unit()[i] = priceFactor * (1 + capital);
        flow.ownHours()[i] = ownHours;
        flow.ownLabour()[i] = ownLabour;
        flow.fixed()[i] = fixed;
        flow.cashOut()[i] = fixed + cash + holding;
        flow.priceFactor()[i] = priceFactor;
        flow.days()[i] = days;
    }

    /** What buying and fetching it costs, the price apart. */
    private double buying(int i) {
        return at(Term.GATE_FEES, i) + at(Term.TOW_HOOK_UP, i) + at(Term.TOW_PER_MILE, i) * deal.towMiles()
                + at(Term.TITLE_TRANSFER, i) + at(Term.TITLE_HISTORY, i) + at(Term.INSPECTION_PAID, i)
                + at(Term.STORAGE_PER_DAY_YARD, i) * at(Term.DAYS_IN_YARD, i);
    }

    private double yardDays(int i) {
        return deal.bought() ? 0 : at(Term.DAYS_IN_YARD, i);
    }

    private double at(Term term, int i) {
        return t.get(term)[i];
    }
}
