/**
 * Marks as stated beside a panel's shape, and drawn ones of which more is stated: each kind is one
 * class that states its keys and its role in drawings, and makes its marks on a panel, ruled or
 * drawn. {@link org.lapmark.source.mark.MarkKinds#ALL} lists them.
 */
package org.lapmark.source.mark;
