/** Values computed on demand, each once, and what each was computed from. */
package org.lapmark.grade.demand;
