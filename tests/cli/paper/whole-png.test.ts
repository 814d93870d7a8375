/** Pictures damaged inside are refused before anything is printed. */
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { afterAll, expect, test } from "vitest";
import { map } from "../../../src/cli/paper/map.ts";
import { pngFault } from "../../../src/cli/paper/whole-png.ts";
import type { Picture } from "../../../src/core/model/plan.ts";

const [WIDTH, HEIGHT] = [9, 5];

function chunk(name: string, data: Uint8Array): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  // Nothing here looks at the check sum.
  return Buffer.concat([length, Buffer.from(name, "latin1"), data, Buffer.alloc(4)]);
}

/** A see-through PNG of these packed dots, in two pieces as large ones are. */
function picture(packed: Uint8Array, isInPasses = false): Picture {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(WIDTH, 0);
  head.writeUInt32BE(HEIGHT, 4);
  head.set([8, 6, 0, 0, isInPasses ? 1 : 0], 8);
  const data = Buffer.concat([
    Buffer.from("\u0089PNG\r\n\u001a\n", "latin1"),
    chunk("IHDR", head),
    chunk("IDAT", packed.subarray(0, 5)),
    chunk("IDAT", packed.subarray(5)),
    chunk("IEND", Buffer.alloc(0)),
  ]).toString("base64");
  const place = { x: 0, y: 0, metresPerPixel: 0.5, turnDeg: 0, opacity: 1, isPrinted: true };
  const kind = { name: "p.png", mediaType: "image/png", widthPx: WIDTH, heightPx: HEIGHT } as const;
  return { ...kind, ...place, data };
}

const LINES = HEIGHT * (1 + WIDTH * 4);
const whole = deflateSync(Buffer.alloc(LINES));
const damaged = Buffer.from(whole.map((byte, at) => (at > 4 ? byte ^ 0x5a : byte)));
/** 9 by 5 dots in Adam7's passes, counted by hand: columns of each line of each pass. */
const PASS_LINES = [2, 1, 3, 2, 2, 5, 5, 5, 4, 4, 4, 9, 9];
const passes = deflateSync(Buffer.alloc(PASS_LINES.reduce((sum, dots) => sum + 1 + dots * 4, 0)));

const folder = mkdtempSync(join(tmpdir(), "wideberth-png-"));
afterAll(() => rmSync(folder, { recursive: true }));

test.each([
  ["whole", picture(whole), null],
  ["whole, in passes", picture(passes, true), null],
  ["damaged", picture(damaged), "dots that cannot be unpacked"],
  ["cut off", picture(whole.subarray(0, -6)), "dots that cannot be unpacked"],
  ["without any dots", picture(Buffer.alloc(0)), "dots that cannot be unpacked"],
  ["too short", picture(deflateSync(Buffer.alloc(LINES - 1))), "fewer dots than it states"],
  [
    "too short, in passes",
    picture(deflateSync(Buffer.alloc(99)), true),
    "fewer dots than it states",
  ],
  [
    "packed in a way there is not",
    picture(deflateSync(Buffer.alloc(LINES, 77))),
    "lines of dots packed in a way there is not",
  ],
])("a picture that is %s", async (_, laid, fault) => {
  expect(pngFault(laid)).toBe(fault);
  if (fault === null) return;
  const plan = JSON.parse(readFileSync("sample-plots/garden-to-solve.json", "utf8")) as object;
  const file = join(folder, "plan.json");
  writeFileSync(file, JSON.stringify({ ...plan, picture: laid }));
  await expect(map([file, "-o", join(folder, "out.pdf")])).rejects.toThrow(
    `picture.data: got ${fault}, expected a whole PNG picture.`,
  );
  expect(readdirSync(folder)).toEqual(["plan.json"]);
});
