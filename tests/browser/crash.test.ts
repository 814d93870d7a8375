/** The browser is killed in the middle of editing. `npm run soak` does it fifty times. */
import { expect, test } from "vitest";
import { siteUrl } from "./browser.ts";
import { killWhileEditing } from "./killed-browser.ts";
import { killWhileWriting } from "./killed-record.ts";

test("after a kill the plan is one that was committed, no older than the last one called saved", async () => {
  expect(await killWhileEditing(siteUrl(), 3, 20_271)).toBeGreaterThan(3);
}, 180_000);

test("after a kill every entry that was called saved is in the record, whole and once", async () => {
  expect(await killWhileWriting(siteUrl(), 2, 20_272)).toBeGreaterThan(3);
}, 180_000);
