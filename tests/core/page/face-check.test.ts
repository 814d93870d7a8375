/** A face of the grower's own: refused for what it is not, used for what the program's own lacks. */
import { describe, expect, test } from "vitest";
import { faceFault, tryFace } from "../../../src/core/page/face-check.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { unsetNames, unsetWords } from "../../../src/core/map/unset-names.ts";
import { text } from "../../../src/core/page/scene.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { GEORGIAN, otherFace } from "../../support/other-face.ts";
import { fonts, rasterise, textOf } from "../../support/printed.ts";

const bytesOf = (words: string) => new TextEncoder().encode(words.padEnd(64));

describe("a file that is no face", () => {
  test.each([
    ["words", bytesOf("Dear grower"), "some other file"],
    ["a collection", bytesOf("ttcf"), "a collection of several faces"],
    ["packed for the web", bytesOf("wOFF"), "packed for the web (WOFF)"],
    ["packed otherwise", bytesOf("wOF2"), "packed for the web (WOFF2)"],
    ["nothing", new Uint8Array(), "some other file"],
    ["cut short", otherFace().slice(0, 5000), "cut short"],
    ["not even a directory", otherFace().slice(0, 40), "cut short"],
  ])("is refused: %s", (_, bytes, words) => {
    expect(faceFault(bytes)).toContain(words);
  });

  test("is refused when its maker does not allow it in documents", () => {
    const face = Buffer.from(otherFace());
    for (let at = 12; at < 12 + face.readUInt16BE(4) * 16; at += 16) {
      if (face.toString("latin1", at, at + 4) === "OS/2") {
        face.writeUInt16BE(2, face.readUInt32BE(at + 8) + 8);
      }
    }
    expect(faceFault(face)).toContain("does not allow");
  });

  test("is refused when it breaks while words are set with it", async () => {
    const face = otherFace();
    // Every table is there, and all they hold is rubbish.
    face.fill(0xff, 12 + 16 * Buffer.from(face).readUInt16BE(4));
    await expect(tryFace(face, fonts, [GEORGIAN])).rejects.toThrow("damaged");
  });
});

describe("a face that has what the program's own lacks", () => {
  test("is used for that, and leaves the rest as it was", async () => {
    expect(await tryFace(otherFace(), fonts, [GEORGIAN, "Old Ferry"])).toEqual([]);
    const made = async (extra?: Uint8Array) => {
      const writer = pdfWriter("Face", "", extra ? { ...fonts, extra } : fonts);
      const marks = [text({ x: 10, y: 20 }, `Old ${GEORGIAN} Ferry`, 24, { isBold: true })];
      writer.addPage({ widthMm: 100, heightMm: 40, name: "Face", marks });
      return { bytes: await writer.finish(), width: writer.ruler.width(GEORGIAN, 24) };
    };
    const [without, withIt] = [await made(), await made(otherFace())];
    expect(textOf(withIt.bytes)).toContain(`Old ${GEORGIAN} Ferry`);
    expect(textOf(without.bytes)).toContain("Old \uFFFD\uFFFD\uFFFD\uFFFD Ferry");
    expect(withIt.width).not.toBeCloseTo(without.width, 1);
    const dark = (bytes: Uint8Array) => {
      const raster = rasterise(bytes, 1);
      let count = 0;
      for (let y = 0; y < raster.height; y += 1)
        for (let x = 0; x < raster.width; x += 1) if (raster.at(x, y) < 128) count += 1;
      return count;
    };
    expect(dark(withIt.bytes)).toBeGreaterThan(1000);
  });

  test("names that cannot be set are told before printing, each once", () => {
    const plan = gardenPlan();
    const named = mapInput({
      ...plan,
      varieties: plan.varieties.map((each) =>
        each.id === "ferry" ? { ...each, name: GEORGIAN } : each,
      ),
    });
    const rulerOf = (extra?: Uint8Array) =>
      pdfWriter("", "", extra ? { ...fonts, extra } : fonts).ruler;
    expect(unsetNames(named, rulerOf())).toEqual([GEORGIAN]);
    expect(unsetWords([GEORGIAN])).toContain(
      `1 name, signs are printed in their place: "${GEORGIAN}"`,
    );
    expect(unsetNames(named, rulerOf(otherFace()))).toEqual([]);
    expect(unsetNames(mapInput(plan), rulerOf())).toEqual([]);
    expect(unsetWords([])).toBe("");
  });
});
