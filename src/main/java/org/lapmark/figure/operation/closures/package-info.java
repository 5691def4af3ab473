/** Zips, studs and rivets. */
package org.lapmark.figure.operation.closures;
