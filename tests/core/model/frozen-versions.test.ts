/**
 * Plan files as each version of the format wrote them, frozen: they open for ever. A new format
 * version adds a file here; the files that stand here are never changed.
 */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { PLAN_VERSION } from "../../../src/core/model/limits.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { isKnownKind } from "../../support/small-garden.ts";

/** SHA-256 of each frozen file, one for every version there has been. */
const frozen: readonly string[] = [
  "ee6d6c4f7cf23075051303a37869b0ec7278322aa91546a30f1cc199e08766f4",
  "d94cd20c27b503eeb842edb881b1fc2b7c5137ed63509137ed1070ed378d1f1f",
  "a115f7bf74651970c1c1561791ea2121d1e4001d9c632a77ce8a515d6d2e47e2",
];

test("every version of the format has its frozen file", () => {
  expect(frozen.length).toBe(PLAN_VERSION);
});

test.each(frozen.map((hash, index) => [index + 1, hash] as const))(
  "a file of version %d is untouched, opens, and reads the same once written again",
  (version, hash) => {
    const name = `frozen-version-${version}.json`;
    const text = readFileSync(new URL(`../../fixtures/plans/${name}`, import.meta.url), "utf8");
    expect(createHash("sha256").update(text).digest("hex")).toBe(hash);
    const read = readPlan(text, name, isKnownKind);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value.layouts[0]?.plantings.length).toBeGreaterThan(0);
    expect(readPlan(writePlan(read.value), name, isKnownKind)).toEqual(read);
  },
);
