/** Fulness taken in, and strips folded. */
package org.lapmark.figure.operation.folds;
