/**
 * What a rule is, what it may know (a pattern as written, or evaluated in a variant), and the codes
 * of all rules; each code is said by one rule alone.
 */
package org.lapmark.check.rule;
