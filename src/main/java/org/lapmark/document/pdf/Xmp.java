package org.lapmark.document.pdf;

import java.nio.charset.StandardCharsets;

/** The XMP packet of a document: fixed in form, so that the same imprint gives the same bytes. */
final class Xmp {
  private static final String HEAD =
      """
      <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
      <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
      <rdf:Description rdf:about=""
        xmlns:dc="http://purl.org/dc/elements/1.1/"
        xmlns:xmp="http://ns.adobe.com/xap/1.0/"
        xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
        xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
        xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
        xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
        xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
        xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaid:part>3</pdfaid:part>
      <pdfaid:conformance>A</pdfaid:conformance>
      <pdfuaid:part>1</pdfuaid:part>
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>The part of ISO 14289 that is followed</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      <dc:format>application/pdf</dc:format>
      """;

  private static final String TAIL =
      """
      </rdf:Description>
      </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="w"?>
      """;

  private Xmp() {}

  static byte[] packet(Imprint imprint) {
    String date = imprint.date() + "T00:00:00Z";
    StringBuilder packet = new StringBuilder(HEAD);
    packet.append("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">");
    packet.append(escaped(imprint.title())).append("</rdf:li></rdf:Alt></dc:title>\n");
    if (!imprint.author().isEmpty()) {
      packet.append("<dc:creator><rdf:Seq><rdf:li>").append(escaped(imprint.author()));
      packet.append("</rdf:li></rdf:Seq></dc:creator>\n");
    }
    packet.append("<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">");
    packet.append(escaped(imprint.subject())).append("</rdf:li></rdf:Alt></dc:description>\n");
    packet.append("<dc:language><rdf:Bag><rdf:li>").append(escaped(imprint.language()));
    packet.append("</rdf:li></rdf:Bag></dc:language>\n");
    element(packet, "xmp:CreatorTool", imprint.program());
    element(packet, "xmp:CreateDate", date);
    element(packet, "xmp:ModifyDate", date);
    element(packet, "xmp:MetadataDate", date);
    element(packet, "pdf:Producer", imprint.program());
    return packet.append(TAIL).toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void element(StringBuilder packet, String name, String text) {
    packet.append('<').append(name).append('>').append(escaped(text));
    packet.append("</").append(name).append(">\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
