package worthsaving.deal;

import static worthsaving.quantity.Money.usd;

import java.util.List;

/**
 * Invented worked cases of a weekend workshop, arithmetic done by hand. Own hours 35 an hour and 6 % tax
 * unless said otherwise.
 */
final class TradeCases {

    static final PriceTerms SIX_PERCENT = PriceTerms.taxed(0.06, usd(0));

    private TradeCases() {}

    /** Turbo petrol engine that needs a timing chain, ask 2,300. */
    static ScenarioDeal timingChain() {
        SaleLedger ledger = SaleLedger.of(usd(6_200))
                .less("selling", usd(200))
                .less("tow", usd(110 + 30 * 4))
                .less("title", usd(95))
                .less("holding", usd(35 * 4))
                .less("capital", usd(48))
                .lessShare("comeback reserve", 0.02);
        return new ScenarioDeal(ledger, SIX_PERCENT, usd(35), List.of(
                Scenario.mend("chain, valves fine", .55, usd(650), 14),
                Scenario.mend("bent valves", .30, usd(1_450), 28),
                Scenario.mend("bearings starved, used engine", .15, usd(2_900), 24)));
    }

    /** Hybrid with a battery warning, ask 2,000. */
    static ScenarioDeal hybridBattery() {
        return new ScenarioDeal(hybridLedger(), SIX_PERCENT, usd(35), List.of(
                Scenario.mend("weak modules", .70, usd(1_150), 5).withRepeat(.10, usd(1_150)),
                Scenario.mend("fan or bus bars", .15, usd(90), 5),
                Scenario.mend("12 V battery", .05, usd(220), 0.5),
                Scenario.mend("inverter", .10, usd(600 + 150), 8)));
    }

    /** The same hybrid once an isolation code is stored. */
    static ScenarioDeal hybridIsolation() {
        return new ScenarioDeal(hybridLedger(), SIX_PERCENT, usd(35), List.of(
                Scenario.mend("transaxle", .5, usd(1_650), 0),
                Scenario.mend("cable", .3, usd(355), 0),
                Scenario.mend("pack leak", .2, usd(1_150), 5).withRepeat(.10, usd(1_150))));
    }

    private static SaleLedger hybridLedger() {
        return SaleLedger.of(usd(6_800))
                .less("selling", usd(200))
                .less("tow", usd(180))
                .less("title", usd(95))
                .less("holding", usd(25 * 4))
                .less("capital", usd(35))
                .less("gloves and meter", usd(60))
                .lessShare("comeback reserve", 0.02);
    }

    /** Salvage auction, front collision, bidding near 5,400; rebuilt value 30 % below clean. */
    static ScenarioDeal salvage(double value) {
        SaleLedger ledger = SaleLedger.of(usd(value))
                .less("transport", usd(350))
                .less("title and inspection", usd(250))
                .less("selling", usd(300))
                .less("holding", usd(75 * 4))
                .less("capital", usd(185))
                .lessShare("comeback reserve", 0.03);
        return new ScenarioDeal(ledger, new PriceTerms(0.10, 0.06, usd(150)), usd(35), List.of(
                Scenario.mend("bolt-on", .50, usd(3_200 + 1_400 + 1_500), 45),
                Scenario.mend("rail pull", .35, usd(3_200 + 1_400 + 1_500 + 1_200), 55),
                Scenario.leave("structure not economic, part out", .15,
                        usd(3_000 - 650 - 350 - 50 - 240 - 100 - 150))));
    }

    /** Turbo said to be bad, repaired at a shop's 130 an hour, ask 3,000. */
    static SaleLedger turboLedger() {
        return SaleLedger.of(usd(8_000))
                .less("selling", usd(200))
                .less("tow", usd(180))
                .less("title", usd(95))
                .less("holding", usd(100))
                .less("capital", usd(40))
                .lessShare("comeback reserve", 0.02);
    }
}
