/** PNG files made by hand (W3C Portable Network Graphics, Third Edition, 5 and 11). */
import { crc32, deflateSync } from "node:zlib";

/** Colour types of table 11.1 and the bytes a dot of 8 bits takes. */
const SORTS = { grey: [0, 1], colour: [2, 3], "see-through": [6, 4] } as const;

/**
 * A picture of one tone all over.
 * @param sample 0 to 255, what every part of every dot is
 */
export function emptyPng(
  widthPx: number,
  heightPx: number,
  sort: keyof typeof SORTS = "grey",
  sample = 0,
): Buffer {
  const [colourType, bytes] = SORTS[sort];
  const head = Buffer.alloc(13);
  head.writeUInt32BE(widthPx, 0);
  head.writeUInt32BE(heightPx, 4);
  head.set([8, colourType, 0, 0, 0], 8);
  const row = Buffer.alloc(1 + widthPx * bytes, sample);
  row[0] = 0;
  const rows = Buffer.concat(Array.from({ length: heightPx }, () => row));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** The same file with another size in its header, as somebody who means harm would write it. */
export function lyingPng(png: Buffer, widthPx: number, heightPx: number): Buffer {
  const lying = Buffer.from(png);
  lying.writeUInt32BE(widthPx, 16);
  lying.writeUInt32BE(heightPx, 20);
  lying.writeUInt32BE(crc32(lying.subarray(12, 29)), 29);
  return lying;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}
