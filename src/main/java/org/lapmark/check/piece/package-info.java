/** Rules about pieces and what is sewn of them: grain, marks, pairs, linings and seams. */
package org.lapmark.check.piece;
