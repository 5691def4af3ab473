/** What can be wrong with a pattern in a variant. */
package org.lapmark.grade.code;
