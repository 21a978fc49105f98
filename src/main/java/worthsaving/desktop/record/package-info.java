/** The screen of finished cars: forecast against what came, and what they teach. */
package worthsaving.desktop.record;
