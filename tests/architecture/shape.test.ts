/** Where files lie, what they are called and how long they are. */
import { expect, test } from "vitest";
import { filesUnder, sourceFiles, textOf, topLevelEntries } from "./source-files.ts";

const LINES_MAX = 300;
const APP_LINES_MAX = 120;
const FOLDERS_MAX = 2;
const FILES_MAX = 30;

const ourCode = [...filesUnder("src"), ...filesUnder("tests")];

test("the top level holds only what has its place there", () => {
  const files =
    /^(README\.md|DEVELOPERS\.md|LICENSE|package(-lock)?\.json|tsconfig\.json|vite\.config\.ts)$/;
  const folders = /^(src|tests|sample-plots|docs)$/;
  expect(topLevelEntries().filter((name) => !files.test(name) && !folders.test(name))).toEqual([]);
});

test("folders under src are at most two deep", () => {
  const tooDeep = filesUnder("src").filter((path) => path.split("/").length - 2 > FOLDERS_MAX);
  expect(tooDeep).toEqual([]);
});

test("no folder under src holds more files than one looks over", () => {
  const counts = new Map<string, number>();
  for (const path of filesUnder("src")) {
    const folder = path.slice(0, path.lastIndexOf("/"));
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  expect([...counts].filter(([, count]) => count > FILES_MAX)).toEqual([]);
});

test("no file or folder is a drawer for odds and ends", () => {
  const drawers = /(^|\/)(utils?|helpers?|common|misc|shared)([./]|$)/i;
  expect(ourCode.filter((path) => drawers.test(path))).toEqual([]);
});

test("no file gathers others up to pass them on", () => {
  expect(ourCode.filter((path) => /\/index\.[jt]sx?$/.test(path))).toEqual([]);
  const onlyPassOn = [...sourceFiles()].filter(([, text]) =>
    text
      .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
      .split(";")
      .every((statement) => statement.trim() === "" || /^\s*export\s[^=]*\sfrom\s/.test(statement)),
  );
  expect(onlyPassOn.map(([path]) => path)).toEqual([]);
});

test("files are named in kebab-case, components in PascalCase", () => {
  const isWellNamed = (path: string) => {
    const name = path.slice(path.lastIndexOf("/") + 1);
    return (
      /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)+$/.test(name) || /^([A-Z][a-z0-9]*)+\.tsx$/.test(name)
    );
  };
  expect(ourCode.filter((path) => !isWellNamed(path))).toEqual([]);
});

test("no source file is too long to hold in mind, data about crops aside", () => {
  const limit = (path: string) => (path.endsWith("/App.tsx") ? APP_LINES_MAX : LINES_MAX);
  const tooLong = [...sourceFiles()]
    .filter(([path]) => !path.startsWith("src/core/kinds/"))
    .map(([path, text]) => ({ path, lines: text.trimEnd().split("\n").length }))
    .filter(({ path, lines }) => lines > limit(path));
  expect(tooLong).toEqual([]);
});

test("the lock file names no package registry", () => {
  expect(textOf("package-lock.json")).not.toContain('"resolved"');
});
