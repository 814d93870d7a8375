/** DEVELOPERS.md: its map names every folder of the source, its walks stay short and lead to files. */
import { expect, test } from "vitest";
import { FOLDERS } from "./layering.ts";
import { filesUnder, textOf } from "./source-files.ts";

const page = textOf("DEVELOPERS.md");

/** What stands between the heading and the next of the same depth. */
function part(heading: string): string {
  const [, text = ""] = page.split(`\n## ${heading}\n`);
  return text.split("\n## ")[0] ?? "";
}

/** `core/checks`, `app`: folders the map names, `src/` left out. */
function foldersOfMap(): readonly string[] {
  const found: string[] = [];
  let layer = "";
  for (const line of part("Module map").split("\n")) {
    const top = /^src\/([a-z]+)\//.exec(line)?.[1];
    if (top !== undefined) layer = top;
    else if (!line.startsWith("  ")) layer = "";
    if (top === "app" || top === "cli") found.push(top);
    // Folders begin the line; what explains them stands further in.
    const names = /^ {2}((?:[a-z-]+\/ ?)+)/.exec(line)?.[1] ?? "";
    if (layer !== "") {
      found.push(...[...names.matchAll(/([a-z-]+)\//g)].map(([, name]) => `${layer}/${name}`));
    }
  }
  return found;
}

test("the map names every folder of the source, and none that is gone", () => {
  expect(foldersOfMap().toSorted()).toEqual(FOLDERS.toSorted());
});

test("each of the four walks has at most ten steps", () => {
  const walks = part("Four walks").split(/^\*\*/m).slice(1);
  const steps = walks.map((walk) => [...walk.matchAll(/^\d+\. /gm)].length);
  expect(steps).toHaveLength(4);
  expect(steps.filter((count) => count < 3 || count > 10)).toEqual([]);
});

test("every file the page names exists", () => {
  const files = [...filesUnder("src"), ...filesUnder("tests"), ...filesUnder(".config")];
  const named = [...page.matchAll(/`(?!\.build)([\w./-]+\.(?:tsx?|css|mjs))`/g)].map(
    ([, name]) => name ?? "",
  );
  expect(named.length).toBeGreaterThan(30);
  const isThere = (name: string) =>
    files.some((file) => file === name || file.endsWith(`/${name}`));
  // A recipe invents a name for what is to be added.
  expect(named.filter((name) => !/my-|My/.test(name) && !isThere(name))).toEqual([]);
});
