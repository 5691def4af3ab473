/**
 * What publishing makes: one class a product says for what it is made, when, under which name and
 * how.
 *
 * <p>{@link org.lapmark.publish.product.Products} lists them; the manifest, the command's options
 * and what a check makes follow from that list. A product makes its files at a {@link
 * org.lapmark.publish.product.Desk} and touches none itself.
 */
package org.lapmark.publish.product;
