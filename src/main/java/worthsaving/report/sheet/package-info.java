/** The decision sheet: one page that says what to do and why, as a model and as HTML and PDF drawn from it. */
package worthsaving.report.sheet;
