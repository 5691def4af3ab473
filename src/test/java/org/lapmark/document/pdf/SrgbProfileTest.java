package org.lapmark.document.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.junit.jupiter.api.Test;

class SrgbProfileTest {
  @Test
  void meansTheSameColoursAsTheRuntimesOwnProfile() {
    ICC_Profile profile = ICC_Profile.getInstance(SrgbProfile.bytes());
    assertEquals(3, profile.getNumComponents());
    assertEquals(ColorSpace.TYPE_RGB, profile.getColorSpaceType());
    ICC_ColorSpace ours = new ICC_ColorSpace(profile);
    ColorSpace theirs = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    for (float[] colour :
        new float[][] {{0, 0, 0}, {1, 1, 1}, {1, 0, 0}, {0.2f, 0.5f, 0.8f}, {0.03f, 0.9f, 0.4f}}) {
      assertArrayEquals(theirs.toCIEXYZ(colour), ours.toCIEXYZ(colour), 0.005f);
    }
  }
}
