/**
 * Where pieces and the test square lie on a sheet, which tiles they need and where these are
 * joined; in millimetres.
 */
package org.lapmark.print.arrange;
