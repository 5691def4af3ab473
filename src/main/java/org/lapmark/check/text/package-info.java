/** Rules about what authors write to be read: texts, labels, tables, numbers, translations. */
package org.lapmark.check.text;
