package org.lapmark.publish;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * What a PDF file holds, in lines under headings that two files of one content share: of each page
 * its decoded content, text, resources and links; of the file its structure tree, layers, outline,
 * description and attachments. Where objects lie in the file doesn't count, nor the letters that a
 * font’s subset begins its name with.
 */
final class PdfContents {
  private static final Set<COSName> BACKWARD =
      Set.of(COSName.PARENT, COSName.P, COSName.PREV, COSName.getPDFName("StructParents"));

  private final Map<String, List<String>> sections = new LinkedHashMap<>();
  private final Map<COSBase, Integer> pages = new IdentityHashMap<>();

  private PdfContents() {}

  /**
   * Reads a file.
   *
   * @param file a PDF file
   * @return lines by heading, in the order of the file
   * @throws IOException when it can't be read
   */
  static Map<String, List<String>> of(Path file) throws IOException {
    PdfContents contents = new PdfContents();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      contents.read(document);
    }
    return contents.sections;
  }

  private void read(PDDocument document) throws IOException {
    int number = 0;
    for (PDPage page : document.getPages()) {
      pages.put(page.getCOSObject(), ++number);
    }
    for (int i = 1; i <= number; i++) {
      readPage(document, i);
    }
    COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
    for (COSName name : List.copyOf(catalog.keySet())) {
      if (!name.equals(COSName.PAGES)) {
        describe("document " + name.getName(), catalog.getDictionaryObject(name));
      }
    }
    describe("document Info", document.getDocumentInformation().getCOSObject());
  }

  private void readPage(PDDocument document, int number) throws IOException {
    PDPage page = document.getPage(number - 1);
    String heading = "page " + number + ' ';
    try (InputStream content = page.getContents()) {
      sections.put(
          heading + "content",
          new String(content.readAllBytes(), StandardCharsets.ISO_8859_1).lines().toList());
    }
    PDFTextStripper text = new PDFTextStripper();
    text.setStartPage(number);
    text.setEndPage(number);
    sections.put(heading + "text", text.getText(document).lines().toList());
    COSDictionary entries = page.getCOSObject();
    for (COSName name : List.copyOf(entries.keySet())) {
      if (!BACKWARD.contains(name) && !name.equals(COSName.CONTENTS)) {
        describe(heading + name.getName(), entries.getDictionaryObject(name));
      }
    }
  }

  private void describe(String heading, COSBase value) throws IOException {
    List<String> lines = new ArrayList<>();
    write(value, "", lines, Collections.newSetFromMap(new IdentityHashMap<>()));
    sections.put(heading, lines);
  }

  private void write(COSBase given, String path, List<String> lines, Set<COSBase> above)
      throws IOException {
    COSBase value = given instanceof COSObject reference ? reference.getObject() : given;
    Integer page = pages.get(value);
    if (page != null) {
      lines.add(path + " = page " + page);
    } else if (value instanceof COSDictionary || value instanceof COSArray) {
      if (!above.add(value)) {
        lines.add(path + " = above");
        return;
      }
      if (value instanceof COSArray array) {
        for (int i = 0; i < array.size(); i++) {
          write(array.get(i), path + '[' + i + ']', lines, above);
        }
      } else {
        writeDictionary((COSDictionary) value, path, lines, above);
      }
      above.remove(value);
    } else {
      lines.add(path + " = " + plain(value));
    }
  }

  private void writeDictionary(
      COSDictionary dictionary, String path, List<String> lines, Set<COSBase> above)
      throws IOException {
    for (COSName name : dictionary.keySet().stream().sorted().toList()) {
      boolean stored = name.equals(COSName.LENGTH) || name.equals(COSName.FILTER);
      if (!BACKWARD.contains(name) && !(dictionary instanceof COSStream && stored)) {
        write(dictionary.getItem(name), path + '/' + name.getName(), lines, above);
      }
    }
    if (dictionary instanceof COSStream stream) {
      ByteArrayOutputStream decoded = new ByteArrayOutputStream();
      try (InputStream bytes = stream.createInputStream()) {
        bytes.transferTo(decoded);
      }
      lines.add(path + " = " + decoded.size() + " bytes " + digest(decoded.toByteArray()));
    }
  }

  private static String plain(COSBase value) {
    if (value instanceof COSName name) {
      return '/' + name.getName().replaceFirst("^[A-Z]{6}\\+", "");
    }
    return value instanceof COSString string ? string.getString() : String.valueOf(value);
  }

  /** A digest in hexadecimal digits. */
  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }
}
