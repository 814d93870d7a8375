/** The picture under the drawing on paper: only when asked for, where it lies, as large as it is. */
import { expect, test } from "vitest";
import { drawingSvg } from "../../../src/core/paper-set/drawing-svg.ts";
import { allMarks, type ImageMark } from "../../../src/core/page/scene.ts";
import type { Picture } from "../../../src/core/model/plan.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import {
  PX_PER_MM,
  a4,
  darkShare,
  fonts,
  print,
  rasterise,
  scenes,
} from "../../support/printed.ts";
import { emptyPng, lyingPng } from "../../support/png.ts";
import { xmlTags } from "../../support/xml-tags.ts";

const picture: Picture = {
  name: "field.png",
  data: emptyPng(40, 20).toString("base64"),
  mediaType: "image/png",
  widthPx: 40,
  heightPx: 20,
  // Beside the beds, where nothing else is drawn.
  x: 14,
  y: 14.5,
  metresPerPixel: 0.05,
  turnDeg: 0,
  opacity: 1,
  isPrinted: true,
};

const withPicture = (changes: Partial<Picture>) =>
  mapInput({ ...gardenPlan(), picture: { ...picture, ...changes } });

function imagesOf(changes: Partial<Picture>): readonly ImageMark[] {
  return scenes(withPicture(changes), a4)
    .flatMap((page) => allMarks(page.marks))
    .filter((mark) => mark.kind === "image");
}

test("a picture is left off unless it is to be printed, is shown and can be read", () => {
  expect(imagesOf({})).toHaveLength(1);
  expect(imagesOf({ isPrinted: false })).toEqual([]);
  expect(imagesOf({ isHidden: true })).toEqual([]);
  expect(imagesOf({ data: "AAAA" })).toEqual([]);
  expect(imagesOf({ mediaType: "image/jpeg" })).toEqual([]);
});

test("a picture that would swell to more than 25 million dots is left off", () => {
  const swelling = (widthPx: number, heightPx: number) =>
    imagesOf({ data: lyingPng(emptyPng(40, 20), widthPx, heightPx).toString("base64") });
  expect(swelling(5000, 5000)).toHaveLength(1);
  expect(swelling(5001, 5000)).toEqual([]);
  expect(swelling(22_000, 22_000)).toEqual([]);
});

test("it lies true to scale, under everything, in the PDF", async () => {
  // 2 m by 1 m at 1:200 are 10 mm by 5 mm.
  const [mark] = imagesOf({});
  if (!mark) throw new Error("no picture");
  expect(mark.widthMm).toBeCloseTo(10, 9);
  expect(mark.heightMm).toBeCloseTo(5, 9);
  const blank = rasterise((await print(withPicture({ isPrinted: false }), a4)).bytes, 1);
  const inked = rasterise((await print(withPicture({}), a4)).bytes, 1);
  const { x, y } = mark.centre;
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  const [startRow, startColumn] = [y - 5, x - 10].map((mm) => Math.round(mm * PX_PER_MM));
  for (let row = startRow ?? 0; row < (y + 5) * PX_PER_MM; row += 1) {
    for (let column = startColumn ?? 0; column < (x + 10) * PX_PER_MM; column += 1) {
      if (inked.at(column, row) < 128 && blank.at(column, row) > 200) {
        [left, right] = [Math.min(left, column), Math.max(right, column)];
        [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
      }
    }
  }
  expect(left / PX_PER_MM).toBeCloseTo(x - 5, 0);
  expect(right / PX_PER_MM).toBeCloseTo(x + 5, 0);
  expect(top / PX_PER_MM).toBeCloseTo(y - 2.5, 0);
  expect(bottom / PX_PER_MM).toBeCloseTo(y + 2.5, 0);
  expect(
    darkShare(inked, { left: x - 4.9, top: y - 2.4, width: 9.8, height: 4.8 }),
  ).toBeGreaterThan(0.8);
});

test("in an SVG it is carried within the file and turned about its middle", async () => {
  const tags = xmlTags(await drawingSvg(withPicture({ turnDeg: 30 }), "2027-03-02 09:40", fonts));
  const [image, ...others] = tags.filter(({ name }) => name === "image");
  expect(others).toEqual([]);
  expect(image?.attributes.get("href")).toBe(`data:image/png;base64,${picture.data}`);
  expect(image?.attributes.get("transform")).toMatch(/^rotate\(30 /);
});
