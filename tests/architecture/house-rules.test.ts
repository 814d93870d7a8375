/** Words that must not stand in what we ship. */
import { describe, expect, test } from "vitest";
import { filesUnder, textOf } from "./source-files.ts";

const TEXT_FILE = /\.(ts|tsx|mts|mjs|js|json|css|html|md|tsv|csv|geojson|yml|svg)$|\/[^.]+$/;

const lines = filesUnder("")
  .filter((path) => path !== "package-lock.json" && TEXT_FILE.test(`/${path}`))
  .flatMap((path) =>
    textOf(path)
      .split("\n")
      .map((text, index) => ({ path, text, place: `${path}:${index + 1}` })),
  );

function placesOf(pattern: RegExp, folders = /^/): readonly string[] {
  return lines
    .filter(({ path, text }) => folders.test(path) && pattern.test(text))
    .map(({ place, text }) => `${place}: ${text.trim().slice(0, 80)}`);
}

const CODE = /^(src|tests|\.config|vite\.config\.ts)/;

describe("nothing in the repository", () => {
  test.each([
    ["is a path of one machine", /(^|[\s"'`(=])\/(work|root|home|Users)\//],
    ["is the address of a package registry", /https?:\/\/[^\s"')]*(registry|artifactory|nexus)/i],
    ["is a number in somebody's list of issues", /\bissues? #?\d/i],
  ])("%s", (_, pattern) => {
    expect(placesOf(pattern)).toEqual([]);
  });
});

describe("no code", () => {
  test.each([
    ["leaves a test out", /\b(?:it|test|describe)\.(?:skip|only|todo|fixme|skipIf|runIf)\b/],
    ["silences a checker", /@ts-(?:ignore|nocheck|expect-error)|(?:eslint|oxlint)-disable/],
    ["is marked unfinished", /\b(?:TO[D]O|FIX[M]E|X[X]X)\b|not (?:yet )?implemented|coming s[o]on/],
  ])("%s", (_, pattern) => {
    expect(placesOf(pattern, CODE)).toEqual([]);
  });
});
