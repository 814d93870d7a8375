/**
 * A face that has letters the program's own lacks: Noto Sans with another table of which sign has
 * which shape (OpenType specification, cmap, format 12), so that Georgian letters have Latin shapes.
 */
import { fonts } from "./printed.ts";

/** First of ten letters of the Georgian script, U+10D0. */
const FIRST = 0x10d0;
const COUNT = 10;
/** A shape of Noto Sans that is drawn: that of the capital A and those after it. */
const SHAPE = 36;

/** Georgian letters, which the program's own face has not. */
export const GEORGIAN = "ბაგი";

export function otherFace(): Uint8Array<ArrayBuffer> {
  const own = Buffer.from(fonts.regular);
  const cmap = Buffer.alloc(12 + 16 + 12);
  // Version 0, one table: platform 3, encoding 10 (all of Unicode).
  cmap.writeUInt16BE(1, 2);
  cmap.writeUInt16BE(3, 4);
  cmap.writeUInt16BE(10, 6);
  cmap.writeUInt32BE(12, 8);
  cmap.writeUInt16BE(12, 12);
  cmap.writeUInt32BE(28, 16);
  cmap.writeUInt32BE(1, 24);
  cmap.writeUInt32BE(FIRST, 28);
  cmap.writeUInt32BE(FIRST + COUNT - 1, 32);
  cmap.writeUInt32BE(SHAPE, 36);
  const made = Buffer.concat([own, Buffer.alloc((4 - (own.length % 4)) % 4), cmap]);
  for (let at = 12; at < 12 + made.readUInt16BE(4) * 16; at += 16) {
    const tag = made.toString("latin1", at, at + 4);
    // The sum over the whole file, by which one face is told from another.
    if (tag === "head") made.writeUInt32BE(0x0fac_e000, made.readUInt32BE(at + 8) + 8);
    if (tag !== "cmap") continue;
    made.writeUInt32BE(made.length - cmap.length, at + 8);
    made.writeUInt32BE(cmap.length, at + 12);
  }
  return new Uint8Array(made);
}
