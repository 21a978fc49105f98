package worthsaving.desktop.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Numbered;

/**
 * Invented cases that stand behind the casebook: they are shown, and are in the file only once they are touched. The first
 * edit of one copies it in whole, with the edit, as one. Entries of their journals have numbers below zero.
 */
public final class Sample {

    public static final Sample NONE = new Sample(List.of(), Map.of());

    private static final String DROPPED = "sample.dropped.";
    private static final String HIDDEN = "sample.hidden";
    private static final String YES = "yes";

    private final Map<String, CaseFile> cases = new LinkedHashMap<>();
    private final Map<String, String> settings;

    /**
     * @param cases all of them marked as invented
     * @param settings of these cases
     */
    public Sample(List<CaseFile> cases, Map<String, String> settings) {
        long number = 0;
        for (CaseFile one : cases) {
            if (!one.invented()) {
                throw new IllegalArgumentException("a case of the sample must say that it is invented: " + one.id());
            }
            List<Numbered<JournalEntry>> journal = new ArrayList<>();
            for (Numbered<JournalEntry> entry : one.journal()) {
                number--;
                journal.add(new Numbered<>(number, entry.value()));
            }
            this.cases.put(one.id(), new CaseFile(
                    one.listing(), one.added(), journal, one.photos(), one.forecasts(), one.actual()));
        }
        this.settings = Map.copyOf(settings);
    }

    /** What hides all invented cases, or shows all of them again, also those that were dropped. */
    public static Edit hide(boolean hidden, Map<String, String> settings, String label) {
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit.Set(HIDDEN, hidden ? Optional.of(YES) : Optional.empty()));
        if (!hidden) {
            settings.keySet().stream().filter(name -> name.startsWith(DROPPED))
                    .forEach(name -> edits.add(new Edit.Set(name, Optional.empty())));
        }
        return new Edit.Several(label, edits);
    }

    static boolean hidden(Map<String, String> settings) {
        return settings.containsKey(HIDDEN);
    }

    /** Settings of the casebook, with those of the sample's cases that are not in it. */
    Map<String, String> settingsUnder(List<CaseFile> own, Map<String, String> ownSettings) {
        Map<String, String> all = new HashMap<>(settings);
        own.forEach(c -> all.keySet().removeIf(name -> name.startsWith(CarSettings.of(c.id()))));
        all.putAll(ownSettings);
        return all;
    }

    /** Cases of the casebook, then those of the sample that are neither among them nor dropped. */
    List<CaseFile> under(List<CaseFile> own, Map<String, String> ownSettings) {
        Set<String> there = new HashSet<>();
        own.forEach(c -> there.add(c.id()));
        return Stream.concat(own.stream(), cases.values().stream()
                .filter(c -> !there.contains(c.id()) && !ownSettings.containsKey(DROPPED + c.id()))).toList();
    }

    /**
     * The edit as the casebook is to have it.
     *
     * @param inBook ids of the cases that are in the casebook
     */
    Edit carriedIn(Edit edit, Set<String> inBook) {
        List<Edit> all = new ArrayList<>();
        new Carrying(new HashSet<>(inBook), new HashSet<>(), all).carry(edit);
        return all.size() == 1 && all.get(0).label().equals(edit.label()) ? all.get(0)
                : new Edit.Several(edit.label(), all);
    }

    /** One edit on its way; {@code there} are the cases in the casebook, {@code gone} those that the edit drops. */
    private final class Carrying {
        private final Set<String> there;
        private final Set<String> gone;
        private final List<Edit> into;

        Carrying(Set<String> there, Set<String> gone, List<Edit> into) {
            this.there = there;
            this.gone = gone;
            this.into = into;
        }

        void carry(Edit edit) {
            if (edit instanceof Edit.Several several) {
                several.edits().forEach(this::carry);
            } else if (edit instanceof Edit.DropCase drop && cases.containsKey(drop.id())) {
                if (there.remove(drop.id())) {
                    into.add(drop);
                }
                gone.add(drop.id());
                into.add(new Edit.Set(DROPPED + drop.id(), Optional.of(YES)));
            } else if (edit instanceof Edit.Rewrite rewrite && rewrite.number() < 0) {
                copy(owner(rewrite.number()), rewrite.number(), Optional.of(rewrite.entry()));
            } else if (edit instanceof Edit.Strike strike && strike.number() < 0) {
                copy(owner(strike.number()), strike.number(), Optional.empty());
            } else {
                touched(edit).map(cases::get).ifPresent(c -> copy(c, 0, Optional.empty()));
                into.add(edit);
                if (edit instanceof Edit.AddCase add) {
                    there.add(add.listing().id());
                }
            }
        }

        /** @param number entry that is another now, or none; zero for no such entry */
        private void copy(CaseFile one, long number, Optional<JournalEntry> other) {
            String id = one.id();
            if (gone.contains(id) || !there.add(id)) {
                return;
            }
            into.add(new Edit.AddCase(one.listing()));
            for (Numbered<JournalEntry> entry : one.journal()) {
                Optional<JournalEntry> kept = entry.number() == number ? other : Optional.of(entry.value());
                kept.ifPresent(e -> into.add(new Edit.Write(id, e)));
            }
            one.photos().forEach(p -> into.add(new Edit.AddPhoto(id, p.value())));
            one.forecasts().forEach(f -> into.add(new Edit.Keep(id, f)));
            one.actual().ifPresent(a -> into.add(new Edit.Finish(id, Optional.of(a))));
            settings.forEach((name, value) -> {
                if (name.startsWith(CarSettings.of(id))) {
                    into.add(new Edit.Set(name, Optional.of(value)));
                }
            });
        }
    }

    private CaseFile owner(long number) {
        return cases.values().stream().filter(c -> c.journal().stream().anyMatch(e -> e.number() == number)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the sample has no entry " + number));
    }

    /** Id of the case that an edit is of, when it must be there already. */
    private Optional<String> touched(Edit edit) {
        if (edit instanceof Edit.ChangeCase change) {
            return Optional.of(change.listing().id());
        }
        if (edit instanceof Edit.Write write) {
            return Optional.of(write.id());
        }
        if (edit instanceof Edit.AddPhoto add) {
            return Optional.of(add.id());
        }
        if (edit instanceof Edit.Keep keep) {
            return Optional.of(keep.id());
        }
        if (edit instanceof Edit.Finish finish) {
            return Optional.of(finish.id());
        }
        if (edit instanceof Edit.Set set) {
            return cases.keySet().stream().filter(id -> set.name().startsWith(CarSettings.of(id))).findFirst();
        }
        return Optional.empty();
    }
}
