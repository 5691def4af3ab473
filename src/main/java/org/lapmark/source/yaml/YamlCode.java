package org.lapmark.source.yaml;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with YAML before anything is known of its keys. */
public enum YamlCode implements FindingCode {
  /** The YAML can't be parsed. */
  YAML_SYNTAX,
  /** Lists and maps stand too deep in each other. */
  YAML_TOO_DEEP,
  /** The YAML has too many values. */
  YAML_TOO_LARGE,
  /** An anchor or an alias. */
  YAML_ALIAS,
  /** An explicit type tag. */
  YAML_TAG,
  /** More than one YAML document in a file. */
  YAML_SEVERAL_DOCUMENTS,
  /** A map or list stands where a key should. */
  KEY_NOT_TEXT,
  /** Something else stands where a map is expected. */
  VALUE_NOT_MAP,
  /** A file, or the head of one, that isn't a map. */
  ROOT_NOT_MAP,
  /** A placeholder without quotes, which YAML takes for a map. */
  PLACEHOLDER_UNQUOTED,
  /** A value with commas between brackets, without quotes, at which YAML ends it. */
  COMMAS_UNQUOTED;

  private final Severity severity;

  YamlCode() {
    this(Severity.ERROR);
  }

  YamlCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
