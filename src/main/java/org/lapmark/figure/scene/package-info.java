/**
 * What a picture shows before it is ink: plain numbers in millimetres and words as they are
 * printed, without formulas, places in files or scale. Each kind of picture has a scene of its own.
 */
package org.lapmark.figure.scene;
