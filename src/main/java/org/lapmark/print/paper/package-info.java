/**
 * Papers with the part that printers reach, how they are cut into tiles, and what a printer does to
 * lengths; in millimetres.
 */
package org.lapmark.print.paper;
