/** What axe, the accessibility checker, holds against a page. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Ids of the rules the page breaks. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: tool } = globalThis as unknown as {
      axe: { run: (root: Document) => Promise<{ violations: readonly { id: string }[] }> };
    };
    return (await tool.run(document)).violations.map(({ id }) => id);
  });
}
