/** `wideberth export` and the sheets that go with a map, as shipped. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { copyLayout } from "../../src/core/edits/layout-edits.ts";
import { allExports } from "../../src/core/files/all-exports.ts";
import { companionIds } from "../../src/core/map/companion-ids.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import { gardenPlan } from "../support/paper-garden.ts";
import { textOf } from "../support/printed.ts";
import { withLots } from "../support/with-lots.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

let program: BuiltProgram;
let planFile: string;

beforeAll(() => {
  program = buildProgram();
  planFile = join(program.folder, "garden.json");
  writeFileSync(
    planFile,
    writePlan(
      copyLayout("layout-1", "layout-2", "Layout 2").apply(
        withLots(gardenPlan(), (index) => `26-AB-${index}`),
      ),
    ),
  );
}, 60_000);

afterAll(() => program.remove());

const SIGNS: Readonly<Record<string, string>> = {
  pdf: "%PDF-",
  svg: "<svg ",
  geojson: "{",
  gpx: "<?xml",
  csv: "",
  ics: "BEGIN:VCALENDAR",
};

describe("wideberth export", () => {
  const made = allExports.filter(({ needs }) => needs !== "canvas");

  test.each(made.map(({ id, extension }) => [id, extension] as const))(
    "writes %s",
    (id, extension) => {
      const out = join(program.folder, `made.${extension}`);
      const ran = program.run(["export", planFile, "--format", id, "-o", out]);
      expect([ran.code, ran.stdout]).toEqual([0, ""]);
      expect(ran.stderr).toContain(out);
      const file = readFileSync(out);
      expect(file.length).toBeGreaterThan(100);
      expect(file.subarray(0, 20).toString()).toContain(SIGNS[extension] ?? "?");
    },
  );

  test("what it wrote as GeoJSON is read by check, with the same conflicts", () => {
    const geojson = program.run(["export", planFile, "--format", "geojson", "-o", "-"]);
    const counts = (args: readonly string[], input?: string) => {
      const { stdout } = program.run(["check", "--json", ...args], input);
      return (JSON.parse(stdout) as { counts: { conflict: number } }).counts.conflict;
    };
    expect(counts(["-"], geojson.stdout)).toBe(counts([planFile]));
  });

  test("the help names every format", () => {
    const { stdout } = program.run(["--help"]);
    for (const { id, title } of allExports) expect(stdout).toContain(`${id.padEnd(13)} ${title}`);
  });

  test.each([
    ["an unknown format", ["--format", "doc", "-o", "x"], "geojson"],
    ["no format", ["-o", "x"], "--format"],
    ["no place to write", ["--format", "plots"], "-o FILE"],
    ["a picture", ["--format", "png", "-o", "x"], "in the browser only"],
    [
      "a size that fits no page",
      ["--format", "stake-labels", "--size", "9", "-o", "x"],
      "a4-small",
    ],
    [
      "labels that lie on each other",
      [
        "--format",
        "stake-labels",
        "--size",
        "page=210x297 label=80x38 columns=2 rows=7 left=7 top=9 pitch=70x38",
        "-o",
        "x",
      ],
      "Pitch across: got 70 mm",
    ],
    [
      "a label the sheet has not",
      ["--format", "stake-labels", "--start", "25", "-o", "x"],
      "First label: got 25, expected 1 to 24",
    ],
    [
      "an offset past any printer's",
      ["--format", "stake-labels", "--offset", "30x0", "-o", "x"],
      "at most 20 mm",
    ],
    [
      "no number of a label",
      ["--format", "stake-labels", "--start", "0", "-o", "x"],
      "first label",
    ],
  ])("2 for %s", (_, args, words) => {
    const { code, stderr } = program.run(["export", planFile, ...args]);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
  });

  test("says which words found no room on labels too small for them", () => {
    const size = "page=210x297 label=30x12 columns=4 rows=10 left=10 top=10 pitch=40x20";
    const args = ["export", planFile, "--format", "packet-labels", "--size", size, "-o", "-"];
    const { code, stderr } = program.run(args);
    expect(code).toBe(0);
    expect(stderr).toContain("No room on the label for Amber Lantern");
  });

  test("2 for GeoJSON of a site without a position, and for labels of nothing", () => {
    const { site } = gardenPlan();
    const bare = { ...gardenPlan(), site: { name: site.name, upBearingDeg: 0 } };
    const [layout] = bare.layouts;
    const empty = { ...bare, layouts: layout ? [{ ...layout, plantings: [] }] : [] };
    const run = (format: string) =>
      program.run(["export", "-", "--format", format, "-o", "-"], writePlan(empty));
    expect(run("geojson").stderr).toContain("no longitude and latitude");
    expect(run("geojson").code).toBe(2);
    expect(run("stake-labels").stderr).toContain("nothing is planted");
    expect(run("stake-labels").code).toBe(2);
  });
});

describe("wideberth map --with", () => {
  test("adds the sheets asked for", () => {
    const bytes = program.runForBytes(["map", planFile, "-o", "-", "--with", "all"], "");
    const words = textOf(bytes);
    for (const part of ["Season calendar", "Isolation report", "Set-out table", "Bed A01"]) {
      expect(words).toContain(part);
    }
  });

  test("2 for a sheet it does not know, with those it does", () => {
    const { code, stderr } = program.run(["map", planFile, "-o", "-", "--with", "poster"]);
    expect(code).toBe(2);
    for (const id of companionIds) expect(stderr).toContain(id);
  });
});
