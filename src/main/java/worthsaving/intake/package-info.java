/** Adverts, tables, VINs and trouble codes in; listings out. */
package worthsaving.intake;
