/** The car on offer and what is known, assumed or unknown about it. */
package worthsaving.vehicle;
