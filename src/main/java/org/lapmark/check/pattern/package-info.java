/** Rules about what a pattern is made of: pieces, layers, things, and how they grow. */
package org.lapmark.check.pattern;
