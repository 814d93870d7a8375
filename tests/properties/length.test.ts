import * as fc from "fast-check";
import { expect, test, vi } from "vitest";
import {
  type LengthUnit,
  formatDistance,
  formatLength,
  formatMeasured,
  parseLength,
} from "../../src/core/model/length.ts";
import { DISTANCE_TOLERANCE_M } from "../../src/core/checks/isolation-pair.ts";

vi.setConfig({ testTimeout: 60_000 });

const metres = fc.double({ min: 0, max: 9000, noNaN: true });
const unit = fc.constantFrom<LengthUnit>("m", "ft");
/** Half of the last shown step, metres: half a centimetre, an eighth of an inch. */
const STEP: Readonly<Record<LengthUnit, number>> = { m: 0.005, ft: 0.0254 / 8 };

function metresOf(text: string, shownIn: LengthUnit, canBeNegative = false): number {
  const parsed = parseLength(text, shownIn, canBeNegative);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.reason}`);
  return parsed.metres;
}

test("a shown length reads back as what was shown, and shows the same again", () => {
  fc.assert(
    fc.property(metres, unit, fc.boolean(), (length, shownIn, isNegative) => {
      const signed = isNegative ? -length : length;
      const text = formatLength(signed, shownIn);
      const back = metresOf(text, shownIn, true);
      expect(Math.abs(back - signed)).toBeLessThanOrEqual(STEP[shownIn] + 1e-9);
      expect(formatLength(back, shownIn)).toBe(text);
      // The unit in the text wins over the plan's unit.
      expect(metresOf(text, shownIn === "m" ? "ft" : "m", true)).toBe(back);
    }),
  );
});

test("a shown distance reads back within its rounding", () => {
  fc.assert(
    fc.property(metres, unit, (length, shownIn) => {
      const step = (length >= 25 ? 0.5 : 0.05) + 1e-9;
      expect(Math.abs(metresOf(formatDistance(length, shownIn), shownIn) - length)).toBeLessThan(
        step,
      );
    }),
  );
});

const requirement = fc.oneof(
  fc.constantFrom(0.5, 3.048, 7.62, 9.144, 152.4, 201.168, 500, 1000),
  fc.double({ min: 0.01, max: 5000, noNaN: true }),
);
/** Distances near the requirement, where rounding could tell a lie, and anywhere. */
const measuredOf = (required: number) =>
  fc.oneof(
    fc.double({ min: 0, max: 2 * required, noNaN: true }),
    fc
      .tuple(fc.double({ min: -9, max: 0, noNaN: true }), fc.constantFrom(-1, 1))
      .map(([power, side]) => Math.max(0, required + side * 10 ** power)),
  );

test("shown numbers never contradict the verdict", () => {
  fc.assert(
    fc.property(
      requirement.chain((required) => fc.tuple(fc.constant(required), measuredOf(required))),
      unit,
      ([required, measured], shownIn) => {
        const isShort = measured < required - DISTANCE_TOLERANCE_M;
        const shown = formatMeasured(measured, required, isShort, shownIn);
        const read = (text: string) => metresOf(text.replace("just under ", ""), shownIn);
        const [left, right] = [read(shown.measured), read(shown.required)];
        const isUnder = shown.measured.startsWith("just under ");
        expect(isUnder || left < right).toBe(isShort);
        // What falls short is never shown longer than it is.
        if (isShort && !isUnder) expect(left).toBeLessThanOrEqual(measured + 1e-8);
        // Tenths of a metre, from 100 m up whole metres; inches, and whole feet from 100 feet up.
        const isWhole = shownIn === "m" && required >= 99.95;
        const inMetres = isWhole ? 1 : 0.1;
        const step = shownIn === "m" ? inMetres : required >= 30.48 ? 0.3048 : 0.0254;
        expect(Math.abs(left - measured)).toBeLessThan(step * 1.1);
        expect(Math.abs(right - required)).toBeLessThan(step * (isWhole ? 1 : 0.51));
      },
    ),
    { numRuns: 5000 },
  );
});

test("any text is read or refused with a reason, and never as something that is no length", () => {
  const scraps = fc.constantFrom(
    "1",
    "12",
    ".",
    ",",
    "'",
    '"',
    "ft",
    "in",
    "m",
    " ",
    "/",
    "-",
    "e",
    "½",
    "′",
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(scraps, { maxLength: 8 }).map((parts) => parts.join("")),
      ),
      (text) => {
        const parsed = parseLength(text, "m");
        if (parsed.ok) {
          expect(parsed.metres).toBeGreaterThanOrEqual(0);
          expect(parsed.metres).toBeLessThanOrEqual(100_000);
        } else expect(parsed.reason.length).toBeGreaterThan(10);
      },
    ),
    { numRuns: 5000 },
  );
});
