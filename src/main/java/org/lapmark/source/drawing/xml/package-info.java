/**
 * XML, read with the place of every character of every attribute. Nothing is fetched, and what
 * could expand is refused.
 */
package org.lapmark.source.drawing.xml;
