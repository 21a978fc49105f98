package worthsaving.intake.advert;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An advert cut up and marked: what every rule works on. Rules mark the tokens they have used. */
final class Page {

    private final String text;
    private final LocalDate on;
    private final Vocabulary vocabulary;
    private final List<Token> tokens;
    private final Words words;
    private final Map<String, List<Hit>> hits;
    private final List<Num> numbers;
    private final boolean[] used;
    private final int[] firstWord;

    Page(String text, LocalDate on, Vocabulary vocabulary) {
        this.text = text;
        this.on = on;
        this.vocabulary = vocabulary;
        this.tokens = Lexer.cut(text);
        this.words = Words.of(tokens, vocabulary.spelling());
        this.hits = vocabulary.phrases().find(words);
        this.numbers = Numbers.in(tokens);
        this.used = new boolean[tokens.size()];
        this.firstWord = new int[tokens.size() + 1];
        int w = 0;
        for (int i = 0; i <= tokens.size(); i++) {
            firstWord[i] = w;
            while (w < words.size() && words.get(w).index() == i) {
                w++;
            }
        }
    }

    String text() {
        return text;
    }

    LocalDate on() {
        return on;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    List<Token> tokens() {
        return tokens;
    }

    Token token(int i) {
        return tokens.get(i);
    }

    /** The text of a token, empty outside the advert. */
    String at(int i) {
        return i >= 0 && i < tokens.size() ? tokens.get(i).text() : "";
    }

    /** As written, with its capitals. */
    String raw(int i) {
        return text.substring(tokens.get(i).start(), tokens.get(i).end());
    }

    Words words() {
        return words;
    }

    /** Number of the first word of a token, or of the first word after it where it has none. */
    int firstWord(int token) {
        return firstWord[token];
    }

    List<Hit> hits(String kind) {
        return hits.getOrDefault(kind, List.of());
    }

    List<Num> numbers() {
        return numbers;
    }

    boolean used(int from, int to) {
        for (int i = from; i <= to; i++) {
            if (used[i]) {
                return true;
            }
        }
        return false;
    }

    void use(int from, int to) {
        for (int i = from; i <= to; i++) {
            used[i] = true;
        }
    }

    boolean sameClause(int a, int b) {
        return a >= 0 && b >= 0 && a < tokens.size() && b < tokens.size()
                && tokens.get(a).clause() == tokens.get(b).clause();
    }

    /** Whether a stretch between commas ends with the token. */
    boolean endsSegment(int i) {
        return i + 1 >= tokens.size() || tokens.get(i + 1).segment() != tokens.get(i).segment();
    }

    Span span(int from, int to) {
        return new Span(tokens.get(from).start(), tokens.get(to).end());
    }

    List<Span> spans(Hit hit) {
        List<Span> spans = new ArrayList<>();
        Span last = null;
        for (int place : hit.places()) {
            Token token = words.get(place).token();
            if (last != null && text.substring(last.end(), Math.max(last.end(), token.start())).isBlank()) {
                spans.remove(spans.size() - 1);
                last = new Span(last.start(), Math.max(last.end(), token.end()));
            } else {
                last = new Span(token.start(), token.end());
            }
            spans.add(last);
        }
        return spans;
    }

    /** True when a hit of the kind ends or begins within {@code reach} words of a run of tokens, in its clause. */
    boolean near(String kind, int from, int to, int before, int after) {
        int a = firstWord[from];
        int b = firstWord[to + 1] - 1;
        for (Hit hit : hits(kind)) {
            int token = words.get(hit.first()).index();
            boolean ahead = hit.last() < a && a - hit.last() <= before;
            boolean behind = hit.first() > b && hit.first() - b <= after;
            if ((ahead || behind) && sameClause(token, from)) {
                return true;
            }
        }
        return false;
    }
}
