/** What the build puts in place of modules: the sample of a first visit, and a remark for browsers. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { compiledOnTheWay } from "../../.config/compiled-on-the-way.ts";
import { plansRead } from "../../.config/plans-read.ts";
import { repository } from "../../.config/repository.mjs";
import { firstSample } from "../../src/app/first-sample.ts";
import { writePlan } from "../../src/core/model/read-plan.ts";

test("the built site opens the very plan that is read from the sample's file", async () => {
  const { load } = plansRead();
  const handler = typeof load === "object" ? (load.handler as () => Promise<string>) : null;
  const code = (await handler?.()) ?? "";
  const text = /JSON\.parse\((".*")\);$/s.exec(code)?.[1] ?? '"null"';
  expect(JSON.parse(JSON.parse(text) as string)).toEqual(firstSample);
  if (!firstSample.ok) throw new Error("The sample has a fault.");
  const file = readFileSync(join(repository, "sample-plots/garden-to-solve.json"), "utf8");
  expect(JSON.parse(writePlan(firstSample.value))).toMatchObject(JSON.parse(file) as object);
});

test("the remark is the first line of its chunk, and the map of its source moves with it", () => {
  const { generateBundle } = compiledOnTheWay(["base"]);
  const handler = typeof generateBundle === "object" ? generateBundle.handler : null;
  const bundle = {
    "base.js": { type: "chunk", name: "base", fileName: "base.js", code: "run();" },
    "base.js.map": { type: "asset", source: '{"version":3,"mappings":"AAAA"}' },
    "late.js": { type: "chunk", name: "late", fileName: "late.js", code: "wait();" },
  };
  (handler as unknown as (options: object, files: object) => void)({}, bundle);
  expect(bundle["base.js"].code).toBe("//# allFunctionsCalledOnLoad\nrun();");
  expect(JSON.parse(bundle["base.js.map"].source)).toEqual({ version: 3, mappings: ";AAAA" });
  expect(bundle["late.js"].code).toBe("wait();");
});
