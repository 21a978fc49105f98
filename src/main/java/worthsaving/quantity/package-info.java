/** Typed quantities (money, hours, distance, probability, ranges, distributions, seeds); knows nothing of cars. */
package worthsaving.quantity;
