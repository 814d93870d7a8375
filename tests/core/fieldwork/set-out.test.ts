/**
 * The set-out table as a helper uses it: only what is printed is known, and where two circles
 * round the stakes meet is solved another way than the program does (by halving an angle).
 */
import { describe, expect, test } from "vitest";
import { setOut, tapeText } from "../../../src/core/fieldwork/set-out.ts";
import { type LengthUnit, parseLength } from "../../../src/core/model/length.ts";
import { planOf, rectangle } from "../../support/paper-garden.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

/** Metres that a printed length says. */
function printed(metres: number, unit: LengthUnit): number {
  const text = tapeText(metres, unit);
  const feet = /^(\d+)' (\d+)(?: (\d+)\/(\d+))?"$/.exec(text);
  if (feet) {
    const [foot = 0, inch = 0, upper = 0, lower = 1] = feet
      .slice(1)
      .map((part) => Number(part ?? 0));
    return foot * 0.3048 + (inch + (upper === 0 ? 0 : upper / lower)) * 0.0254;
  }
  const read = parseLength(text, "m");
  if (!read.ok) throw new Error(`${text}: ${read.reason}`);
  return read.metres;
}

/** The point at fromA from A, in the direction whose distance from B is fromB: found by halving. */
function meeting(fromA: number, fromB: number, baseline: number) {
  let [low, high] = [0, Math.PI];
  for (let round = 0; round < 200; round += 1) {
    const angle = (low + high) / 2;
    const toB = Math.hypot(fromA * Math.cos(angle) - baseline, fromA * Math.sin(angle));
    if (toB < fromB) low = angle;
    else high = angle;
  }
  return { x: fromA * Math.cos(low), y: fromA * Math.sin(low) };
}

describe.each(["m", "ft"] as const)("set-out in %s", (unit) => {
  test("states an error no smaller than the tapes as printed make, and below a centimetre", () => {
    for (let seed = 1; seed <= 400; seed += 1) {
      const numbers = seededRandom(seed);
      const random = () => numbers.next();
      const beds = Array.from({ length: 1 + Math.floor(random() * 4) }, (_, index) => ({
        id: `b${index}`,
        code: `B${index}`,
        outline: rectangle(
          random() * 120 - 60,
          random() * 120 - 60,
          0.3 + random() * 30,
          0.3 + random() * 30,
          random() * 360 - 180,
        ),
      }));
      const [layout] = planOf({}, beds, []).layouts;
      const table = layout && setOut(layout, unit);
      if (!table) throw new Error("no table");
      const baseline = printed(table.baselineM, unit);
      expect(Math.abs(baseline - table.baselineM), `seed ${seed}`).toBeLessThan(1e-9);
      let worst = 0;
      for (const { x, y, fromP, fromQ } of table.corners) {
        const met = meeting(printed(fromP, unit), printed(fromQ, unit), baseline);
        worst = Math.max(worst, Math.hypot(met.x - x, met.y - y));
      }
      expect(Math.abs(worst - table.worstM), `seed ${seed}`).toBeLessThan(1e-7);
      expect(table.worstM, `seed ${seed}`).toBeLessThan(0.01);
    }
  });
});

test("feet are read off to the sixteenth of an inch, as tapes are marked", () => {
  expect(tapeText(3.81, "ft")).toBe(`12' 6"`);
  expect(tapeText(3.81 + 0.0254 * (5 / 16), "ft")).toBe(`12' 6 5/16"`);
  expect(tapeText(0.3048 - 0.0003, "ft")).toBe(`1' 0"`);
  expect(tapeText(-0.0254 / 2, "ft")).toBe(`-0' 0 1/2"`);
  expect(tapeText(12.3456, "m")).toBe("12.346 m");
});
