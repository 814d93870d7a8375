/**
 * Words of a file, a clipboard or a keyboard are looked up in a Map or as own property: in a plain
 * object "constructor" finds what every object has, and `"cover": "constructor"` once passed.
 */
import { expect, test } from "vitest";
import { filesUnder, textOf } from "./source-files.ts";

/** An object literal typed as a table of any text, or a table of words made into an index. */
const OPEN_TABLE = /:\s*(?:Readonly<)?Record<string,[^=;]*=\s*\{\s*\n\s*\S/g;

test("no table of words is a plain object", () => {
  const tables = filesUnder("src")
    .filter((path) => /\.tsx?$/.test(path))
    .flatMap((path) =>
      [...textOf(path).matchAll(OPEN_TABLE)].map(({ 0: text }) => `${path}${text}`),
    );
  expect(tables).toEqual([]);
});
