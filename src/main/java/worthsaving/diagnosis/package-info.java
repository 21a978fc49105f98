/** Which items have failed, given the findings: exact inference in a noisy-OR network built from the catalogue. */
package worthsaving.diagnosis;
