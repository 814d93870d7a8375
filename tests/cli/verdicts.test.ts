/**
 * Every garden of tests/fixtures/verdicts gets the verdict a practitioner signs, on the way the
 * screen takes and from the command line. Each names its source. A garden where "clear" is right
 * is there for each sort of danger, so that nobody passes by always warning.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { check } from "../../src/cli/check.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { type BuiltProgram, buildProgram } from "../support/built-program.ts";
import { describeAsShown, givenOf } from "../support/screen-verdicts.ts";
import {
  type VerdictGarden,
  gardenPlan,
  kindNamed,
  pairsNamed,
  planText,
  verdictGardens,
} from "../support/verdict-garden.ts";
import { type Given, disagreements } from "../support/verdict-given.ts";

const gardens = verdictGardens();

const DANGERS: ReadonlySet<string> = new Set(["conflict", "caution", "unknown"]);
const CLEARS: ReadonlySet<string> = new Set(["clear", "distance", "time", "cover"]);

let program: BuiltProgram;

beforeAll(() => {
  program = buildProgram();
}, 60_000);

afterAll(() => program.remove());

function planFile(garden: VerdictGarden): string {
  const file = join(program.folder, "garden.json");
  writeFileSync(file, planText(garden));
  return file;
}

/** What `wideberth check --json --all` prints of a garden. */
async function printed(garden: VerdictGarden): Promise<Given> {
  const texts: string[] = [];
  const write = vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    texts.push(String(text));
    return true;
  });
  await check(["--json", "--all", planFile(garden)]).finally(() => write.mockRestore());
  return JSON.parse(texts.join("")) as Given;
}

describe("a practitioner would sign", () => {
  test.each(gardens.map((garden) => [garden.name, garden] as const))("%s", async (_, garden) => {
    const why = `${garden.situation} ${garden.why} (${garden.source})`;
    expect(disagreements(garden, givenOf(gardenPlan(garden), describeAsShown)), why).toEqual([]);
    expect(disagreements(garden, await printed(garden)), why).toEqual([]);
  });
});

describe("the gardens", () => {
  test("are many, and each has a name of its own", () => {
    expect(gardens.length).toBeGreaterThanOrEqual(80);
    expect(new Set(gardens.map(({ name }) => name)).size).toBe(gardens.length);
  });

  test("hold each crossing group", () => {
    const book = cropBook();
    const held = new Set(
      gardens
        .flatMap(({ plantings }) => Object.values(plantings))
        .map(({ kind }) => book.kind(kindNamed(kind))?.group),
    );
    const groups = [...new Set(book.kinds.map(({ group }) => group))];
    expect(groups.filter((group) => !held.has(group))).toEqual([]);
  });

  test("hold a danger and a clear of each crossing group, so that nobody passes by always warning", () => {
    const book = cropBook();
    const groups = [...new Set(book.kinds.map(({ group }) => group))];
    const held = (isSigned: (signed: string) => boolean) =>
      new Set(
        gardens.flatMap((garden) =>
          Object.entries(garden.verdict)
            .filter(([, signed]) => [signed].flat().every(isSigned))
            .flatMap(([key]) => pairsNamed(key))
            .map(([parent]) => book.kind(kindNamed(garden.plantings[parent]?.kind ?? ""))?.group),
        ),
      );
    const dangers = held((signed) => DANGERS.has(signed));
    const clears = held((signed) => CLEARS.has(signed));
    expect({
      withoutDanger: groups.filter((group) => !dangers.has(group)),
      withoutClear: groups.filter((group) => !clears.has(group)),
    }).toEqual({ withoutDanger: [], withoutClear: [] });
  });

  test("are judged by the program as it is shipped, one of each file", () => {
    const first = new Map([...gardens].reverse().map((garden) => [garden.file, garden]));
    for (const garden of first.values()) {
      const { stdout } = program.run(["check", "--json", "--all", planFile(garden)]);
      expect(disagreements(garden, JSON.parse(stdout) as Given), garden.name).toEqual([]);
    }
  }, 120_000);
});
