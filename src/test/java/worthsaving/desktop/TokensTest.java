package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TokensTest {

    /** WCAG 2.1, success criteria 1.4.3 (text) and 1.4.11 (graphics), W3C Recommendation of 2018. */
    private static final double TEXT = 4.5;
    private static final double GRAPHICS = 3.0;

    private static final String[][] TEXT_ON = {
        {"text", "page"}, {"text", "panel"}, {"text", "sunken"}, {"text", "selected"}, {"soft", "page"},
        {"soft", "panel"}, {"soft", "selected"}, {"accent", "panel"}, {"accent", "page"}, {"on-accent", "accent"},
        {"good", "good-field"}, {"good", "panel"}, {"offer", "offer-field"}, {"check", "check-field"},
        {"check", "panel"}, {"leave", "leave-field"}, {"stop", "stop-field"}, {"stop", "panel"}, {"panel", "text"},
        {"text", "map-loss-much"}, {"text", "map-loss"}, {"text", "map-gain"}, {"text", "map-gain-much"},
        {"soft", "good-field"}, {"text", "good-field"},
    };

    private static final String[][] DRAWN_ON = {
        {"gain-bar", "panel"}, {"loss-bar", "panel"}, {"gain-bar", "sunken"}, {"accent", "panel"},
    };

    @ParameterizedTest
    @EnumSource(Theme.class)
    void text_stands_out_from_what_it_stands_on(Theme theme) throws IOException {
        Map<String, String> tokens = tokens(theme);
        for (String[] pair : TEXT_ON) {
            assertThat(contrast(tokens.get(pair[0]), tokens.get(pair[1])))
                    .as("%s on %s, %s", pair[0], pair[1], theme).isGreaterThanOrEqualTo(TEXT);
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void drawings_stand_out_from_what_they_stand_on(Theme theme) throws IOException {
        Map<String, String> tokens = tokens(theme);
        for (String[] pair : DRAWN_ON) {
            assertThat(contrast(tokens.get(pair[0]), tokens.get(pair[1])))
                    .as("%s on %s, %s", pair[0], pair[1], theme).isGreaterThanOrEqualTo(GRAPHICS);
        }
    }

    @Test
    void both_themes_name_the_same_colours() throws IOException {
        assertThat(tokens(Theme.DARK).keySet()).isEqualTo(tokens(Theme.LIGHT).keySet());
    }

    @ParameterizedTest
    @CsvSource({"controls.css", "screens.css"})
    void other_sheets_use_only_named_colours(String sheet) throws IOException {
        String css = read(sheet);
        assertThat(css).doesNotContainPattern("#[0-9a-fA-F]{3,8}\\b").doesNotContainPattern("rgba?\\(|hsba?\\(");
        Matcher used = Pattern.compile("-ws-([a-z-]+)").matcher(css);
        Map<String, String> tokens = tokens(Theme.LIGHT);
        while (used.find()) {
            assertThat(tokens).containsKey(used.group(1));
        }
    }

    @Test
    void the_code_names_no_colour() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "worthsaving", "desktop"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                assertThat(Files.readString(file)).as(file.toString())
                        .doesNotContain("javafx.scene.paint").doesNotContainPattern("\"#[0-9a-fA-F]{3,8}\"");
            }
        }
    }

    /** The sheet's own examples: black on white is 21, equal colours are 1. */
    @ParameterizedTest
    @CsvSource({"#000000,#ffffff,21.0", "#777777,#777777,1.0", "#777777,#ffffff,4.48"})
    void contrast_is_that_of_the_recommendation(String a, String b, double ratio) {
        assertThat(contrast(a, b)).isCloseTo(ratio, within(0.005));
    }

    private static double contrast(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static Map<String, String> tokens(Theme theme) throws IOException {
        Matcher token = Pattern.compile("-ws-([a-z-]+):\\s*(#[0-9a-f]{6});").matcher(read(theme.tokens()));
        Map<String, String> tokens = new TreeMap<>();
        while (token.find()) {
            tokens.put(token.group(1), token.group(2));
        }
        assertThat(tokens).isNotEmpty();
        return tokens;
    }

    private static String read(String name) throws IOException {
        try (var in = Theme.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
