/**
 * Templates, words and looks: the program's own, or a folder that takes their place.
 *
 * <p>What is wrong with templates of a user's own is told as theirs, with file and line; filling
 * one always ends.
 */
package org.lapmark.document.template;
