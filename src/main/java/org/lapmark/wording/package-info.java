/** ICU messages for labels and text alternatives, in the language of a document. */
package org.lapmark.wording;
