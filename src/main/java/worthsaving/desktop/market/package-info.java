/** The screen of the market: the data behind the values, how good they are, and what the user has seen himself. */
package worthsaving.desktop.market;
