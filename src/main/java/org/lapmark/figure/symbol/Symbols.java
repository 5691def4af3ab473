package org.lapmark.figure.symbol;

import java.util.List;
import java.util.Optional;

/** All forms of things. */
public final class Symbols {
  /** Each form once. */
  public static final List<Form> FORMS =
      List.of(
          DRing.FORM,
          RoundRing.FORM,
          RectangularRing.FORM,
          Slide.FORM,
          SwivelHook.FORM,
          Buckle.FORM,
          PressStud.FORM,
          MagneticSnap.FORM,
          Rivet.FORM,
          Eyelet.FORM,
          Button.FORM,
          Zip.FORM,
          Cord.FORM,
          CordStop.FORM,
          Elastic.FORM,
          HookAndLoop.FORM);

  private Symbols() {}

  /** The form of a name. */
  public static Optional<Form> form(String id) {
    return FORMS.stream().filter(form -> form.id().equals(id)).findFirst();
  }

  /** The names of all parts of all forms. */
  public static List<String> parts() {
    return FORMS.stream().flatMap(form -> form.parts().stream()).distinct().toList();
  }
}
