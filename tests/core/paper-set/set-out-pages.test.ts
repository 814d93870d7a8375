/**
 * The set-out table as it is read off the paper: lengths taken from the PDF's text, both circles
 * solved by halving an angle, and the error held against the one the page states.
 */
import { describe, expect, test } from "vitest";
import { setOut } from "../../../src/core/fieldwork/set-out.ts";
import { shapeCorners } from "../../../src/core/geometry/outline.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { setOutPages } from "../../../src/core/paper-set/set-out-pages.ts";
import { gardenPlan, mapInput, planOf, rectangle } from "../../support/paper-garden.ts";
import { fonts, textOf } from "../../support/printed.ts";

const LENGTH = {
  m: String.raw`-?\d+\.\d{3} m`,
  ft: String.raw`-?\d+' \d+(?: \d+\/\d+)?"`,
} as const;

/** Metres that a printed length says. */
function metres(text: string): number {
  const feet = /^(\d+)' (\d+)(?: (\d+)\/(\d+))?"$/.exec(text);
  if (!feet) return Number(text.replace(" m", ""));
  const [foot = 0, inch = 0, upper = 0, lower = 1] = feet.slice(1).map((part) => Number(part ?? 0));
  return foot * 0.3048 + (inch + (upper === 0 ? 0 : upper / lower)) * 0.0254;
}

/** Metres that a stated error says: `3 mm`, `5/16"`, `1 1/2"`. */
function errorMetres(text: string): number {
  if (text.endsWith("mm")) return Number(text.replace(" mm", "")) / 1000;
  return text
    .replace('"', "")
    .split(" ")
    .map((part) => part.split("/").map(Number))
    .reduce((sum, [upper = 0, lower = 1]) => sum + (upper / lower) * 0.0254, 0);
}

/** The point at one distance from P in the direction whose distance from Q is the other. */
function meeting(fromP: number, fromQ: number, baseline: number) {
  let [low, high] = [0, Math.PI];
  for (let round = 0; round < 200; round += 1) {
    const angle = (low + high) / 2;
    const toQ = Math.hypot(fromP * Math.cos(angle) - baseline, fromP * Math.sin(angle));
    if (toQ < fromQ) low = angle;
    else high = angle;
  }
  return { x: fromP * Math.cos(low), y: fromP * Math.sin(low) };
}

const gardens = {
  "the paper garden": gardenPlan(),
  "turned beds far apart": planOf(
    {},
    [0, 37, 61.3, 118, 149.7].map((turn, index) => ({
      id: `b${index}`,
      code: `B0${index + 1}`,
      outline: rectangle(index * 17.3, 11 + ((index * 29) % 40), 1.23, 9.87 + index, turn),
    })),
    [],
  ),
} as const;

describe.each(Object.entries(gardens))("%s", (_, plan) => {
  test.each(["m", "ft"] as const)("read off the paper in %s", async (units) => {
    const input = mapInput({ ...plan, units });
    const writer = pdfWriter("", "", fonts);
    const setting = { plan: input.plan, frame: pageFrame("A4", "landscape"), stamp: "" };
    for (const page of setOutPages(input, { ...setting, ruler: writer.ruler }))
      writer.addPage(page);
    const bytes = await writer.finish();
    const laid = textOf(bytes, "-layout");
    const words = textOf(bytes).replace(/\s+/g, " ");

    const length = LENGTH[units];
    const baseline = metres(new RegExp(`stake Q exactly (${length}) apart`).exec(words)?.[1] ?? "");
    const stated = errorMetres(/lies at most (.+?) from the corner/.exec(words)?.[1] ?? "");
    const rows = [
      ...laid.matchAll(
        new RegExp(`(\\S+), (\\d+) +(${length}) +(${length}) +(${length})(?: +(${length}))?`, "g"),
      ),
    ].map(([, code = "", number, ...lengths]) => ({
      code,
      number: Number(number),
      lengths: lengths.map((each) => (each === undefined ? null : metres(each))),
    }));
    const table = setOut(input.layout, units);
    if (!table) throw new Error("no table");
    const corners = input.layout.beds.flatMap(({ code, outline }) =>
      shapeCorners(outline).map((corner, index, all) => ({ code, number: index + 1, corner, all })),
    );
    expect(rows).toHaveLength(corners.length);

    let worst = 0;
    for (const { code, number, corner, all } of corners) {
      const row = rows.find((each) => each.code === code && each.number === number);
      const [fromP, fromQ, toNext, across] = row?.lengths ?? [];
      const met = meeting(fromP ?? 0, fromQ ?? 0, baseline);
      worst = Math.max(
        worst,
        Math.hypot(table.p.x + met.x - corner.x, table.p.y + met.y - corner.y),
      );
      const next = all[number % all.length];
      const side = Math.hypot((next?.x ?? 0) - corner.x, (next?.y ?? 0) - corner.y);
      const step = units === "m" ? 0.001 : 0.0254 / 16;
      expect(Math.abs((toNext ?? 0) - side)).toBeLessThanOrEqual(step / 2 + 1e-9);
      if (number > 2 || units === "m") continue;
      const opposite = all[number + 1];
      const diagonal = Math.hypot((opposite?.x ?? 0) - corner.x, (opposite?.y ?? 0) - corner.y);
      expect(Math.abs((across ?? 0) - diagonal)).toBeLessThanOrEqual(step / 2 + 1e-9);
    }
    // The least that a tape tells which is no less than the error.
    const step = units === "m" ? 0.001 : 0.0254 / 16;
    expect(worst).toBeLessThanOrEqual(stated + 1e-9);
    expect(stated - worst).toBeLessThan(step + 1e-9);
  });
});
