package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Interview.Answer;
import worthsaving.ranking.Interview.Question;

/** What to ask the seller: a list to copy, and beside it what the answers are for. */
public final class QuestionsReport {

    private final Appraisal appraisal;
    private final List<Question> questions;

    public QuestionsReport(Appraisal appraisal, List<Question> questions) {
        this.appraisal = appraisal;
        this.questions = List.copyOf(questions);
    }

    public void text(Appendable out) throws IOException {
        say(out, appraisal.listing().id() + ": " + appraisal.listing().vehicle().label());
        if (questions.isEmpty()) {
            say(out, "No answer would change what to do at " + Words.whole(appraisal.checkedAt()) + ".");
            return;
        }
        out.append('\n');
        for (Question q : questions) {
            say(out, "- " + q.finding().question());
        }
        out.append('\n');
        say(out, "For yourself: what the answers would change. Now: " + Words.verdict(appraisal.verdict().kind())
                + ", most to pay " + most(appraisal.assessment().mostToPay().wholeLimit()) + ".");
        TextTable table = new TextTable().left("asked about", 64).right("chance").right("worth at most")
                .left("if he admits it").left("if he denies it");
        for (Question q : questions) {
            table.row(q.finding().name(), Words.percent(q.chanceYes().value()), Words.whole(q.worth()), said(q.yes()),
                    said(q.no()));
        }
        table.write(out);
        say(out, "A seller's word counts for less than your own eyes; figures take that into account.");
    }

    private static String said(Answer answer) {
        return Words.verdict(answer.verdict()) + ", up to " + most(answer.mostToPay());
    }

    private static String most(Optional<Money> limit) {
        return limit.map(Money::wholeDown).map(Words::whole).orElse("nothing");
    }

    private static void say(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }
}
