/** The screen of one car: findings, failed items, repair, ways out, and sliders that judge it anew. */
package worthsaving.desktop.car;
