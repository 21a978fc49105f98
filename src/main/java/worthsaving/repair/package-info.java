/** What mending a set of failed items takes when jobs share a teardown. */
package worthsaving.repair;
