package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;

/** The tokens of an advert as words in the vocabulary's own spelling; "cel" becomes three words at one place. */
final class Words {

    /**
     * @param token the token it was written as
     * @param index that token's number
     */
    record Word(String text, Token token, int index) {}

    private final List<Token> tokens;
    private final List<Word> words;

    private Words(List<Token> tokens, List<Word> words) {
        this.tokens = tokens;
        this.words = List.copyOf(words);
    }

    static Words of(List<Token> tokens, Spelling spelling) {
        List<Word> words = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (token.kind() == Token.Kind.SIGN) {
                continue;
            }
            for (String word : spelling.read(token.text())) {
                words.add(new Word(word, token, i));
            }
        }
        return new Words(tokens, words);
    }

    List<Token> tokens() {
        return tokens;
    }

    List<Word> list() {
        return words;
    }

    Word get(int i) {
        return words.get(i);
    }

    int size() {
        return words.size();
    }

    /** From the first to the last character of a run of words. */
    Span span(int first, int last) {
        return new Span(words.get(first).token().start(), words.get(last).token().end());
    }
}
