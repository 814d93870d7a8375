/** The published JSON Schema is the one plans are read by. UPDATE=1 rewrites it. */
import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { planJsonSchema } from "../../../src/core/model/read-plan.ts";
import { changedGarden } from "../../support/small-garden.ts";
import { compareFile } from "../../golden/golden-file.ts";

test("docs/plan.schema.json says what readPlan reads", () => {
  const schema = planJsonSchema() as { $schema?: string; required?: readonly string[] };
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.required).toContain("layouts");
  compareFile(
    new URL("../../../docs/plan.schema.json", import.meta.url),
    `${JSON.stringify(schema, null, 2)}\n`,
  );
});

test("the sample plans are valid by the published schema, and broken ones are not", () => {
  const schema = z.fromJSONSchema(planJsonSchema() as Parameters<typeof z.fromJSONSchema>[0]);
  const folder = new URL("../../../sample-plots/", import.meta.url);
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".json"))) {
    const plan: unknown = JSON.parse(readFileSync(new URL(file, folder), "utf8"));
    expect(schema.safeParse(plan).error?.issues).toBeUndefined();
  }
  expect(schema.safeParse(changedGarden(["level"], "royal")).success).toBe(false);
  expect(schema.safeParse(changedGarden(["season", "first"], "30 February")).success).toBe(false);
});
