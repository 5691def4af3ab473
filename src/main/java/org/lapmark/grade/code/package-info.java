/** What can be wrong with a pattern in a variant, and how amounts are told. */
package org.lapmark.grade.code;
