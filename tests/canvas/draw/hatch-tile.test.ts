import { describe, expect, test } from "vitest";
import { TILE_PX, type TileStroke, hatchTile } from "../../../src/canvas/draw/hatch-tile.ts";
import { hatches } from "../../../src/core/page/hatch.ts";

/** Whether a line runs through a place. */
function meets({ from, to }: TileStroke, x: number, y: number): boolean {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const away = Math.abs((to.x - from.x) * (from.y - y) - (from.x - x) * (to.y - from.y)) / length;
  const along = ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / length;
  return away < 0.25 && along >= -0.25 && along <= length + 0.25;
}

describe.each(hatches.map((hatch) => [hatch.id, hatch] as const))("the tile of %s", (_, hatch) => {
  const { strokes, marks } = hatchTile(hatch);

  test("shows the same at opposite edges", () => {
    const inked = (x: number, y: number) => strokes.some((line) => meets(line, x, y));
    for (let step = 0; step < TILE_PX; step += 3) {
      expect(inked(step, 0)).toBe(inked(step, TILE_PX));
      expect(inked(0, step)).toBe(inked(TILE_PX, step));
    }
    const places = new Set(marks.map(({ at }) => `${at.x.toFixed(3)} ${at.y.toFixed(3)}`));
    for (const { at } of marks.filter((mark) => Math.abs(mark.at.x) < 1e-9 && mark.at.y >= 0)) {
      expect(places).toContain(`${TILE_PX.toFixed(3)} ${at.y.toFixed(3)}`);
    }
  });

  test("keeps the spacing to within a twentieth", () => {
    for (const { spacing, angleDeg } of hatch.lines) {
      const angle = (angleDeg * Math.PI) / 180;
      const across = { x: Math.sin(angle), y: Math.cos(angle) };
      const places = strokes
        .filter(({ from, to }) => {
          const run = { x: to.x - from.x, y: to.y - from.y };
          return Math.abs(run.x * across.x + run.y * across.y) < Math.hypot(run.x, run.y) * 0.05;
        })
        .map(({ from, to }) => ((from.x + to.x) * across.x + (from.y + to.y) * across.y) / 2)
        .sort((a, b) => a - b)
        // The dashes of one line are at the same place across it.
        .filter((at, index, all) => index === 0 || at - (all[index - 1] as number) > 0.25);
      const gaps = places.slice(1).map((at, index) => at - (places[index] as number));
      expect(gaps.length).toBeGreaterThan(10);
      for (const gap of gaps) expect(Math.abs(gap / spacing - 1)).toBeLessThan(0.05);
    }
  });
});

test("every hatch draws something", () => {
  for (const hatch of hatches) {
    const { strokes, marks } = hatchTile(hatch);
    expect(strokes.length + marks.length).toBeGreaterThan(10);
  }
});
