/** Which check is worth making next. */
package worthsaving.inspection;
