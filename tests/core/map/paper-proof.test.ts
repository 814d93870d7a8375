/** Proof on the print itself: sheets laid over each other, and hatches told apart without colour. */
import { describe, expect, test } from "vitest";
import { hatches } from "../../../src/core/page/hatch.ts";
import { boxOf } from "../../../src/core/page/label-box.ts";
import { styles } from "../../../src/core/map/map-style.ts";
import { planSheets } from "../../../src/core/map/page-plan.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import {
  type AreaMark,
  type Page,
  type PagePoint,
  allMarks,
  area,
  boxRing,
} from "../../../src/core/page/scene.ts";
import { gardenPlan, mapInput } from "../../support/paper-garden.ts";
import {
  PX_PER_MM,
  type Raster,
  a4,
  fonts,
  print,
  rasterise,
  scenes,
} from "../../support/printed.ts";

const garden = mapInput(gardenPlan());
const { plan, layout } = garden;

describe("sheets laid over each other", () => {
  const small = { ...a4, paper: "A5", ratio: 100 } as const;
  const large = { ...a4, paper: "A3", ratio: 100 } as const;
  const tiles = planSheets(plan, layout, { paper: "A5", orientation: "landscape" }, 100);
  const whole = planSheets(plan, layout, { paper: "A3", orientation: "landscape" }, 100);
  const [window] = whole.sheets;
  if (!window) throw new Error("no sheet");

  /** Outlines drawn on the ground of a page: what is hatched, or has a pen and at least an edge of 20 mm. */
  function outlines(page: Page | undefined, widthMm?: number): readonly (readonly PagePoint[])[] {
    const group = page?.marks.find((mark) => mark.kind === "group");
    const areas = allMarks(group?.kind === "group" ? group.marks : [])
      .filter(
        (mark): mark is AreaMark =>
          // Boxes of words have the thinnest line.
          mark.kind === "area" && mark.pen !== null && mark.fill === 1 && mark.pen.widthMm > 0.2,
      )
      .filter(({ pen }) => widthMm === undefined || pen?.widthMm === widthMm);
    return areas.flatMap(({ rings }) => rings.slice(0, 1)).filter((ring) => edge(ring) > 20);
  }

  function edge(ring: readonly PagePoint[]): number {
    const [first, second] = ring;
    return first && second ? Math.hypot(second.x - first.x, second.y - first.y) : 0;
  }

  function isOnSingle(ring: readonly PagePoint[]): boolean {
    const { left, top, width, height } = whole.frame.drawing;
    const box = boxOf(ring);
    return (
      box.left <= left + width &&
      box.left + box.width >= left &&
      box.top <= top + height &&
      box.top + box.height >= top
    );
  }

  const single = scenes(garden, large)[0];
  const pages = scenes(garden, small);

  test("there is more than one, and one large one", () => {
    expect(tiles.sheets.length).toBeGreaterThan(3);
    expect(whole.sheets).toHaveLength(1);
    expect(outlines(single).length).toBeGreaterThan(15);
  });

  test("every outline lies where the single sheet has it, within 0.1 mm", () => {
    const shift = (sheet: (typeof tiles.sheets)[number]) => ({
      x:
        whole.frame.drawing.left -
        tiles.frame.drawing.left +
        (sheet.window.minX - window.window.minX) * 10,
      y:
        whole.frame.drawing.top -
        tiles.frame.drawing.top +
        (window.window.maxY - sheet.window.maxY) * 10,
    });
    const known = outlines(single);
    const seen = new Set<number>();
    tiles.sheets.forEach((sheet, index) => {
      const { x, y } = shift(sheet);
      for (const ring of outlines(pages[index])) {
        // The sheets together take in ground that the single one does not show.
        if (!isOnSingle(ring.map((corner) => ({ x: corner.x + x, y: corner.y + y })))) continue;
        const found = known.findIndex(
          (other) =>
            other.length === ring.length &&
            other.every(
              (corner, place) =>
                Math.abs(corner.x - (ring[place]?.x ?? 0) - x) < 0.1 &&
                Math.abs(corner.y - (ring[place]?.y ?? 0) - y) < 0.1,
            ),
        );
        expect(found).toBeGreaterThanOrEqual(0);
        seen.add(found);
      }
    });
    // Beds lie under plantings with the same outline: all but such twins are met.
    expect(seen.size).toBeGreaterThan(known.length * 0.8);
  });

  test("the ink is where the marks say, on every sheet, within 0.1 mm", async () => {
    const { bytes } = await print(garden, small);
    const { left, top, width, height } = tiles.frame.drawing;
    let asked = 0;
    let met = 0;
    tiles.sheets.forEach((_, index) => {
      const raster = rasterise(bytes, index + 1);
      for (const ring of outlines(pages[index], styles.seed.pen.widthMm)) {
        ring.forEach((from, place) => {
          const to = ring[(place + 1) % ring.length] as PagePoint;
          const x = from.x * 0.37 + to.x * 0.63;
          const y = from.y * 0.37 + to.y * 0.63;
          if (x < left + 1 || x > left + width - 1 || y < top + 1 || y > top + height - 1) return;
          asked += 1;
          if (isInk(raster, x, y)) met += 1;
        });
      }
    });
    expect(asked).toBeGreaterThan(15);
    // A name or a double line may lie on an edge.
    expect(met / asked).toBeGreaterThan(0.9);
  });
});

/** Whether there is ink within 0.1 mm of a place. */
function isInk(raster: Raster, x: number, y: number): boolean {
  const [column, row] = [Math.round(x * PX_PER_MM), Math.round(y * PX_PER_MM)];
  return [-1, 0, 1].some((dx) => [-1, 0, 1].some((dy) => raster.at(column + dx, row + dy) < 128));
}

describe("hatches without colour, at 150 dots an inch", () => {
  const SIDE_MM = 14;
  const PX = 150 / 25.4;
  const DIRECTIONS = [
    [1, 0],
    [0, 1],
    [1, 1],
    [1, -1],
    [2, 1],
    [1, 2],
    [2, -1],
    [1, -2],
  ] as const;

  /** Two pieces of each hatch, at places that share no phase. */
  async function pieces() {
    const writer = pdfWriter("", "", fonts);
    const at = (index: number, side: number) => ({
      left: 12 + side * 77.3,
      top: 12 + index * 21.7,
      width: SIDE_MM,
      height: SIDE_MM,
    });
    const marks = hatches.flatMap((hatch, index) =>
      [0, 1].map((side) => area(boxRing(at(index, side)), 1, { widthMm: 0.5 }, hatch)),
    );
    writer.addPage({ widthMm: 210, heightMm: 297, name: "hatches", marks });
    const raster = rasterise(await writer.finish(), 1, 150);
    return (index: number, side: number) => {
      const { left, top } = at(index, side);
      const size = Math.floor((SIDE_MM - 2) * PX);
      return Array.from({ length: size }, (_, row) =>
        Array.from({ length: size }, (__, column) => {
          const grey = raster.at(
            Math.round((left + 1) * PX) + column,
            Math.round((top + 1) * PX) + row,
          );
          return 1 - grey / 255;
        }),
      );
    };
  }

  /** How much like itself a piece is when shifted, by direction and distance, and how dark it is. */
  function texture(piece: readonly (readonly number[])[]): readonly number[] {
    const size = piece.length;
    const mean = piece.flat().reduce((sum, ink) => sum + ink, 0) / (size * size);
    const alike = DIRECTIONS.flatMap(([dx, dy]) =>
      [1, 2, 3, 4, 6, 8, 10, 12].map((step) => {
        let sum = 0;
        let count = 0;
        for (let row = 0; row < size; row += 1) {
          for (let column = 0; column < size; column += 1) {
            const other = piece[row + dy * step]?.[column + dx * step];
            if (other === undefined) continue;
            sum += ((piece[row]?.[column] ?? 0) - mean) * (other - mean);
            count += 1;
          }
        }
        return sum / count / Math.max(mean, 0.01);
      }),
    );
    return [...alike, mean * 2];
  }

  function apart(a: readonly number[], b: readonly number[]): number {
    return Math.hypot(...a.map((value, place) => value - (b[place] ?? 0)));
  }

  test.each([
    ["grey", (ink: number) => ink],
    ["black and white only", (ink: number) => (ink > 0.4 ? 1 : 0)],
  ])("are told apart in %s", async (_, shade) => {
    const piece = await pieces();
    const textures = hatches.map((__, index) =>
      [0, 1].map((side) => texture(piece(index, side).map((row) => row.map(shade)))),
    );
    const same = textures.map(([one = [], two = []]) => apart(one, two));
    hatches.forEach((hatch, index) => {
      hatches.forEach((other, place) => {
        if (place <= index) return;
        const away = apart(textures[index]?.[0] ?? [], textures[place]?.[1] ?? []);
        const own = Math.max(same[index] ?? 0, same[place] ?? 0);
        expect([`${hatch.id} and ${other.id}`, away > 1.5 * own]).toEqual([
          `${hatch.id} and ${other.id}`,
          true,
        ]);
      });
    });
  });
});
