/** The program's icons are what `npm run icons` draws, and the manifest names each of them. */
import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { drawIcons } from "../../.config/draw-icons.mjs";
import { repository } from "../../.config/repository.mjs";
import { textOf } from "./source-files.ts";

const FOLDER = "src/app/public/";
const icons = drawIcons();

/** An SVG's text, or a PNG's points unpacked: packing may differ between versions of the packer. */
function pictureOf(name: string, bytes: Buffer): string {
  if (!name.endsWith(".png")) return bytes.toString("utf8");
  const start = bytes.indexOf("IDAT");
  const length = bytes.readUInt32BE(start - 4);
  return inflateSync(bytes.subarray(start + 4, start + 4 + length)).toString("base64");
}

test("every icon is as drawn", () => {
  for (const [name, drawn] of icons) {
    const stored = readFileSync(`${repository}${FOLDER}${name}`);
    expect(pictureOf(name, stored) === pictureOf(name, drawn), name).toBe(true);
  }
});

test("every icon is used by the manifest or the page", () => {
  const users = textOf(`${FOLDER}site.webmanifest`) + textOf("src/app/index.html");
  expect([...icons.keys()].filter((name) => !users.includes(name))).toEqual([]);
});
