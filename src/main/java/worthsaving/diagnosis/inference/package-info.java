/** Exact inference over yes/no variables: tables, noisy-OR, elimination order, bucket tree, best joint states. */
package worthsaving.diagnosis.inference;
