/** `wideberth print`: the whole set in a folder, named, never over what is there unasked. */
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { type BuiltProgram, buildProgram } from "../../support/built-program.ts";
import { GEORGIAN, otherFace } from "../../support/other-face.ts";
import { gardenPlan } from "../../support/paper-garden.ts";
import { textOf } from "../../support/printed.ts";
import { withLots } from "../../support/with-lots.ts";

let program: BuiltProgram;
const plan = withLots(gardenPlan(), (index) => `26-AB-${index}`);

beforeAll(() => {
  program = buildProgram();
  writeFileSync(join(program.folder, "garden.json"), writePlan(plan));
}, 60_000);
afterAll(() => program.remove());

const garden = () => join(program.folder, "garden.json");
const print = (folder: string, ...more: readonly string[]) =>
  program.run(["print", garden(), "-o", join(program.folder, folder), ...more]);

test("writes the whole sensible set, each file named on stderr with its pages", () => {
  const { code, stderr } = print("all");
  expect(code).toBe(0);
  const files = readdirSync(join(program.folder, "all")).toSorted();
  const kinds = files.map((name) => /-layout-1-(.*)-rev-[0-9a-z]{5}\.pdf$/.exec(name)?.[1]);
  for (const kind of ["a4-plot-map", "bed-cards", "calendar", "isolation", "sowing-list"]) {
    expect(kinds).toContain(kind);
  }
  expect(kinds).toEqual(expect.arrayContaining(["packets", "shelf-packets", "stakes"]));
  expect(kinds).not.toContain("set-out");
  for (const name of files) {
    expect(stderr).toMatch(new RegExp(`${name}: .*, \\d+ pages?`));
    expect(
      readFileSync(join(program.folder, "all", name))
        .subarray(0, 5)
        .toString(),
    ).toBe("%PDF-");
  }
  expect(stderr).toMatch(/\d+ conflicts? (is|are) open/);
});

test("is as it was where one of the files is there already, unless it is told to write over it", () => {
  expect(print("once", "--only", "stakes,calendar").code).toBe(0);
  const folder = join(program.folder, "once");
  const [first = ""] = readdirSync(folder).filter((name) => name.includes("stakes"));
  writeFileSync(join(folder, first), "kept by hand");
  const again = print("once", "--only", "stakes", "--with", "map");
  expect(again.code).toBe(2);
  expect(again.stderr).toContain(`${first}: is there already`);
  expect(again.stderr).toContain("Nothing was written");
  expect(readFileSync(join(folder, first), "utf8")).toBe("kept by hand");
  expect(readdirSync(folder)).toHaveLength(2);
  expect(print("once", "--only", "stakes", "--force").code).toBe(0);
  expect(readFileSync(join(folder, first)).subarray(0, 5).toString()).toBe("%PDF-");
});

test.each([
  ["a part there is not", ["--only", "poster"], "bed-cards"],
  ["a map of very many sheets", ["--ratio", "5"], "--many-sheets"],
  ["a stake's size there is not", ["--stake-size", "9"], "a4-small"],
])("2 and nothing written for %s", (name, args, words) => {
  const folder = name.replaceAll(" ", "-");
  const { code, stderr } = print(folder, ...args);
  expect(code).toBe(2);
  expect(stderr).toContain(words);
  expect(readdirSync(program.folder)).not.toContain(folder);
});

test("2 for a folder that is a file, and for a part there is nothing of", () => {
  writeFileSync(join(program.folder, "taken"), "");
  expect(print("taken", "--only", "map")).toMatchObject({ code: 2 });
  const bare = join(program.folder, "bare.json");
  writeFileSync(bare, writePlan(gardenPlan()));
  const { code, stderr } = program.run([
    "print",
    bare,
    "-o",
    join(program.folder, "b"),
    "--only",
    "shelf",
  ]);
  expect([code, stderr]).toEqual([2, expect.stringContaining("no lot is in stock")]);
});

describe("a name in a script the program's face lacks", () => {
  const named = () => {
    const path = join(program.folder, "named.json");
    const varieties = plan.varieties.map((each) =>
      each.id === "ferry" ? { ...each, name: GEORGIAN } : each,
    );
    writeFileSync(path, writePlan({ ...plan, varieties }));
    return path;
  };
  const stakes = (folder: string, ...more: readonly string[]) => {
    const out = join(program.folder, folder);
    const ran = program.run(["print", named(), "-o", out, "--only", "stakes", ...more]);
    const [name = ""] = ran.code === 0 ? readdirSync(out) : [];
    return { ...ran, words: name === "" ? "" : textOf(readFileSync(join(out, name))) };
  };

  test("is told, and set with a face that has it", () => {
    const without = stakes("without-face");
    expect(without.stderr).toContain(
      `no letters for 1 name, signs are printed in their place: "${GEORGIAN}"`,
    );
    expect(without.words).not.toContain(GEORGIAN);
    const face = join(program.folder, "face.ttf");
    writeFileSync(face, otherFace());
    const withIt = stakes("with-face", "--font", face);
    expect(withIt.stderr).not.toContain("no letters");
    expect(withIt.words).toContain(GEORGIAN);
  });

  test("2 for a face that is none, by its name", () => {
    const bad = join(program.folder, "letter.ttf");
    writeFileSync(bad, "Dear grower");
    const { code, stderr } = stakes("bad-face", "--font", bad);
    expect(code).toBe(2);
    expect(stderr).toContain(
      "letter.ttf: got some other file, expected a TrueType or OpenType face",
    );
    mkdirSync(join(program.folder, "folder.ttf"));
    expect(stakes("no-face", "--font", join(program.folder, "folder.ttf")).stderr).toContain(
      "a folder",
    );
  });
});
