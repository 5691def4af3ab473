package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.source.drawing.DrawingCode;
import org.lapmark.source.drawing.xml.XmlCode;
import org.lapmark.source.folder.FolderCode;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.read.PatternReader;
import org.lapmark.source.sizes.SizesCode;
import org.lapmark.source.yaml.YamlCode;

/** Files made to cost as much as they can, near the limits in force, are read to an end. */
class HostileTest {
  @TempDir Path parent;

  private List<FindingCode> codes(String file, String content) throws Exception {
    Path folder = Files.createDirectory(Files.createTempDirectory(parent, "x").resolve("pouch"));
    FaultCase.copyBase(folder);
    assertTrue(content.length() <= Limits.STANDARD.fileBytes());
    Files.writeString(folder.resolve(file), content);
    Findings findings = new Findings();
    PatternReader.read(folder, findings);
    assertFalse(findings.sorted().isEmpty());
    return findings.sorted().stream().map(finding -> finding.code()).distinct().toList();
  }

  private void gives(FindingCode code, String file, String content) throws Exception {
    List<FindingCode> codes = codes(file, content);
    assertTrue(codes.contains(code), codes.toString());
  }

  @Test
  void yaml() throws Exception {
    gives(YamlCode.YAML_TOO_DEEP, "pattern.yaml", "a: " + "[".repeat(90_000));
    gives(YamlCode.YAML_TOO_DEEP, "pattern.yaml", "- ".repeat(40_000));
    gives(KeyCode.KEY_UNKNOWN, "pattern.yaml", "unknown_key_: 1\n".repeat(20_000));
    gives(KeyCode.KEY_UNKNOWN, "pattern.yaml", keys());
    gives(YamlCode.YAML_TOO_LARGE, "pattern.yaml", "[" + "a,\n".repeat(500_000) + "]");
    gives(YamlCode.YAML_SYNTAX, "pattern.yaml", "a: {b} " + "c ".repeat(45_000) + "{");
    gives(YamlCode.YAML_ALIAS, "pattern.yaml", "a: &a [x]\nb: [*a,*a]\n".repeat(1000));
    gives(FolderCode.LINE_TOO_LONG, "pattern.yaml", "a".repeat(2_000_000));
    gives(KeyCode.KEY_MISSING, "pattern.yaml", "title: \"" + "\\n\\x41\n ".repeat(100_000) + '"');
  }

  private static String keys() {
    StringBuilder all = new StringBuilder("{");
    for (int i = 0; i < 20_000; i++) {
      all.append('k').append(i).append(i % 9_000 == 8_999 ? ",\n" : ",");
    }
    return all.append('}').toString();
  }

  @Test
  void references() throws Exception {
    StringBuilder all = new StringBuilder("panels:\n  p:\n    rectangle: {width: 1, height: 1}\n");
    all.append("    edges:\n");
    for (int i = 0; i < 1000; i++) {
      all.append("      ")
          .append("edge_with_a_long_name_".repeat(2))
          .append(i)
          .append(": [a, b]\n");
    }
    all.append("    notches:\n");
    for (int i = 0; i < 1000; i++) {
      String name = "egde_with_a_long_name_".repeat(2) + i;
      all.append("      - {edge: ").append(name).append(", at: 0.5}\n");
    }
    gives(SourceCode.EDGE_UNKNOWN, "pattern.yaml", all.toString());
  }

  @Test
  void tables() throws Exception {
    gives(KeyCode.TOO_MANY_ENTRIES, "sizes.csv", "measure,unit,S\n" + "1,".repeat(45_000));
    gives(
        SizesCode.CELL_WITHOUT_SIZE,
        "sizes.csv",
        "measure,unit,S\n" + ("a,mm,1" + ",1".repeat(500) + "\n").repeat(1_900));
    gives(SizesCode.CSV_SYNTAX, "sizes.csv", "measure,unit,S\n\"" + "\"\"\n".repeat(600_000));
    StringBuilder rows = new StringBuilder("measure,unit,S\n");
    for (int i = 0; i < 100_000; i++) {
      rows.append('a').append(i).append(",mm,1\n");
    }
    gives(KeyCode.TOO_MANY_ENTRIES, "sizes.csv", rows.toString());
  }

  @Test
  void drawings() throws Exception {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>\n";
    String file = "panels/front.svg";
    gives(XmlCode.XML_TOO_DEEP, file, svg + "<g>".repeat(30_000));
    gives(XmlCode.XML_TOO_LARGE, file, svg + "<g/>\n".repeat(300_000) + "</svg>");
    gives(XmlCode.XML_SYNTAX, file, svg + "&amp;".repeat(19_000) + "&" + "x".repeat(1000));
    StringBuilder prefixes = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg'");
    for (int i = 0; i < 20_000; i++) {
      prefixes.append("\nxmlns:p").append(i).append("='u' p").append(i).append(":onx='1'");
    }
    prefixes.append(">").append("<g xmlns:q='v'/>".repeat(5_000)).append("</svg>");
    gives(XmlCode.XML_SYNTAX, file, prefixes.toString());
    gives(
        DrawingCode.PATH_TOO_LONG,
        file,
        svg + "<path id='outline' d='M0 0" + "h1v1\n".repeat(200_000) + "'/></svg>");
    gives(
        DrawingCode.SVG_ACTIVE,
        file,
        svg + "<g on='' onx='' href='a:b'/>".repeat(3_500) + "</svg>");
    StringBuilder corners =
        new StringBuilder(svg).append("<rect id='outline' width='9' height='9'/>");
    corners.append("<g transform='").append("scale(1)".repeat(124)).append("'>\n");
    for (int i = 0; i < 15_000; i++) {
      corners.append("<circle id='corner.c").append(i).append("'/>\n");
    }
    gives(DrawingCode.PATH_TOO_LONG, file, corners.append("</g></svg>").toString());
    gives(
        KeyCode.NUMBER_TOO_LARGE,
        file,
        svg + "<path id='outline' d='M0 0 L" + "9".repeat(90_000) + "x'/></svg>");
  }

  @Test
  void copies() throws Exception {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>\n";
    String file = "panels/front.svg";
    StringBuilder bomb = new StringBuilder(svg).append("<defs><g id='c0'><path d='M0 0h1'/></g>\n");
    for (int i = 1; i < 50; i++) {
      bomb.append("<g id='c").append(i).append("'>");
      bomb.append(("<use href='#c" + (i - 1) + "'/>").repeat(10)).append("</g>\n");
    }
    bomb.append("</defs>");
    gives(XmlCode.XML_TOO_DEEP, file, bomb + "<use id='outline' href='#c49'/></svg>");
    gives(DrawingCode.SVG_COPIES, file, bomb + "<use id='outline' href='#c9'/></svg>");
    gives(
        DrawingCode.SVG_COPY_CYCLE,
        file,
        svg + "<g id='a'>" + "<use href='#a'/>\n".repeat(10_000) + "</g></svg>");
    StringBuilder lengthy = new StringBuilder(svg);
    lengthy
        .append("<defs><path id='p' d='M0 0 ")
        .append(" \n".repeat(500_000))
        .append("h1'/></defs>\n");
    for (int i = 0; i < 9_000; i++) {
      lengthy.append("<use id='drill.d").append(i).append("' href='#p'/>\n");
    }
    gives(DrawingCode.PATH_TOO_LONG, file, lengthy.append("</svg>").toString());
    StringBuilder computed = new StringBuilder(svg);
    computed
        .append("<defs><path id='p' d='M0 0")
        .append("h1v1".repeat(4_000))
        .append("'/></defs>\n");
    for (int i = 0; i < 9_000; i++) {
      computed.append("<use id='placement.d").append(i).append("' data-x='{1}' href='#p'/>\n");
    }
    gives(DrawingCode.PATH_TOO_LONG, file, computed.append("</svg>").toString());
  }
}
