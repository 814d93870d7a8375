import { describe, expect, test } from "vitest";
import { layeringFaults } from "./layering.ts";
import { sourceFiles } from "./source-files.ts";

test("imports point one way", () => {
  expect(layeringFaults(sourceFiles())).toEqual([]);
});

/** A file in every module, named after it. */
const STUBS = new Map(
  "model geometry calendar crops edits checks arrange exports"
    .split(" ")
    .map((module) => `src/core/${module}/${module}.ts`)
    .concat("src/store/store.ts", "src/canvas/canvas.ts", "src/panel/panel.ts", "src/app/app.tsx")
    .map((path) => [path, "export {};"]),
);

const faultsWith = (path: string, text: string) => layeringFaults(new Map(STUBS).set(path, text));

describe("the layering checker finds", () => {
  const ONE_WAY = "imports point one way";

  test.each([
    ["a check that uses the store", "core/checks", 'import "../../store/store.ts";', ONE_WAY],
    ["a type-only import", "core/model", 'import type { Edit } from "../edits/edits.ts";', ONE_WAY],
    ["an import() of a type", "core/model", 'type E = import("../edits/edits.ts").E;', ONE_WAY],
    ["a re-export", "core/geometry", 'export * from "../edits/edits.ts";', ONE_WAY],
    ["a lazy import", "core/edits", 'const x = import("../checks/checks.ts");', ONE_WAY],
    ["a worker", "core/edits", 'new URL("../checks/checks.ts", import.meta.url);', ONE_WAY],
    ["neighbours", "core/crops", 'import "../calendar/calendar.ts";', ONE_WAY],
    ["checks importing arrange", "core/checks", 'import "../arrange/arrange.ts";', ONE_WAY],
    ["panel importing canvas", "panel", 'import "../canvas/canvas.ts";', ONE_WAY],
    ["canvas importing panel", "canvas/tools", 'import "../../panel/panel.ts";', ONE_WAY],
    ["the store importing the app", "store", 'import "../app/app.tsx";', ONE_WAY],
    ["the command line importing the store", "cli", 'import "../store/store.ts";', ONE_WAY],
    ["core importing React", "core/checks", 'import { useState } from "react";', "only app"],
    ["core importing Node", "core/exports", 'import "node:fs";', "only cli"],
    ["Node under its bare name", "core/exports", 'import "fs/promises";', "only cli"],
    ["the PDF writer elsewhere", "store", 'import PDFDocument from "pdfkit";', "core/exports"],
    ["the database elsewhere", "panel", 'import { openDB } from "idb";', "only store"],
    ["Konva elsewhere", "panel", 'import "konva/lib/Core.js";', "only canvas"],
    ["a sample in core", "core/model", 'import "../../../sample-plots/a.json?raw";', "outside src"],
    ["a missing file", "core/model", 'import "./no-such-file.ts";', "no such file"],
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
    ["the app importing a sample", "app", 'import x from "../../sample-plots/a.json?raw";'],
    ["the app importing styles", "app", 'import "./styles.css";'],
    ["the panel importing core", "panel", 'import "../core/exports/exports.ts";'],
    [
      "the command line importing core and Node",
      "cli",
      'import "node:fs"; import "../core/edits/edits.ts";',
    ],
  ])("%s", (_, folder, text) => {
    expect(faultsWith(`src/${folder}/fine.ts`, text)).toEqual([]);
  });
});
