package worthsaving.intake.advert;

import java.util.List;

/** When all of {@code when} hold (a leading ! means not), {@code then} is taken to hold too. */
record Implication(List<String> when, String then) {}
