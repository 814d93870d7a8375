import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { version } from "../../src/cli/version.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";
import type { CheckReport } from "../../src/core/files/check-report.ts";
import { gardenPlan } from "../support/paper-garden.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";

const fixture = (name: string) =>
  fileURLToPath(new URL(`../fixtures/geojson/${name}.geojson`, import.meta.url));
const carrots = fixture("valid/two-carrots");

let program: BuiltProgram;
let planFile: string;

beforeAll(() => {
  program = buildProgram();
  planFile = join(program.folder, "garden.json");
  writeFileSync(planFile, writePlan(gardenPlan()));
}, 60_000);

afterAll(() => program.remove());

function json(args: readonly string[], input?: string): CheckReport {
  return JSON.parse(program.run(["check", "--json", ...args], input).stdout) as CheckReport;
}

describe("wideberth", () => {
  test("--version is the package's", () => {
    const manifest: unknown = JSON.parse(
      readFileSync(new URL("../../package.json", import.meta.url), "utf8"),
    );
    expect(manifest).toMatchObject({ version });
    expect(program.run(["--version"])).toEqual({ code: 0, stdout: `${version}\n`, stderr: "" });
  });

  test.each([[["--help"]], [["help"]], [["check", "--help"]], [["map", "-h"]]])(
    "%j says how it is used",
    (args) => {
      const { code, stdout } = program.run(args);
      expect(code).toBe(0);
      expect(stdout).toContain("wideberth check FILE");
      expect(stdout).toContain("wideberth map PLAN -o FILE");
    },
  );

  test.each([
    [[], "no command given"],
    [["plant"], 'got "plant", expected check, clear, compare'],
    [["toString"], 'got "toString", expected check, clear, compare'],
    [["check"], "FILE is missing"],
    [["check", "a", "b"], "Expected one FILE, got 2: a, b"],
    [["check", "--jsn", "a"], "Unknown option '--jsn'"],
    [["check", "--layout"], "argument missing"],
    [["map", "a"], "Say where the map goes: -o FILE"],
    [["map", "a", "-o", "b", "--paper", "B5"], 'Got paper "B5", expected A4, Letter'],
    [["map", "a", "-o", "b", "--ratio", "0"], 'Got ratio "0"'],
    [["map", "a", "-o", "b", "--ratio", "1:x"], 'Got ratio "1:x"'],
    [["map", "a", "-o", "b", "--portrait", "--landscape"], "Choose --landscape or --portrait"],
  ])("%j is refused", (args, words) => {
    const { code, stdout, stderr } = program.run(args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toContain(words);
    expect(stderr).not.toContain("fault in Wideberth");
  });
});

describe("wideberth check", () => {
  test("1 when there is a conflict, with the findings in words", () => {
    const { code, stdout, stderr } = program.run(["check", carrots]);
    expect({ code, stderr }).toEqual({ code: 1, stderr: "" });
    expect(stdout).toContain("✕ conflict: a Long Meadow is too close to b Rook Red");
    expect(stdout).toContain("Open together 32 days (1 Jul to 1 Aug).");
    // A distance of its own far below the published one is told beside it.
    expect(stdout.trimEnd().split("\n").at(-1)).toBe("1 conflict, 1 caution");
  });

  test("0 when there is none", () => {
    const far = readFileSync(carrots, "utf8").replaceAll(
      '"kind": "carrot"',
      '"kind": "carrot", "isolationM": 0',
    );
    const alone = far.replace(', "isolationM": 50', "");
    expect(program.run(["check", "-"], alone)).toMatchObject({ code: 0, stderr: "" });
  });

  test("--json is one object with pairs and findings", () => {
    const report = json([carrots]);
    expect(Object.keys(report)).toEqual([
      "file",
      "plan",
      "layout",
      "counts",
      "pairs",
      "findings",
      "accepted",
    ]);
    const [pair] = report.pairs;
    expect(pair).toMatchObject({
      seedParent: "a",
      pollenSource: "b",
      overlapDays: 32,
      gapDays: 0,
      standing: "conflict",
      relation: "freely",
      requirement: { from: "figure" },
    });
    // One ten-thousandth of a degree of longitude less than a thousandth, at 54.2 degrees north.
    expect(pair?.distanceM).toBeCloseTo(58.75, 1);
    expect(pair?.requiredM).toBeGreaterThan(58.75);
    expect(pair?.closest.lonLat?.[0]?.[0]).toBeCloseTo(-2.9099, 7);
    expect(pair?.closest.lonLat?.[1]?.[0]).toBeCloseTo(-2.909, 7);
    expect(report.findings[0]).toMatchObject({
      check: "isolation",
      severity: "conflict",
      subjects: ["a", "b"],
      title: "a Long Meadow is too close to b Rook Red",
      sentences: expect.arrayContaining([expect.stringContaining("apart, needs")]),
    });
  });

  test("--all adds the pairs that distance clears", () => {
    const near = json([carrots]).pairs.map(({ seedParent, standing }) => [seedParent, standing]);
    const all = json(["--all", carrots]).pairs.map(({ seedParent, standing }) => [
      seedParent,
      standing,
    ]);
    expect(near).toEqual([["a", "conflict"]]);
    expect(all).toEqual([
      ["a", "conflict"],
      ["b", "distance"],
    ]);
  });

  test("ids come back as the file has them", () => {
    const report = json(["--all", fixture("valid/everything")]);
    const ids = new Set(
      report.pairs.flatMap(({ seedParent, pollenSource }) => [seedParent, pollenSource]),
    );
    expect(ids.has("p1")).toBe(true);
    expect(ids.has("feature-5")).toBe(true);
    // Number 7 is the same variety as p1, and no seed parent; plot 3/b sheds nothing.
    expect(ids.has(7)).toBe(false);
    expect(ids.has("plot 3/b")).toBe(false);
  });

  test("a plan file, from a path and from stdin, with and without its layout's name", () => {
    const text = readFileSync(planFile, "utf8");
    const fromPath = json([planFile]);
    expect(fromPath.layout).toBe("Layout 1");
    expect(json(["--layout", "Layout 1", "-"], text)).toEqual({ ...fromPath, file: "stdin" });
    expect(json(["--layout", "layout-1", "-"], `\uFEFF${text}`).pairs).toEqual(fromPath.pairs);
    const wrong = program.run(["check", planFile, "--layout", "North"]);
    expect(wrong).toMatchObject({ code: 2, stdout: "" });
    expect(wrong.stderr).toContain('got layout "North", expected one of "Layout 1".');
  });

  test.each(
    readdirSync(fileURLToPath(new URL("../fixtures/geojson/invalid/", import.meta.url))).filter(
      (_, index) => index % 6 === 0,
    ),
  )("2 for %s, naming the file", (name) => {
    const path = fixture(`invalid/${name.replace(".geojson", "")}`);
    const { code, stdout, stderr } = program.run(["check", "--json", path]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr.startsWith(`${path}: `)).toBe(true);
  });

  test.each<[string, string | Uint8Array, string]>([
    ["nothing", "", "got an empty file, expected JSON text."],
    [
      "bytes that are no text",
      Uint8Array.of(0x7b, 0xff, 0x7d),
      "got bytes that are not UTF-8, expected UTF-8 text.",
    ],
    [
      "a picture",
      Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0, 0),
      "got a binary file, expected UTF-8 text.",
    ],
    ["UTF-16", Uint8Array.of(0xff, 0xfe, 0x7b, 0), "got UTF-16 text, expected UTF-8 text."],
    [
      "a newer plan",
      '{"format": "wideberth-plan", "version": 999}',
      "written by a newer Wideberth",
    ],
    ["deep nesting", "[".repeat(5000), "brackets nested deeper than 64"],
  ])("2 for %s", (_, input, words) => {
    const { code, stdout, stderr } = program.run(["check", "-"], input);
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toContain(`stdin: `);
    expect(stderr).toContain(words);
  });

  test("2 for a file that is not there, and for a folder", () => {
    expect(program.run(["check", "no-such.json"])).toEqual({
      code: 2,
      stdout: "",
      stderr: "no-such.json: there is no such file.\n",
    });
    expect(program.run(["check", program.folder]).stderr).toContain("this is a folder, not a file");
  });

  test("whoever reads the output may stop early", async () => {
    const child = spawn(process.execPath, [program.script, "check", "--json", "--all", planFile]);
    child.stdout.destroy();
    let errors = "";
    child.stderr.on("data", (chunk: Uint8Array) => {
      errors += chunk.toString();
    });
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect({ code, errors }).toEqual({ code: 1, errors: "" });
  });
});

describe("wideberth map", () => {
  test("writes a PDF and says what it wrote", () => {
    const path = join(program.folder, "map.pdf");
    const { code, stdout, stderr } = program.run([
      "map",
      planFile,
      "-o",
      path,
      "--paper",
      "letter",
      "--ratio",
      "1:200",
      "--portrait",
    ]);
    expect({ code, stdout }).toEqual({ code: 0, stdout: "" });
    expect(stderr).toBe(`${path}: 3 pages, 1:200 on Letter portrait\n`);
    const bytes = readFileSync(path);
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    expect(bytes.toString("latin1")).toContain("/MediaBox [0 0 612 792]");
  });

  test("keeps the ratio and says when it takes several sheets", () => {
    const { stderr } = program.run(["map", planFile, "-o", "wide.pdf", "--ratio", "50"]);
    expect(stderr).toMatch(
      /1:50 on A4 landscape\nThe map takes \d+ sheets; at 1:200 it goes on one\nCut by the edge of the map: tool shed\.\n$/,
    );
    const silly = program.run(["map", planFile, "-o", "silly.pdf", "--ratio", "2"]);
    expect(silly.code).toBe(2);
    expect(silly.stderr).toContain("more than 200; 1:200 would do with fewer");
  });

  test("reads stdin and GeoJSON, and writes to stdout", () => {
    const bytes = program.runForBytes(["map", "-", "-o", "-"], readFileSync(carrots, "utf8"));
    expect(Buffer.from(bytes).subarray(0, 5).toString()).toBe("%PDF-");
    expect(Buffer.from(bytes).subarray(-6).toString()).toContain("%%EOF");
  });

  test("2 when the file cannot be written", () => {
    mkdirSync(join(program.folder, "taken"));
    const { code, stderr } = program.run(["map", planFile, "-o", "taken"]);
    expect(code).toBe(2);
    expect(stderr).toContain("taken: this is a folder, not a file.");
  });
});

describe("wideberth compare", () => {
  const sample = fileURLToPath(new URL("../../sample-plots/garden-solved.json", import.meta.url));

  test("prints the measures with the better one starred, and what differs", () => {
    const { code, stdout } = program.run(["compare", sample]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Conflicts +0 \* +3$/m);
    expect(stdout).toContain("First thoughts against Solved:");
    expect(stdout).toMatch(/^ {2}B05-1 Quarry White: removed$/m);
  });

  test("--json names the better layouts, in the order asked for", () => {
    const layouts = ["--layout", "First thoughts", "--layout", "Solved"];
    const { stdout } = program.run(["compare", sample, "--json", ...layouts]);
    const report: unknown = JSON.parse(stdout);
    expect(report).toMatchObject({ layouts: ["First thoughts", "Solved"], base: "Solved" });
    expect(stdout).toContain('"best": [\n        "Solved"\n      ]');
  });

  test("--csv is a table with a column for each layout", () => {
    const { stdout } = program.run(["compare", sample, "--csv"]);
    expect(stdout.split("\r\n")[0]).toBe("Measure,Unit,Better,Solved,First thoughts");
  });

  test("--pdf writes pages to print, on stdout when asked", () => {
    const out = join(program.folder, "compared.pdf");
    const { code, stdout, stderr } = program.run(["compare", sample, "--pdf", out]);
    expect({ code, stdout }).toEqual({ code: 0, stdout: "" });
    expect(stderr).toMatch(/: 2 pages, 1:\d+ on A4\n$/);
    expect(readFileSync(out).subarray(0, 5).toString()).toBe("%PDF-");
    const args = ["compare", sample, "--overlaid", "--paper", "letter", "--pdf", "-"];
    const piped = program.run(args);
    expect(piped.stdout.slice(0, 5)).toBe("%PDF-");
    expect(piped.stderr).toContain("on Letter");
  });

  test.each([
    [["compare", carrots], "expected two or more to compare"],
    [["compare", sample, "--layout", "Elsewhere"], 'got layout "Elsewhere"'],
    [["compare", sample, "--json", "--csv"], "got more"],
    [["compare", sample, "--csv", "--pdf", "a.pdf"], "got more"],
    [["compare", sample, "--overlaid"], "go with --pdf FILE"],
    [["compare", sample, "--pdf", "a.pdf", "--paper", "B5"], 'Got paper "B5"'],
  ])("%j is refused with a reason", (args, reason) => {
    const { code, stderr } = program.run(args);
    expect(code).toBe(2);
    expect(stderr).toContain(reason);
  });
});
