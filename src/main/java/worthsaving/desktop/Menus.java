package worthsaving.desktop;

import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The menus; every shortcut of the window stands beside one of their items. */
final class Menus extends MenuBar {

    Menus(Workbench bench) {
        Menu file = new Menu(Texts.of("menu.file"));
        file.getItems().addAll(
                item(Shortcuts.OPEN, bench::choose),
                item(Shortcuts.SHEET, bench::sheet),
                new SeparatorMenuItem(),
                item(Shortcuts.QUIT, Platform::exit));
        Menu edit = new Menu(Texts.of("menu.edit"));
        edit.getItems().addAll(
                labelled(item(Shortcuts.UNDO, bench::undo), bench.undoLabelProperty()),
                labelled(item(Shortcuts.REDO, bench::redo), bench.redoLabelProperty()),
                new SeparatorMenuItem(),
                item(Shortcuts.COPY, bench::copy),
                item(Shortcuts.FIND, bench::find),
                item(Shortcuts.COMPARE, bench::compare),
                drop(bench));
        Menu view = new Menu(Texts.of("menu.view"));
        MenuItem columns = new MenuItem(Texts.of("menu.columns"));
        columns.setOnAction(e -> bench.usualColumns());
        view.getItems().addAll(
                item(Shortcuts.LOT, bench::showLot),
                item(Shortcuts.CAR, bench::showCar),
                item(Shortcuts.TEARDOWN, bench::showTeardown),
                item(Shortcuts.MARKET, bench::showMarket),
                item(Shortcuts.CATALOGUE, bench::showCatalogue),
                item(Shortcuts.RECORD, bench::showRecord),
                new SeparatorMenuItem(),
                item(Shortcuts.UNITS, () -> bench.look().otherUnits()),
                item(Shortcuts.THEME, () -> bench.look().otherTheme()),
                item(Shortcuts.BIGGER, () -> bench.look().resize(1)),
                item(Shortcuts.SMALLER, () -> bench.look().resize(-1)),
                item(Shortcuts.USUAL_SIZE, () -> bench.look().resize(0)),
                new SeparatorMenuItem(),
                columns);
        view.getItems().add(sample(bench));
        Menu help = new Menu(Texts.of("menu.help"));
        help.getItems().add(item(Shortcuts.KEYS, () -> ShortcutsBox.show(getScene().getWindow(), bench)));
        getMenus().addAll(file, edit, view, help);
    }

    private static MenuItem drop(Workbench bench) {
        MenuItem drop = new MenuItem(Texts.of("menu.drop"));
        drop.setOnAction(e -> bench.drop());
        return drop;
    }

    private static MenuItem sample(Workbench bench) {
        MenuItem sample = new MenuItem();
        sample.setId("menu-sample");
        sample.textProperty().bind(Bindings.createStringBinding(
                () -> Texts.of(bench.book().sampleHidden() ? "menu.sample.show" : "menu.sample.hide"),
                bench.book().revisionProperty()));
        sample.disableProperty().bind(bench.book().readOnlyProperty());
        sample.setOnAction(e -> bench.book().hideSample(!bench.book().sampleHidden()));
        return sample;
    }

    /** Says which edit it is about. */
    private static MenuItem labelled(MenuItem item, ReadOnlyStringProperty label) {
        String name = item.getText();
        item.textProperty().bind(Bindings.createStringBinding(
                () -> label.get().isEmpty() ? name : Texts.of("menu.of", name, label.get()), label));
        return item;
    }

    private static MenuItem item(Shortcuts shortcut, Runnable action) {
        MenuItem item = new MenuItem(Texts.of("menu", shortcut));
        item.setAccelerator(shortcut.keys());
        item.setOnAction(e -> action.run());
        return item;
    }
}
