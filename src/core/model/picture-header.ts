/**
 * What the first bytes of a picture file say of it, before anything is decoded: a file of 200 KB
 * may ask for gigabytes. JPEG after ITU-T T.81 (B.2.2: frame header), PNG after the W3C's Portable
 * Network Graphics (Third Edition, 11.2.1: IHDR), WebP after RFC 9649.
 */

export interface PictureHeader {
  readonly mediaType: "image/jpeg" | "image/png" | "image/webp";
  /** As stored; a camera's note may turn the picture when it is shown. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Size and kind of a JPEG, PNG or WebP file; null when the bytes are the start of none. */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  const read = pngSize(bytes) ?? webpSize(bytes) ?? jpegSize(bytes);
  return read && read.widthPx > 0 && read.heightPx > 0 ? read : null;
}

function ascii(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}

/** A whole number, most significant byte first; 0 beyond the end. */
function big(bytes: Uint8Array, at: number, length: number): number {
  let value = 0;
  for (let index = 0; index < length; index += 1) value = value * 256 + (bytes[at + index] ?? 0);
  return value;
}

/** The same with the least significant byte first. */
function little(bytes: Uint8Array, at: number, length: number): number {
  let value = 0;
  for (let index = length - 1; index >= 0; index -= 1) {
    value = value * 256 + (bytes[at + index] ?? 0);
  }
  return value;
}

function pngSize(bytes: Uint8Array): PictureHeader | null {
  const isPng = ascii(bytes, 0, 8) === "\u0089PNG\r\n\u001a\n" && ascii(bytes, 12, 4) === "IHDR";
  if (!isPng) return null;
  return { mediaType: "image/png", widthPx: big(bytes, 16, 4), heightPx: big(bytes, 20, 4) };
}

function webpSize(bytes: Uint8Array): PictureHeader | null {
  if (ascii(bytes, 0, 4) !== "RIFF" || ascii(bytes, 8, 4) !== "WEBP") return null;
  const sized = (widthPx: number, heightPx: number): PictureHeader => ({
    mediaType: "image/webp",
    widthPx,
    heightPx,
  });
  switch (ascii(bytes, 12, 4)) {
    case "VP8X":
      return sized(little(bytes, 24, 3) + 1, little(bytes, 27, 3) + 1);
    case "VP8L": {
      const packed = little(bytes, 21, 4);
      return sized((packed % 16_384) + 1, (Math.floor(packed / 16_384) % 16_384) + 1);
    }
    case "VP8 ":
      return sized(little(bytes, 26, 2) % 16_384, little(bytes, 28, 2) % 16_384);
    default:
      return null;
  }
}

/** Markers of a frame header: SOF0 to SOF15 without DHT, JPG and DAC. */
function isFrameHeader(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function jpegSize(bytes: Uint8Array): PictureHeader | null {
  if (big(bytes, 0, 2) !== 0xff_d8) return null;
  let at = 2;
  while (at + 9 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      // A byte of filling.
      at += 1;
    } else if (isFrameHeader(marker)) {
      return {
        mediaType: "image/jpeg",
        heightPx: big(bytes, at + 5, 2),
        widthPx: big(bytes, at + 7, 2),
      };
    } else {
      const length = big(bytes, at + 2, 2);
      if (length < 2) return null;
      at += 2 + length;
    }
  }
  return null;
}

const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** Bytes of a base64 text (RFC 4648, section 4); null when it is none. */
export function bytesOfBase64(text: string): Uint8Array<ArrayBuffer> | null {
  const body = text.replace(/={1,2}$/, "");
  if (text.length % 4 !== 0 || /[^A-Za-z0-9+/]/.test(body)) return null;
  const values = new Uint8Array(128);
  Array.from(DIGITS).forEach((digit, value) => {
    values[digit.charCodeAt(0)] = value;
  });
  const bytes = new Uint8Array(Math.floor((body.length * 3) / 4));
  let [held, bits, at] = [0, 0, 0];
  for (let index = 0; index < body.length; index += 1) {
    held = ((held << 6) | (values[body.charCodeAt(index)] ?? 0)) & 0xff_ff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at] = (held >> bits) & 0xff;
      at += 1;
    }
  }
  return bytes;
}

/** Letters of base64 in which a header is looked for first: a camera's longest note before it fits. */
const FIRST_LETTERS = 100_000;

/** The header of a picture kept as base64; only as much of the text is read as that takes. */
export function headerOfBase64(text: string): PictureHeader | null {
  for (const part of [text.slice(0, FIRST_LETTERS), text]) {
    const bytes = bytesOfBase64(part);
    const header = bytes && pictureHeader(bytes);
    if (header) return header;
  }
  return null;
}
