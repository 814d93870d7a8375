/** Bed cards: every planted bed once, drawn true, with codes that the camera reads. */
import jsqr from "jsqr";
import { describe, expect, test } from "vitest";
import { readLabel } from "../../../src/core/labels/read-label.ts";
import { stakeLabels } from "../../../src/core/labels/stake-facts.ts";
import { bedAxes, reachOn } from "../../../src/core/paper-set/bed-axes.ts";
import { bedCardPages } from "../../../src/core/paper-set/bed-cards.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { orientations } from "../../../src/core/page/paper.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { type Mark, type Page, allMarks } from "../../../src/core/page/scene.ts";
import {
  day,
  mapInput,
  planOf,
  planting,
  rectangle,
  variety,
  gardenPlan,
} from "../../support/paper-garden.ts";
import { PX_PER_MM, fonts, rasterise } from "../../support/printed.ts";

const whole = gardenPlan();
const garden = mapInput({
  ...whole,
  layouts: whole.layouts.map((layout) => ({
    ...layout,
    beds: [...layout.beds, { id: "bare", code: "Z09", outline: rectangle(60, 5, 1.2, 8) }],
  })),
});

function cards(
  input = garden,
  cardsPerPage: 2 | 4 = 4,
  orientation: (typeof orientations)[number] = "landscape",
) {
  const { ruler } = pdfWriter("", "", fonts);
  const frame = pageFrame("A4", orientation);
  return bedCardPages(input, { plan: input.plan, frame, stamp: "", ruler, cardsPerPage });
}

function wordsOf(pages: readonly Page[]): readonly string[] {
  return pages.flatMap(({ marks }) =>
    allMarks(marks).flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );
}

describe.each([2, 4] as const)("%i to a page", (perPage) => {
  test.each(orientations)("%s: each planted bed has one card, no empty bed has", (orientation) => {
    const pages = cards(garden, perPage, orientation);
    const titles = wordsOf(pages).filter((words) => /^(Bed|Plot) [A-Z]\d+(-\d+)?$/.test(words));
    const planted = garden.layout.beds.filter(({ id }) =>
      garden.layout.plantings.some(({ bed }) => bed === id),
    );
    expect(planted.length).toBeLessThan(garden.layout.beds.length);
    expect(new Set(titles)).toEqual(new Set(planted.map(({ code }) => `Bed ${code}`)));
    expect(titles).toHaveLength(planted.length);
    expect(pages.length).toBeGreaterThanOrEqual(Math.ceil(planted.length / perPage));
  });
});

test("every planting's code is read by camera from the page as printed, and opens that planting", async () => {
  const pages = cards();
  const writer = pdfWriter("", "", fonts);
  for (const page of pages) writer.addPage(page);
  const bytes = await writer.finish();
  const read = pages.flatMap((page, index) => {
    const raster = rasterise(bytes, index + 1);
    return squares(page).map(({ left, top, side }) => {
      const size = Math.round(side * PX_PER_MM);
      const pixels = new Uint8ClampedArray(size * size * 4).fill(255);
      for (let row = 0; row < size; row += 1) {
        for (let column = 0; column < size; column += 1) {
          const grey = raster.at(
            Math.round(left * PX_PER_MM) + column,
            Math.round(top * PX_PER_MM) + row,
          );
          pixels.fill(grey, (row * size + column) * 4, (row * size + column) * 4 + 3);
        }
      }
      const words = jsqr(pixels, size, size)?.data ?? "";
      return readLabel(words, garden.plan, garden.layout).planting?.code;
    });
  });
  expect(read).toHaveLength(garden.layout.plantings.length);
  expect(new Set(read)).toEqual(new Set(garden.layout.plantings.map(({ code }) => code)));
});

/** Square codes lie on a white square of 14 to 22 mm without a line. */
function squares({ marks }: Page) {
  return allMarks(marks).flatMap((mark: Mark) => {
    if (mark.kind !== "area" || mark.fill !== 1 || mark.pen !== null) return [];
    const [from, , to] = mark.rings[0] ?? [];
    if (!from || !to) return [];
    const [wide, high] = [to.x - from.x, to.y - from.y];
    const isSquare = Math.abs(wide - high) < 1e-6 && wide >= 14 && wide <= 22;
    return isSquare ? [{ left: from.x, top: from.y, side: wide }] : [];
  });
}

describe("where in the bed", () => {
  // 9 m by 1.2 m, turned by 82 degrees; its near end is the western one.
  const bed = { id: "b", code: "B04", outline: rectangle(20, 10, 1.2, 9, 82) };
  const angle = (82 * Math.PI) / 180;
  const at = (along: number, lengthM: number) => {
    const middle = along + lengthM / 2 - 4.5;
    return rectangle(
      20 + middle * Math.sin(angle),
      10 + middle * Math.cos(angle),
      1.2,
      lengthM,
      82,
    );
  };
  const input = mapInput(
    planOf(
      { varieties: [variety("v", "Slatewing", "lettuce")] },
      [bed],
      [
        planting("far", "B04-1", "v", at(5, 2.5), { bed: "b", plants: 24, rows: 4 }),
        planting("near", "B04-2", "v", at(1, 2.4), { bed: "b", plants: 1 }),
      ],
    ),
  );

  test("metres are from the near end, and plantings stand in that order", () => {
    const words = wordsOf(cards(input)).join(" ");
    expect(words).toMatch(/1 m to 3\.4 m from the near\s+end/);
    expect(words).toMatch(/5 m to 7\.5 m from the near\s+end/);
    expect(words.indexOf("B04-2 Slatewing")).toBeLessThan(words.indexOf("B04-1 Slatewing"));
    // 1.2 m over four rows.
    expect(words).toMatch(/24 plants in 4 rows,\s+0\.3 m\s+apart/);
  });

  test("the drawing is true: 9 m at its ratio, near end at the left", () => {
    const [page] = cards(input);
    const words = wordsOf([page as Page]).join(" ");
    const ratio = Number(/drawn 1:(\d+)/.exec(words)?.[1]);
    const areas = allMarks(page?.marks ?? []).flatMap((mark) =>
      mark.kind === "area" && mark.pen !== null ? [mark.rings[0] ?? []] : [],
    );
    const wide = areas.map((ring) => {
      const xs = ring.map(({ x }) => x);
      return { from: Math.min(...xs), length: Math.max(...xs) - Math.min(...xs) };
    });
    const [longest] = wide.toSorted((a, b) => b.length - a.length);
    expect(longest?.length).toBeCloseTo(9000 / ratio, 6);
    const near = wide.find(({ length }) => Math.abs(length - 2400 / ratio) < 1e-6);
    expect((near?.from ?? 0) - (longest?.from ?? 0)).toBeCloseTo(1000 / ratio, 6);
  });

  test("a planting of half the width says on which side", () => {
    const axes = bedAxes(rectangle(0, 0, 1.2, 9, 0));
    const { along, across } = reachOn(axes, rectangle(0.3, -4, 0.6, 1, 0));
    expect([along.from, along.to]).toEqual([0, expect.closeTo(1, 9)]);
    expect([across.from, across.to]).toEqual([expect.closeTo(0.6, 9), expect.closeTo(1.2, 9)]);
  });
});

test("whoever takes seed is told to take it alike of so many plants", () => {
  const words = wordsOf(cards()).filter((each) => /^Take (equal )?seed from/.test(each));
  const kept = garden.result.stands.filter(
    ({ isSeedParent, planting: on }) => isSeedParent && on?.bed !== undefined,
  );
  expect(words.join(" ")).toMatch(/(each of at least|all) \d+ plants/);
  // Once for each planting kept for seed.
  expect(words).toHaveLength(kept.length);
});

test("what stands over winter is not told to be sown, and a bed that is ill says where", () => {
  const bed = { id: "b", code: "B04", outline: rectangle(0, 0, 1.2, 9) };
  const stood = (id: string, code: string, y: number, start?: string) =>
    planting(id, code, "v", rectangle(0, y, 1.2, 3), {
      bed: "b",
      stoodInto: day("2027-01-01"),
      ...(start === undefined ? {} : { start: { method: "sown", date: day(start) } }),
    });
  const plan = planOf(
    {
      varieties: [variety("v", "Grey Fold", "kale")],
      groundMarks: [
        {
          id: "m",
          outline: rectangle(0, -4, 3, 2),
          disease: "clubroot",
          seenOn: day("2025-09-01"),
        },
      ],
    },
    [bed],
    [stood("p", "B04-1", -2, "2026-06-18"), stood("q", "B04-2", 2)],
  );
  const words = wordsOf(cards(mapInput(plan))).join(" ");
  expect(words).toMatch(/Stands over winter, sown 18 Jun\s+2026/);
  expect(words.match(/Stands over winter/g)).toHaveLength(2);
  expect(words).not.toMatch(/\bSow\b/);
  expect(words).toMatch(
    /Caution: clubroot in the ground, seen 1 Sep 2025, 0 to 1\.5 m from the near\s+end/,
  );
  const stakes = stakeLabels(mapInput(plan)).map(({ lines: [first] }) => first);
  expect(stakes).toEqual(["Stands over winter, sown 18 Jun 2026", "Stands over winter"]);
});
