package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Twenty thousand damaged adverts, the same every time: each gives a reading whose spans lie within the text. */
class AdvertFuzzTest {

    private static final long SEED = 20250601L;
    private static final int RUNS = 20_000;
    private static final long HANG_NANOS = TimeUnit.SECONDS.toNanos(1);
    private static final String SPICE = "$£€0123456789kKxX.,-/?!'’()[]{}*&%#@:;\n\r\t \u00a0\u0000\ud83d\ude97éß中\u202e";

    private static List<String> adverts() throws IOException {
        List<String> texts = new ArrayList<>();
        ObjectMapper mapper = new ObjectMapper();
        for (String file : List.of("invented.jsonl", "invented_blind.jsonl", "invented_blind2.jsonl",
                "invented_blind3.jsonl")) {
            for (String line : Files.readAllLines(Path.of("src/test/resources/adverts", file))) {
                texts.add(mapper.readTree(line).get("text").asText());
            }
        }
        return texts;
    }

    @Test
    @Timeout(540)
    void no_crash_and_no_hang() throws IOException {
        List<String> texts = adverts();
        SplittableRandom random = new SplittableRandom(SEED);
        List<String> slow = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            String text = mutate(texts, random);
            long start = cpu();
            AdvertReading reading = Vocabularies.read(text);
            if (cpu() - start > HANG_NANOS) {
                slow.add(text);
            }
            assertThat(spans(reading)).as("advert %s", i).allMatch(s -> s.end() <= reading.text().length());
        }
        assertThat(slow).isEmpty();
    }

    /** Time of this thread alone, so that a loaded machine does not count as a hang. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Stream<Span> spans(AdvertReading r) {
        Stream<List<Span>> car = Stream.of(r.car().year(), r.car().make(), r.car().model(), r.car().trim(),
                r.car().mileage(),
                r.car().litres(), r.car().cylinders(), r.car().engine(), r.car().gearbox(), r.car().drive(),
                        r.car().body(),
                r.car().vin(), r.offer().price(), r.offer().location()).flatMap(f -> f.stream().map(Found::words));
        Stream<List<Span>> lists = Stream.of(r.condition().symptoms(), r.condition().claims(), r.condition().codes(),
                r.offer().otherMoney()).flatMap(List::stream).map(Found::words);
        return Stream.concat(car, lists).flatMap(List::stream);
    }

    private static String mutate(List<String> texts, SplittableRandom random) {
        StringBuilder text = new StringBuilder(texts.get(random.nextInt(texts.size())));
        int edits = 1 + random.nextInt(12);
        for (int e = 0; e < edits; e++) {
            int at = text.length() == 0 ? 0 : random.nextInt(text.length());
            int end = Math.min(text.length(), at + random.nextInt(30));
            switch (random.nextInt(8)) {
                case 0 -> text.delete(at, end);
                case 1 -> text.insert(at, SPICE.charAt(random.nextInt(SPICE.length())));
                case 2 -> text.insert(at, text.substring(at, end));
                case 3 -> text.insert(at,
                        String.valueOf(SPICE.charAt(random.nextInt(SPICE.length()))).repeat(random.nextInt(60)));
                case 4 -> text.replace(at, end, text.substring(at, end).toUpperCase(java.util.Locale.ROOT));
                case 5 -> text.append(' ').append(texts.get(random.nextInt(texts.size())));
                case 6 -> text.reverse();
                default -> {
                    if (end > at) {
                        text.setCharAt(at, (char) random.nextInt(0x3000));
                    }
                }
            }
        }
        return text.toString();
    }

    @Test
    void longest_texts_are_cut_and_say_so() {
        for (String unit : List.of("no ", "1 ", "$", "a", "2011 honda civic ", "@a.", "five ", "x,",
                "ran when parked no knocks or ",
                "call 5", "- ", "98k ", "$5 asking was worth ", "needs head gasket, new starter and ", "no knocks, ",
                "Tulsa ", "in ok ", "1,", "\n", "a.b")) {
            String text = unit.repeat(100_000 / unit.length());
            long start = cpu();
            AdvertReading reading = Vocabularies.read(text);
            assertThat(cpu() - start).as("nanoseconds for '%s'", unit).isLessThan(HANG_NANOS);
            assertThat(reading.text()).hasSizeLessThanOrEqualTo(AdvertReader.MOST_CHARACTERS);
            assertThat(reading.notes()).anyMatch(n -> n.startsWith("only the first"));
        }
    }

    @Test
    void nothing_gives_nothing() {
        for (String text : List.of("", " ", "\n", "?", "\ud83d", "\u0000")) {
            AdvertReading reading = Vocabularies.read(text);
            assertThat(reading.car().model()).isEmpty();
            assertThat(reading.offer().price()).isEmpty();
            assertThat(reading.condition().symptoms()).isEmpty();
        }
    }
}
