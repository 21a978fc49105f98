package worthsaving.desktop;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Parent;

/** Light or dark. Colours are named in {@code tokens-*.css} and nowhere else. */
public enum Theme {
    LIGHT("tokens-light.css"),
    DARK("tokens-dark.css");

    private final String tokens;

    Theme(String tokens) {
        this.tokens = tokens;
    }

    public Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    String tokens() {
        return tokens;
    }

    /** @param textSize size of ordinary text in pixels; everything else follows it */
    public void apply(Parent root, double textSize) {
        Application.setUserAgentStylesheet(
                this == LIGHT ? new PrimerLight().getUserAgentStylesheet() : new PrimerDark().getUserAgentStylesheet());
        root.getStylesheets().setAll(List.of(sheet(tokens), sheet("controls.css"), sheet("screens.css")));
        root.setStyle("-fx-font-size: " + textSize + "px;");
    }

    private static String sheet(String name) {
        return Objects.requireNonNull(Theme.class.getResource(name), name).toExternalForm();
    }
}
