import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bytesOfBase64, pictureHeader } from "../../../src/core/model/picture-header.ts";

const ascii = (text: string) => Array.from(text, (char) => char.charCodeAt(0));

describe("the size of a picture is read from its first bytes:", () => {
  test.each([
    [
      // PNG, 11.2.1: IHDR with width 3 and height 500, most significant byte first.
      "PNG",
      [0x89, ...ascii("PNG\r\n\u001a\n"), 0, 0, 0, 13, ...ascii("IHDR"), 0, 0, 0, 3, 0, 0, 1, 0xf4],
      { mediaType: "image/png", widthPx: 3, heightPx: 500 },
    ],
    [
      // T.81, B.2.2: after another segment and a filling byte, SOF2 with 8 bits, 513 lines of 260.
      "JPEG",
      [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xff, 0xc2, 0, 11, 8, 2, 1, 1, 4, 1, 1, 17, 0],
      { mediaType: "image/jpeg", widthPx: 260, heightPx: 513 },
    ],
    [
      // RFC 9649, 2.7: the extended header holds width and height less one in 24 bits each.
      "WebP, extended",
      [
        ...ascii("RIFF"),
        0,
        0,
        0,
        0,
        ...ascii("WEBPVP8X"),
        10,
        0,
        0,
        0,
        0,
        0,
        0,
        0,
        0x8f,
        1,
        0,
        99,
        0,
        0,
      ],
      { mediaType: "image/webp", widthPx: 400, heightPx: 100 },
    ],
    [
      // RFC 9649, 3.4: after the signature 0x2f, 14 bits of width less one, 14 of height less one.
      "WebP, lossless",
      [...ascii("RIFF"), 0, 0, 0, 0, ...ascii("WEBPVP8L"), 5, 0, 0, 0, 0x2f, 0x8f, 0xc1, 0x18, 0],
      { mediaType: "image/webp", widthPx: 400, heightPx: 100 },
    ],
  ])("%s", (_, bytes, header) => {
    expect(pictureHeader(Uint8Array.from(bytes))).toEqual(header);
  });
});

test("any bytes at all are read or refused, never a fault", () => {
  const starts = [
    [0xff, 0xd8, 0xff],
    [0x89, ...ascii("PNG\r\n\u001a\n")],
    ascii("RIFF0000WEBPVP8X"),
    [],
  ];
  fc.assert(
    fc.property(fc.constantFrom(...starts), fc.uint8Array({ maxLength: 200 }), (start, rest) => {
      const header = pictureHeader(Uint8Array.from([...start, ...rest]));
      expect(header === null || header.widthPx * header.heightPx > 0).toBe(true);
    }),
  );
});

test("base64 is read as Node reads it", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
      expect(bytesOfBase64(Buffer.from(bytes).toString("base64"))).toEqual(Uint8Array.from(bytes));
    }),
  );
  for (const wrong of ["A", "AB=C", "AAA\n", "AA-A", "=AAA"])
    expect(bytesOfBase64(wrong)).toBeNull();
});
