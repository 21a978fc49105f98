package worthsaving.repair;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.repair.Worker.OwnHands;

/** A seeded random catalogue, a workshop with restrictions, and a set of failed items. */
record RandomTrade(Catalogue catalogue, Workshop workshop, Set<String> failed) {

    private static final PartSource[] BOUGHT = {
        PartSource.MAKER, PartSource.AFTERMARKET, PartSource.REBUILT, PartSource.USED
    };

    static RandomTrade numbered(int number) {
        SplittableRandom random = Seed.DEFAULT.derive("repair trade " + number).generator();
        Trade trade = new Trade();
        int steps = random.nextInt(1, 8);
        int items = random.nextInt(1, 6);
        int tools = random.nextInt(0, 4);
        addSteps(trade, random, steps);
        for (int t = 0; t < tools; t++) {
            trade.tool("T" + t, random.nextInt(20, 400));
        }
        for (int i = 0; i < items; i++) {
            Set<String> roots = i > 0 && random.nextInt(3) == 0 ? Set.of("I" + random.nextInt(i)) : Set.of();
            trade.item("I" + i, hours(random, 6), prices(random), money(random, 100), some(random, "T", tools, 0.3),
                    roots, some(random, "S", steps, 0.3).toArray(String[]::new));
        }
        int remedies = random.nextInt(0, 5);
        for (int r = 0; r < remedies; r++) {
            trade.remedy("R" + r, new HashSet<>(some(random, "I", items, 0.6)), BOUGHT[random.nextInt(4)],
                    random.nextInt(1, 9), random.nextInt(50, 2500), some(random, "T", tools, 0.3),
                    random.nextInt(30, 101) / 100.0, random.nextInt(0, 40) / 100.0, random.nextBoolean(),
                    some(random, "S", steps, 0.3).toArray(String[]::new));
        }
        return new RandomTrade(trade.catalogue(), workshop(random, items, tools),
                new TreeSet<>(some(random, "I", items, 0.75)));
    }

    /** Steps require only earlier ones; up to three of them make others quicker. */
    private static void addSteps(Trade trade, SplittableRandom random, int steps) {
        for (int s = 0; s < steps; s++) {
            Map<String, Double> easedBy = new HashMap<>();
            for (int e = 0; e < Math.min(3, steps); e++) {
                if (e != s && random.nextInt(4) == 0) {
                    easedBy.put("S" + e, random.nextInt(2, 11) / 10.0);
                }
            }
            trade.step("S" + s, random.nextInt(1, 60) / 10.0, easedBy,
                    some(random, "S", s, 0.3).toArray(String[]::new));
        }
    }

    private static Workshop workshop(SplittableRandom random, int items, int tools) {
        Workshop shop = random.nextInt(5) == 0
                ? Workshop.independent(Money.usd(130))
                : Workshop.of(new OwnHands(Money.usd(random.nextInt(0, 70)), random.nextInt(8, 20) / 10.0,
                        random.nextInt(10, 20) / 10.0, Set.copyOf(some(random, "I", items, 0.5))));
        shop = shop.withTools(Set.copyOf(some(random, "T", tools, 0.4)))
                .withUsedUnits(random.nextBoolean())
                .withShelf(Set.copyOf(some(random, "I", items, 0.15)))
                .withLeastSuccess(Probability.of(random.nextBoolean() ? 0.5 : 0));
        if (random.nextInt(3) == 0) {
            Set<PartSource> only = new HashSet<>();
            for (PartSource source : BOUGHT) {
                if (random.nextInt(3) > 0) {
                    only.add(source);
                }
            }
            shop = shop.withOnly(only);
        }
        if (random.nextInt(3) == 0) {
            shop = shop.withChoice("I" + random.nextInt(items), BOUGHT[random.nextInt(4)]);
        }
        return shop;
    }

    private static Map<PartSource, MoneyRange> prices(SplittableRandom random) {
        Map<PartSource, MoneyRange> prices = new EnumMap<>(PartSource.class);
        for (PartSource source : BOUGHT) {
            if (random.nextInt(3) == 0) {
                prices.put(source, money(random, 1500));
            }
        }
        return prices;
    }

    private static MoneyRange money(SplittableRandom random, int most) {
        return new MoneyRange(range(random, most), Money.USD);
    }

    private static HoursRange hours(SplittableRandom random, int most) {
        return new HoursRange(range(random, most));
    }

    private static Range range(SplittableRandom random, int most) {
        double low = random.nextDouble(most);
        double mode = low + random.nextDouble(most);
        return new Range(low, mode, mode + random.nextDouble(most));
    }

    static List<String> some(SplittableRandom random, String prefix, int count, double share) {
        Set<String> ids = new TreeSet<>();
        for (int i = 0; i < count; i++) {
            if (random.nextDouble() < share) {
                ids.add(prefix + i);
            }
        }
        return List.copyOf(ids);
    }
}
