/** The XMP packet of a PDF (ISO 16684-1): title, program, date. */
import { xmlText } from "../formats/xml-text.ts";

/** @param created as `2027-03-02T09:40:00.000Z`; empty: not dated */
export function xmpText(title: string, created: string): string {
  const about = (name: string, address: string, body: string) =>
    `<rdf:Description rdf:about="" xmlns:${name}="${address}">${body}</rdf:Description>`;
  const date = created === "" ? "" : `<xmp:CreateDate>${created.slice(0, 19)}Z</xmp:CreateDate>`;
  return [
    about(
      "dc",
      "http://purl.org/dc/elements/1.1/",
      `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xmlText(title)}</rdf:li></rdf:Alt></dc:title>`,
    ),
    about(
      "xmp",
      "http://ns.adobe.com/xap/1.0/",
      `${date}<xmp:CreatorTool>Wideberth</xmp:CreatorTool>`,
    ),
    about("pdf", "http://ns.adobe.com/pdf/1.3/", "<pdf:Producer>Wideberth</pdf:Producer>"),
  ].join("\n");
}
