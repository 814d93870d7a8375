/** What axe, the accessibility checker, holds against a page. */
import axe from "axe-core";
import type { Page } from "playwright-core";

/** The rules the page breaks, each with the first element that does. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: tool } = globalThis as unknown as {
      axe: {
        run: (
          root: Document,
        ) => Promise<{ violations: readonly { id: string; nodes: readonly { html: string }[] }[] }>;
      };
    };
    const { violations } = await tool.run(document);
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
  });
}
