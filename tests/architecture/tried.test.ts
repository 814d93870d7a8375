/**
 * Where the tests of a file of core are. A file is found by one of: a test of its name, a test that
 * imports it or a file that imports it, or tests in the folder of its name that import a file of
 * its folder which leads to it. What is tried only as part of something larger stands in a list
 * with the tests that do it.
 */
import { dirname, join, normalize } from "node:path/posix";
import { describe, expect, test } from "vitest";
import { importsOf } from "./imports.ts";
import { filesUnder, textOf } from "./source-files.ts";

/** Parts of whole documents and reports: what is tried is what comes out. */
const TRIED_WITHIN: Readonly<Record<string, readonly string[]>> = {
  "src/core/ground": ["tests/core/ground/volunteers.test.ts", "tests/core/ground/rotation.test.ts"],
  "src/core/map": ["tests/core/paper-set/plot-map.test.ts", "tests/core/map/paper-proof.test.ts"],
  "src/core/page/panel-fill.ts": ["tests/core/map/map-panel.test.ts"],
  "src/core/page/qr-marks.ts": ["tests/core/labels/stake-labels.test.ts"],
  "src/core/page/svg-writer.ts": ["tests/core/paper-set/svg.test.ts"],
  "src/core/page/table-flow.ts": ["tests/core/paper-set/sowing-pages.test.ts"],
};

/** Tried through the command that is built from it. */
const TRIED_AS_COMMANDS: Readonly<Record<string, string>> = {
  "src/core/exchange/register.ts": "tests/cli/register.test.ts",
  "src/core/exchange/shelf-report.ts": "tests/cli/lots.test.ts",
  "src/core/exchange/years-report.ts": "tests/cli/years.test.ts",
  "src/core/record/doubt-words.ts": "tests/cli/record.test.ts",
  "src/core/record/field-words.ts": "tests/cli/record.test.ts",
  "src/core/record/merge-plans.ts": "tests/cli/record.test.ts",
  "src/core/record/merge-sides.ts": "tests/cli/record.test.ts",
};

const sources = filesUnder("src/core").filter((path) => /^(?!.*\.d\.ts$).*\.ts$/.test(path));
const tests = filesUnder("tests").filter((path) => path.endsWith(".ts"));
const edges: ReadonlyMap<string, readonly string[]> = new Map(
  [...sources, ...tests].map((path) => [path, targetsOf(path)] as const),
);

function targetsOf(path: string): readonly string[] {
  return importsOf(path, textOf(path)).all.flatMap((name) =>
    name.startsWith(".") && name.endsWith(".ts") ? [normalize(join(dirname(path), name))] : [],
  );
}

/** All that is run from these files, going on only from files that `goesOn`. */
function reached(
  from: readonly string[],
  goesOn: (path: string) => boolean = () => true,
): ReadonlySet<string> {
  const found = new Set(from);
  for (const path of found) {
    if (!from.includes(path) && !goesOn(path)) continue;
    for (const target of edges.get(path) ?? []) found.add(target);
  }
  return found;
}

const importedBy = (paths: Iterable<string>) =>
  new Set([...paths].flatMap((path) => edges.get(path) ?? []));
/** What tests import, and what that imports. */
const direct = importedBy(tests);
const imported = new Set([...direct, ...importedBy(direct)]);

/** Files of a folder that the tests in the folder of its name lead to, without leaving it. */
function triedInFolder(folder: string): ReadonlySet<string> {
  const own = tests.filter((path) => dirname(path) === folder.replace("src/", "tests/"));
  return reached(own, (path) => dirname(path) === folder);
}

describe.each([...new Set(sources.map((path) => dirname(path)))])("%s", (folder) => {
  test("has tests that name or lead to each of its files", () => {
    const tried = triedInFolder(folder);
    const own = sources.filter((path) => dirname(path) === folder);
    const untried = own.filter(
      (path) =>
        !tried.has(path) &&
        !imported.has(path) &&
        !tests.includes(path.replace("src/", "tests/").replace(/\.ts$/, ".test.ts")) &&
        !(path in TRIED_AS_COMMANDS) &&
        !reached(TRIED_WITHIN[path] ?? TRIED_WITHIN[folder] ?? []).has(path),
    );
    expect(own.length).toBeGreaterThan(0);
    expect(untried, "give each a test of its name, or list what tries it as a whole").toEqual([]);
  });
});

test("the lists of what is tried within something larger are true", () => {
  for (const list of Object.values(TRIED_WITHIN))
    expect(tests).toEqual(expect.arrayContaining([...list]));
  for (const [path, by] of Object.entries(TRIED_AS_COMMANDS)) {
    expect(sources).toContain(path);
    expect(tests).toContain(by);
  }
});
