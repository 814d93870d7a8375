/** docs/figures.md is made from the crop base: `UPDATE=1 npx vitest run` writes it anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { figuresPage } from "./figures-page.ts";

const PAGE = new URL("../../../docs/figures.md", import.meta.url);

test("docs/figures.md is what the crop base makes it", () => {
  const page = figuresPage();
  if (process.env.UPDATE === "1") writeFileSync(PAGE, page);
  expect(readFileSync(PAGE, "utf8")).toBe(page);
});
