/** Rivets, studs, eyelets and snaps as they are set. */
package org.lapmark.figure.operation.metal;
