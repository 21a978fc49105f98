/** The screen of all listings: judged, ordered, filtered, copied. */
package worthsaving.desktop.lot;
