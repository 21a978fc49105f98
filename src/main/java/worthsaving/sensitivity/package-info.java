/** What a result hangs on: tornado, break-even, two-way map, shares of the variance. */
package worthsaving.sensitivity;
