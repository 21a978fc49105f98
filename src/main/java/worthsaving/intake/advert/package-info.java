/** Reads a pasted advert: deterministic, offline, each field with the words it came from and whether it was guessed. */
package worthsaving.intake.advert;
