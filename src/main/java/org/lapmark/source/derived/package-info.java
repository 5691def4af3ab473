/**
 * Derivations as stated: each kind is one class that states its keys, reads itself, says which
 * names its result can have, makes its geometry in a variant, and says what of it is to blame when
 * that can't be made. {@link org.lapmark.source.derived.DerivedKinds#ALL} lists them.
 */
package org.lapmark.source.derived;
