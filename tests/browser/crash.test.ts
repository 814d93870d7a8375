/** The browser is killed in the middle of editing. `npm run soak` does it fifty times. */
import { expect, test } from "vitest";
import { siteUrl } from "./browser.ts";
import { killWhileEditing } from "./killed-browser.ts";

test("after a kill the plan is one that was committed, no older than the last one called saved", async () => {
  expect(await killWhileEditing(siteUrl(), 3, 20_271)).toBeGreaterThan(3);
}, 180_000);
