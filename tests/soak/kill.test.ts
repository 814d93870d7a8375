/** Fifty browsers killed in the middle of editing, each upon the disk of the one before. */
import { expect, test } from "vitest";
import { siteUrl } from "../browser/browser.ts";
import { killWhileEditing } from "../browser/killed-browser.ts";

test("fifty kills: always a committed plan, never older than the last one called saved", async () => {
  expect(await killWhileEditing(siteUrl(), 50, 1)).toBeGreaterThan(100);
}, 1_800_000);
