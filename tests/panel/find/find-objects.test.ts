import { describe, expect, test, vi } from "vitest";
import { foundCommands } from "../../../src/panel/commands/command-search.ts";
import { objectNames } from "../../../src/core/model/object-names.ts";
import { alike, newIds } from "../../../src/panel/state/chosen-objects.ts";
import { allCommands, commandById } from "../../../src/panel/window/all-commands.ts";
import { findObjects } from "../../../src/panel/find/find-objects.ts";
import { objectMenuIds, sheetMenuIds } from "../../../src/panel/window/object-menu-items.ts";
import { bedAt, book, plantingAt, rectangle, smallPlan } from "../../support/small-plan.ts";

// The theme is read when its module is loaded, before anything of a test runs.
vi.hoisted(() => {
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => undefined }));
  vi.stubGlobal("document", { documentElement: { dataset: {} } });
});

const made = smallPlan([
  plantingAt(1, 0, { bed: "bed-1", note: "Seed from the big Ärmel plant" }),
  plantingAt(2, 3, { bed: "bed-2" }),
]);
const plan = {
  ...made.plan,
  surroundings: [
    {
      id: "s1",
      label: "Old Ferry road",
      what: "path" as const,
      outline: rectangle(9, 0),
      flowering: "yes" as const,
      cover: "none" as const,
    },
  ],
  layouts: [
    made.layout,
    { id: "layout-2", name: "Second", beds: [bedAt(7, 0)], plantings: [plantingAt(2, 0)] },
  ],
};
const { layout } = made;
const found = (text: string) =>
  findObjects(plan, book, "layout-1", text).map(({ name, elsewhere }) =>
    elsewhere === null ? name : `${name} in ${elsewhere}`,
  );

describe("finding", () => {
  test("by code, the exact one first, other layouts last", () => {
    expect(found("b01")).toEqual(["B01", "B01-1", "B01-2", "B01-2 in Second"]);
  });
  test("by variety and by name of surroundings", () => {
    expect(found("old ferry")).toEqual(["Old Ferry road", "B01-2", "B01-2 in Second"]);
  });
  test("by kind", () => {
    expect(found("tomato")).toEqual(["B01-1", "B01-2", "B01-2 in Second"]);
  });
  test("by a word of a note, whatever marks its letters carry", () => {
    const [match] = findObjects(plan, book, "layout-1", "armel");
    expect(match).toMatchObject({ name: "B01-1" });
    expect(match?.about).toContain("Ärmel");
  });
  test("nothing for nothing", () => {
    expect(found("  ")).toEqual([]);
    expect(found("zebra")).toEqual([]);
  });
});

describe("the search for commands", () => {
  const ids = (query: string) => foundCommands(allCommands, query).map(({ id }) => id);
  test("puts a name that begins with the word first", () => {
    expect(ids("lock")[0]).toBe("lock");
    expect(ids("PASTE")[0]).toBe("paste");
  });
  test("knows other words for a thing, and takes several in any order", () => {
    expect(ids("distribute")).toContain("line-up");
    expect(ids("gaps equal")).toEqual(["spread-across", "spread-along"]);
  });
  test("finds nothing for nonsense, everything for nothing", () => {
    expect(ids("xqz")).toEqual([]);
    expect(ids("")).toHaveLength(allCommands.length);
  });
});

test("menus offer only commands there are", () => {
  const shown = [
    ...sheetMenuIds,
    ...objectMenuIds(plan, layout, ["bed-1"]),
    ...objectMenuIds(plan, layout, ["planting-1", "s1"]),
  ].flat();
  for (const id of shown) expect(commandById(id).id).toBe(id);
});

describe("chosen objects", () => {
  test("are named for undo", () => {
    expect(objectNames(plan, layout, ["bed-1"])).toBe("bed B01");
    expect(objectNames(plan, layout, ["bed-1", "bed-2"])).toBe("2 beds");
    expect(objectNames(plan, layout, ["bed-1", "s1"])).toBe("2 objects");
  });
  test("know what is like them", () => {
    expect(alike(plan, layout, ["planting-1"], "kind")).toEqual(["planting-1", "planting-2"]);
    expect(alike(plan, layout, ["planting-1"], "variety")).toEqual(["planting-1"]);
    expect(alike(plan, layout, ["bed-2"], "bed")).toEqual(["planting-2"]);
    expect(alike(plan, layout, ["bed-2"], "kind")).toEqual(["bed-1", "bed-2"]);
  });
  test("that are new are told from the old, plantings of a new bed left out", () => {
    const more = {
      ...layout,
      beds: [...layout.beds, bedAt(3, 9)],
      plantings: [...layout.plantings, plantingAt(8, 9, { bed: "bed-3" }), plantingAt(9, 20)],
    };
    const after = { ...plan, layouts: [more, ...plan.layouts.slice(1)] };
    expect(newIds(plan, after, "layout-1")).toEqual(["bed-3", "planting-9"]);
  });
});
