package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import worthsaving.casebook.LearningSwitch;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.PartSource;
import worthsaving.deal.MostToPay;
import worthsaving.deal.Verdict;
import worthsaving.desktop.car.KeepingModel;
import worthsaving.desktop.car.Lever;
import worthsaving.desktop.catalogue.Shown;
import worthsaving.desktop.lot.LotColumn;
import worthsaving.desktop.market.FactorNames;
import worthsaving.desktop.record.FinishModel;
import worthsaving.desktop.teardown.Kind;
import worthsaving.intake.IntakeFault;
import worthsaving.quantity.Source;
import worthsaving.ranking.LotChoice;
import worthsaving.ranking.Order;
import worthsaving.repair.Quote;
import worthsaving.report.sheet.Audience;
import worthsaving.sensitivity.DealTornado;
import worthsaving.valuation.ErrorBand;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;

class TextsTest {

    private static final Path SOURCES = Path.of("src", "main", "java", "worthsaving", "desktop");
    private static final Map<String, Class<? extends Enum<?>>> ENUMS = Map.ofEntries(
            Map.entry("verdict", Verdict.Kind.class), Map.entry("menu", Shortcuts.class),
            Map.entry("lot.column", LotColumn.class), Map.entry("lot.explain", LotColumn.class),
            Map.entry("lot.order", Order.class), Map.entry("stage", FindingKind.Stage.class),
            Map.entry("sight", Observation.Sight.class), Map.entry("sight.explain", Observation.Sight.class),
            Map.entry("seller_says", Observation.Sight.class), Map.entry("pull", Observation.Sight.class),
            Map.entry("lever", Lever.class), Map.entry("lever.explain", Lever.class),
            Map.entry("lever.unit", Lever.class),
            Map.entry("source", PartSource.class), Map.entry("engine", Powertrain.Engine.class),
            Map.entry("timing", Powertrain.TimingDrive.class), Map.entry("gearbox", Powertrain.Gearbox.class),
            Map.entry("drive", Powertrain.Drive.class), Map.entry("title", TitleBrand.class),
            Map.entry("problem", IntakeFault.Effect.class), Map.entry("hazard", Exposure.Hazard.class),
            Map.entry("level", Exposure.Level.class), Map.entry("units", Units.class),
            Map.entry("why.binding", MostToPay.Binding.class), Map.entry("label", Source.Label.class),
            Map.entry("label.explain", Source.Label.class), Map.entry("why.stage", Quote.Stage.class),
            Map.entry("matters.figure", DealTornado.Kind.class),
            Map.entry("choose.reason", LotChoice.Reason.class),
            Map.entry("market.by", ErrorBand.By.class), Map.entry("market.by.explain", ErrorBand.By.class),
            Map.entry("market.factors", FactorNames.class), Map.entry("market.factors.explain", FactorNames.class),
            Map.entry("keep.explain", KeepingModel.Field.class), Map.entry("units.one", Units.class),
            Map.entry("finish", FinishModel.Field.class), Map.entry("finish.explain", FinishModel.Field.class),
            Map.entry("lesson", LearningSwitch.class),
            Map.entry("teardown.kind", Kind.class), Map.entry("teardown.failed", Observation.Sight.class),
            Map.entry("catalogue.shown", Shown.class), Map.entry("sheet.for", Audience.class));

    @Test
    void every_text_that_the_code_asks_for_is_there() {
        Set<String> missing = new TreeSet<>();
        Matcher call = Pattern.compile("(?:Texts\\.of|screenSwitch|lines|grid)\\(\\s*\"([a-z_.]+[a-z_])\"")
                .matcher(code());
        while (call.find()) {
            if (!Texts.BUNDLE.containsKey(call.group(1)) && !ENUMS.containsKey(call.group(1))) {
                missing.add(call.group(1));
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void every_enum_shown_has_a_text_for_each_constant() {
        Set<String> missing = new TreeSet<>();
        ENUMS.forEach((prefix, type) -> Stream.of(type.getEnumConstants())
                .map(constant -> Texts.key(prefix, constant))
                .filter(key -> !Texts.BUNDLE.containsKey(key))
                .forEach(missing::add));
        assertThat(missing).isEmpty();
    }

    @Test
    void no_text_is_left_that_nothing_asks_for() {
        String code = code();
        Set<String> unused = new TreeSet<>();
        for (String key : Texts.BUNDLE.keySet()) {
            String parent = key.contains(".") ? key.substring(0, key.lastIndexOf('.')) : key;
            boolean byPrefix = code.contains('"' + parent + ".\"") || ENUMS.containsKey(parent)
                    || code.contains('"' + parent + '"') && key.endsWith(".why");
            boolean strength = key.startsWith("pull.for.") || key.startsWith("pull.against.");
            if (!code.contains('"' + key + '"') && !byPrefix && !strength) {
                unused.add(key);
            }
        }
        assertThat(unused).isEmpty();
    }

    @Test
    void every_pattern_can_be_filled_in() {
        for (String key : Texts.BUNDLE.keySet()) {
            assertThat(Texts.of(key, "a", "b", "c", "d")).as(key).isNotBlank().doesNotContain("{0}", "''");
        }
    }

    @Test
    void numbers_are_handed_in_as_they_shall_be_read() {
        assertThat(Texts.of("lot.heading.of", 25, "lot.csv")).isEqualTo("Lot: 25 cars of lot.csv");
    }

    private static String code() {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<Path> sources = files.filter(f -> f.toString().endsWith(".java")).toList();
            return sources.stream().map(TextsTest::text).collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
