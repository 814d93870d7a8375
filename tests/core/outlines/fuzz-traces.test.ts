/** Damaged files of outlines: read whole or refused in words, and never a broken plan. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import {
  importOutlines,
  importProblems,
  placedTraces,
} from "../../../src/core/outlines/import-outlines.ts";
import { rolesFor } from "../../../src/core/outlines/place-trace.ts";
import { readTraces } from "../../../src/core/outlines/read-traces.ts";
import { xmlElements } from "../../../src/core/formats/xml-elements.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { xmlText } from "../../../src/core/formats/xml-text.ts";
import { LAYOUT, littlePlan } from "../../support/little-plan.ts";

const GPX = `<?xml version="1.0"?><gpx><metadata/><trk><name>A &amp; B</name><trkseg>
<trkpt lat="50.1" lon="7.2"/><trkpt lat="50.1001" lon="7.2"/><trkpt lat="50.1001" lon="7.2002"/>
</trkseg></trk><rte><rtept lat="50.1" lon="7.2"/></rte><wpt lat="50.1" lon="7.2"><name>x</name></wpt></gpx>`;
const GEOJSON = JSON.stringify({
  type: "Feature",
  properties: { name: "Field" },
  geometry: {
    type: "Polygon",
    coordinates: [
      [
        [7.2, 50.1],
        [7.2002, 50.1],
        [7.2002, 50.1001],
        [7.2, 50.1],
      ],
    ],
  },
});

const files = fc.constantFrom(GPX, GEOJSON);

test("files with anything put or taken out anywhere are read whole or refused with words", () => {
  fc.assert(
    fc.property(
      files,
      fc.nat(),
      fc.nat(12),
      fc.oneof(
        fc.string({ maxLength: 6 }),
        fc.constantFrom("<", ">", "&#0;", "-1e9", '"', "[[", "}"),
      ),
      (file, place, length, put) => {
        const at = place % file.length;
        const read = readTraces(file.slice(0, at) + put + file.slice(at + length), "file");
        if (read.ok) {
          for (const trace of read.value) {
            for (const { longitude, latitude } of trace.places) {
              expect(Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90).toBe(true);
            }
          }
        } else expect(read.problems[0]?.expected).not.toBe("");
      },
    ),
    { numRuns: 3000 },
  );
});

test("whatever is walked and chosen, what is taken makes a valid plan", () => {
  const degree = (middle: number) =>
    fc.integer({ min: -40, max: 40 }).map((step) => middle + step * 1e-5);
  const places = fc.array(fc.tuple(degree(50), degree(7)), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(
      fc.array(places, { minLength: 1, maxLength: 4 }),
      fc.infiniteStream(fc.nat()),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (walks, picks, toleranceM) => {
        const segments = walks.map(
          (walk) =>
            `<trkseg>${walk.map(([lat, lon]) => `<trkpt lat="${lat}" lon="${lon}"/>`).join("")}</trkseg>`,
        );
        const read = readTraces(`<gpx><trk>${segments.join("")}</trk></gpx>`, "walk.gpx");
        if (!read.ok) throw new Error("refused");
        const choiceOf = (trace: (typeof read.value)[number]) => {
          const roles = rolesFor(trace.sort);
          const pick = Number(picks.next().value) % roles.length;
          return { role: roles[pick] ?? "skip", widthM: 1.5 } as const;
        };
        const imported = placedTraces(littlePlan, read.value, choiceOf, toleranceM);
        if (importProblems(littlePlan, imported).length > 0) return;
        const plan = importOutlines(LAYOUT, read.value, imported, "walk.gpx").apply(littlePlan);
        const back = readPlan(writePlan(plan), "walk.json", () => true);
        expect(back.ok ? [] : back.problems).toEqual([]);
      },
    ),
    { numRuns: 500 },
  );
});

test("any text written into XML comes back as it was", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), (text) => {
      const kept = xmlText(text);
      const read = xmlElements(`<a b="${kept}">${kept}</a>`);
      if (!read.ok) throw new Error(read.reason);
      expect(read.root.text).toBe(read.root.attributes.get("b"));
      expect(xmlText(read.root.text)).toBe(kept);
    }),
  );
});
