/** The ways out of a car, their outcome distributions, the most to pay and the verdict. */
package worthsaving.deal;
