/** Pictures of the folder {@code art} as drawings of documents: at the size at which they print. */
package org.lapmark.document.art;
