/** The build fails when a part of the site is heavier than its budget. */
import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Budgets, chunkBudget, weightFaults } from "../../.config/chunk-budget.ts";

const generous: Budgets = { entry: "page", firstLoadKib: 100, otherKib: 100, filesKib: {} };
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wideberth-weight-"));
  // Three quarters of it stay when it is zipped: about 15 KiB.
  const text = randomBytes(15_000).toString("base64");
  writeFileSync(join(folder, "page.js"), 'import("./late.js"); console.log("page");');
  writeFileSync(join(folder, "late.js"), `console.log(${JSON.stringify(text)});`);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function built(budgets: Budgets) {
  return build({
    configFile: false,
    root: folder,
    logLevel: "silent",
    plugins: [chunkBudget(budgets)],
    build: {
      write: false,
      modulePreload: false,
      rolldownOptions: { input: { page: join(folder, "page.js") } },
    },
  });
}

test("a build within its budgets passes", async () => {
  await expect(built(generous)).resolves.toBeDefined();
});

test("a build with a part over its budget fails and names it with its weight", async () => {
  await expect(built({ ...generous, filesKib: { late: 5 } })).rejects.toThrow(
    /late weighs 1[45]\.\d KiB gzipped, at most 5/,
  );
});

test("the first load counts what the entry cannot run without, and nothing that comes later", () => {
  const code = randomBytes(2048).toString("latin1");
  const part = { code, isEntry: false, imports: [] };
  const files = [
    { ...part, fileName: "page.js", name: "page", isEntry: true, imports: ["a.js"] },
    { ...part, fileName: "a.js", name: "a", imports: ["b.js"] },
    { ...part, fileName: "b.js", name: "b", imports: ["a.js"] },
    { ...part, fileName: "late.js", name: "late" },
  ];
  expect(weightFaults(files, generous)).toEqual([]);
  expect(weightFaults(files, { ...generous, firstLoadKib: 3 })).toEqual([
    expect.stringMatching(/^the first load weighs \d\.\d KiB gzipped in 3 files, at most 3$/),
  ]);
  const opening = { ...generous, opened: "late" };
  expect(weightFaults(files, opening)).toEqual([]);
  expect(weightFaults(files, { ...opening, firstLoadKib: 3 })).toEqual([
    expect.stringMatching(/^the first load weighs \d\.\d KiB gzipped in 4 files, at most 3$/),
  ]);
  expect(weightFaults(files, { ...generous, opened: "gone" })).toEqual([
    "there are 0 files gone to weigh, not one",
  ]);
});
