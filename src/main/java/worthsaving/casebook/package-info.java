/** The user's own file: cases, journal, forecasts, actuals and every edit, kept on SQLite; may open that one file. */
package worthsaving.casebook;
