/** Our figures are the published ones: compared with copies of the tables they come from. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { IsolationFigure, Kind } from "../../../src/core/kinds/crop.ts";
import { type FixtureRow, fixtureRows, kindsOf } from "../../support/fixture-rows.ts";

const METRES_PER_FOOT = 0.3048;
const book = cropBook();

function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

function figureOf(kind: string, figure: string): IsolationFigure {
  const found = kindOf(kind).isolation.find((entry) => entry.id === figure);
  if (!found) throw new Error(`${kind} has no figure "${figure}"`);
  return found;
}

/** One case for each kind a row was mapped to. */
function cases(name: string): readonly (readonly [string, FixtureRow])[] {
  return fixtureRows(name).flatMap((row) => kindsOf(row).map((kind) => [kind, row] as const));
}

describe("7 CFR 201.76 Table 5", () => {
  const carried = cases("us-7cfr-201-76.tsv");

  test.each(carried)("%s: $crop, $class", (kind, row) => {
    const figure = figureOf(kind, `us-${row.class}${row.suffix}`);
    const feet = Number(row.corrected_ft || row.isolation_ft);
    expect(figure.figureClass).toBe(`us ${row.class}`);
    expect(figure.source).toBe("cfr-201-76");
    expect(figure.published).toBe(`${feet} ft`);
    expect(figure.metres).toBeCloseTo(feet * METRES_PER_FOOT, 9);
    // The table's own metres are rounded, some in the second place.
    if (row.isolation_m_printed)
      expect(Math.abs(figure.metres - Number(row.isolation_m_printed))).toBeLessThan(0.03);
  });

  test.each(carried.filter(([, row]) => row.corrected_ft))(
    "%s: the misprint of $crop is corrected with a note that gives what is printed",
    (kind, row) => {
      const { note } = figureOf(kind, `us-${row.class}`);
      expect(note).toContain(`printed ${row.isolation_ft} ft, corrected`);
    },
  );

  test("every vegetable row of the table is carried", () => {
    const left = fixtureRows("us-7cfr-201-76.tsv").filter((row) => kindsOf(row).length === 0);
    expect([...new Set(left.map((row) => row.crop?.split(",")[0]))]).toEqual([
      "Alfalfa",
      "Barley",
      "Clover",
      "Cotton",
      "Crambe",
      "Crownvetch",
      "Flatpea",
      "Grasses",
      "Lespedeza",
      "Sainfoin",
      "Sorghum",
      "Sunflower",
      "Tobacco",
      "Trefoil",
      "Triticale",
      "Vetch",
      "Wheat",
    ]);
    expect(
      left.filter((row) => /^(Barley|Sorghum|Sunflower|Tobacco|Wheat)/.test(row.crop ?? "")),
    ).toSatisfy((rows: readonly FixtureRow[]) =>
      rows.every((row) => /hybrid/.test(row.crop ?? "")),
    );
  });

  test("years of land are those of the strictest class", () => {
    const years = new Map<string, number>();
    for (const [kind, row] of carried)
      years.set(kind, Math.max(years.get(kind) ?? 0, Number(row.land_years)));
    const stated = [...years].filter(
      ([kind]) => kind !== "popcorn" && kindOf(kind).landYears !== undefined,
    );
    expect(stated.length).toBeGreaterThan(20);
    for (const [kind, most] of stated)
      expect([kind, kindOf(kind).landYears?.value]).toEqual([kind, most]);
  });
});

describe("European directives", () => {
  const stated = cases("eu-directives.tsv").flatMap(([kind, row]) =>
    (["basic", "certified"] as const).flatMap((seedClass) => {
      const metres = row[`${seedClass}_seed_m`];
      return metres ? [[kind, seedClass, metres, row] as const] : [];
    }),
  );

  test.each(stated)("%s, %s seed, %s m: $3.directive, $3.case", (kind, seedClass, metres, row) => {
    const figure = figureOf(kind, `eu-${seedClass}${row.suffix}`);
    expect(figure.figureClass).toBe(`eu ${seedClass}`);
    expect(figure.metres).toBe(Number(metres));
    expect(figure.published).toBe(`${metres} m`);
  });

  test("state both classes for nearly every row that is carried", () => {
    const rows = cases("eu-directives.tsv").length;
    expect(stated.length).toBeGreaterThan(1.5 * rows);
    expect(new Set(stated.map(([kind]) => kind)).size).toBeGreaterThan(10);
  });
});

describe("Indian certification", () => {
  test.each(cases("india-seed-certification.tsv"))("%s: $crop", (kind, row) => {
    const foundation = figureOf(kind, `india-foundation${row.suffix}`);
    const certified = figureOf(kind, `india-certified${row.suffix}`);
    expect([foundation.metres, certified.metres]).toEqual([
      Number(row.foundation_m),
      Number(row.certified_m),
    ]);
    expect([foundation.source, certified.source]).toEqual(["icar-ecourse", "icar-ecourse"]);
  });
});

describe("germination standards and seeds per gram", () => {
  const carried = cases("us-germination-and-seed-counts.tsv");

  test.each(carried)("%s: $kind", (id, row) => {
    const kind = kindOf(id);
    const percent = row.germination_pct ? Number(row.germination_pct) : undefined;
    // Of a range the smaller end is kept, so that seed is never reckoned too short.
    const count = row.seeds_per_gram ? Number(row.seeds_per_gram.split("-")[0]) : undefined;
    expect(kind.germinationPercent?.value).toBe(percent);
    expect(kind.seedsPerGram?.value).toBe(count);
  });

  test("no other kind claims a standard of these tables", () => {
    const mapped = new Set(carried.map(([kind]) => kind));
    const claims = book.kinds.filter((kind) => kind.germinationPercent ?? kind.seedsPerGram);
    expect(claims.map((kind) => kind.id).filter((id) => !mapped.has(id))).toEqual([]);
  });

  test.each(carried)("the species of %s is that of the law's list, $species", (id, row) => {
    const [genus = "", epithet = ""] = kindOf(id).species.split(" ");
    const printed = row.species ?? "";
    const names = [`${genus} ${epithet}`, `${genus.charAt(0)}. ${epithet}`, `${genus} spp.`];
    // The law's list keeps leek as a species of its own.
    const isNamed = names.some((name) => printed.includes(name)) || id === "leek";
    expect(isNamed, `${kindOf(id).species} against ${printed}`).toBe(true);
  });
});
