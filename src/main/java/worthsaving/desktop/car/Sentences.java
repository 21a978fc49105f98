package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Words;

/** Sentences under a heading, a dot before each; gone while there are none. Labels stay while a slider moves. */
final class Sentences extends VBox {

    private final List<Label> texts = new ArrayList<>();

    Sentences(String heading) {
        super(3);
        getChildren().add(Words.plain(heading, "subheading"));
        show(List.of());
    }

    void show(List<String> sentences) {
        while (texts.size() < sentences.size()) {
            add();
        }
        for (int i = 0; i < texts.size(); i++) {
            boolean there = i < sentences.size();
            texts.get(i).setText(there ? Figures.whole(sentences.get(i)) : "");
            texts.get(i).getParent().setVisible(there);
            texts.get(i).getParent().setManaged(there);
        }
        setVisible(!sentences.isEmpty());
        setManaged(!sentences.isEmpty());
    }

    private void add() {
        Label text = Words.wrapped("");
        HBox.setHgrow(text, Priority.ALWAYS);
        texts.add(text);
        getChildren().add(new HBox(6, Words.whole("\u2022"), text));
    }
}
