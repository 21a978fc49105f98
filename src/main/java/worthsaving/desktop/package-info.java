/** The window: start-up, navigation, texts, themes and what its screens share. */
package worthsaving.desktop;
