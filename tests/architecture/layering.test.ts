import { describe, expect, test } from "vitest";
import { FOLDERS, layeringFaults } from "./layering.ts";
import { sourceFiles } from "./source-files.ts";

test("imports point one way", () => {
  expect(layeringFaults(sourceFiles())).toEqual([]);
  // Reads all of the source: slow where much else runs.
}, 60_000);

/** A file in every folder, named after it. */
const STUBS = new Map(
  FOLDERS.map((folder) => [`src/${folder}/${folder.split("/").at(-1)}.ts`, "export {};"]),
);

const faultsWith = (path: string, text: string) => layeringFaults(new Map(STUBS).set(path, text));

describe("the layering checker finds", () => {
  const ONE_WAY = "imports point one way";

  test.each([
    ["a check that uses the store", "core/checks", 'import "../../store/plan/plan.ts";', ONE_WAY],
    ["a type-only import", "core/model", 'import type { Edit } from "../edits/edits.ts";', ONE_WAY],
    ["an import() of a type", "core/model", 'type E = import("../edits/edits.ts").E;', ONE_WAY],
    ["a re-export", "core/geometry", 'export * from "../edits/edits.ts";', ONE_WAY],
    ["a lazy import", "core/edits", 'const x = import("../checks/checks.ts");', ONE_WAY],
    ["a worker", "core/edits", 'new URL("../checks/checks.ts", import.meta.url);', ONE_WAY],
    ["neighbours", "core/kinds", 'import "../geometry/geometry.ts";', ONE_WAY],
    ["checks importing arrange", "core/checks", 'import "../arrange/arrange.ts";', ONE_WAY],
    ["panel importing canvas", "panel/beds", 'import "../../canvas/draw/draw.ts";', ONE_WAY],
    ["canvas importing panel", "canvas/tools", 'import "../../panel/beds/beds.ts";', ONE_WAY],
    ["the store importing the app", "store/plan", 'import "../../app/app.ts";', ONE_WAY],
    ["the command line importing the store", "cli", 'import "../store/plan/plan.ts";', ONE_WAY],
    ["core importing React", "core/checks", 'import { useState } from "react";', "only app"],
    ["core importing Node", "core/page", 'import "node:fs";', "only cli"],
    ["Node under its bare name", "core/page", 'import "fs/promises";', "only cli"],
    ["the PDF writer elsewhere", "store/plan", 'import PDFDocument from "pdfkit";', "core/page"],
    ["the database elsewhere", "panel/keeping", 'import { openDB } from "idb";', "only store"],
    ["Konva elsewhere", "panel/beds", 'import "konva/lib/Core.js";', "only canvas"],
    ["a sample in core", "core/model", 'import "../../../sample-plots/a.json?raw";', "outside src"],
    ["a missing file", "core/model", 'import "./no-such-file.ts";', "no such file"],
    ["two features joined", "panel/findings", 'import "../season/season.ts";', "no written edge"],
    ["a file loose in the panel", "panel", "export {};", "stands in no module"],
    ["a file in no module", "elsewhere", "export {};", "stands in no module"],
    ["a file loose in core", "core", "export {};", "stands in no module"],
  ])("%s", (_, folder, text, reason) => {
    expect(faultsWith(`src/${folder}/fault.ts`, text)).toEqual([
      expect.stringMatching(new RegExp(`^src/${folder}/fault.ts.*${reason}`)),
    ]);
  });

  test("a circle within one module, of types too", () => {
    const files = new Map([
      ["src/core/model/a.ts", 'import type { B } from "./b.ts";'],
      ["src/core/model/b.ts", 'export { c } from "./c.ts";'],
      ["src/core/model/c.ts", 'import { a } from "./a.ts";'],
    ]);
    const [a, b, c] = [...files.keys()];
    expect(layeringFaults(files)).toEqual([`import circle: ${a} -> ${b} -> ${c} -> ${a}`]);
  });
});

describe("the layering checker allows", () => {
  test.each([
    ["arrange importing checks", "core/arrange", 'import "../checks/checks.ts";'],
    ["core importing a plain package", "core/checks", 'import Flatbush from "flatbush";'],
    [
      "the window importing a sample",
      "panel/window",
      'import x from "../../../sample-plots/a.json?raw";',
    ],
    ["the app importing styles", "app", 'import "./styles.css";'],
    ["the panel importing core", "panel/paper", 'import "../../core/map/map.ts";'],
    ["a listed edge of the panel", "panel/site", 'import "../season/season.ts";'],
    [
      "the command line importing core and Node",
      "cli",
      'import "node:fs"; import "../core/edits/edits.ts";',
    ],
  ])("%s", (_, folder, text) => {
    expect(faultsWith(`src/${folder}/fine.ts`, text)).toEqual([]);
  });
});
