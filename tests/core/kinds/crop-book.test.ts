/** Finding kinds by what people call them, and a plan's own kinds. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";

const book = cropBook();

describe("find", () => {
  test.each([
    ["tomato", "tomato"],
    ["  TOMATO ", "tomato"],
    ["tomatoes", "tomato"],
    ["Solanum lycopersicum", "tomato"],
    ["summer-squash", "summer-squash"],
    ["Summer  squash", "summer-squash"],
    ["zucchini", "summer-squash"],
    ["courgettes", "summer-squash"],
    ["corn", "maize"],
    ["sweet corn", "sweet-corn"],
    ["radishes", "radish"],
    ["leaves of grass", undefined],
    ["peas", "pea"],
    ["beans", "common-bean"],
    ["pepper", "pepper"],
    ["chillies", "hot-pepper"],
    ["chillis", "hot-pepper"],
    ["arugula", "rocket"],
    ["silverbeet", "chard"],
    ["Beta vulgaris", "beet"],
    ["Cucurbita pepo", "summer-squash"],
    ["cucurbita  PEPO", "summer-squash"],
    ["Cucurbita maxima", "winter-squash"],
    ["Brassica oleracea", "cabbage"],
    ["Brassica rapa", "turnip"],
    ["Daucus carota", "carrot"],
    ["Daucus carota subsp. carota", "wild-carrot"],
    ["wild carrot", "wild-carrot"],
    ["Zea mays", "maize"],
    ["Allium ampeloprasum", "elephant-garlic"],
    ["Brussels sprout", "brussels-sprouts"],
    ["oats", "oat"],
    ["string beans", "common-bean"],
    ["broccoli rabe", "broccoli-raab"],
    ["silver beet", "chard"],
    ["jalapeño", "hot-pepper"],
    ["mâche", "corn-salad"],
    ["Queen Anne’s Lace", "wild-carrot"],
    ["queen annes lace", "wild-carrot"],
    ["lambs lettuce", "corn-salad"],
    ["", undefined],
    ["unobtainium", undefined],
  ])("%j gives %s", (text, id) => {
    expect(book.find(text)?.id).toBe(id);
  });

  test("every kind is found by its id and by its name", () => {
    for (const kind of kinds) {
      // The id of the pepo pumpkin is a name that species share.
      expect(book.find(kind.id)?.id).toBe(kind.id === "pumpkin" ? undefined : kind.id);
      expect(book.find(kind.name)?.id).toBe(kind.id);
      expect(book.kind(kind.id)).toBe(kind);
    }
  });
});

describe("names that species share", () => {
  // 7 CFR 201.2(i), kinds of vegetable seed: both names mean these three species.
  test.each(["squash", "Pumpkin", "pumpkins", "winter squash"])("%s is read as none", (name) => {
    expect(book.find(name)).toBeUndefined();
    const species = book.sharing(name).map((kind) => kind.species);
    for (const one of ["Cucurbita pepo", "Cucurbita moschata", "Cucurbita maxima"])
      expect(species).toContain(one);
  });

  // Common practice.
  test.each([
    ["field beans", ["common-bean", "broad-bean"]],
    ["scallions", ["onion", "bunching-onion"]],
    ["green onions", ["onion", "bunching-onion"]],
    // In Britain and in seed law a pea, in the South of the United States a cowpea.
    ["field peas", ["pea", "cowpea"]],
    ["palak", ["chard", "spinach"]],
    ["gourds", ["ornamental-gourd", "fig-leaf-gourd", "bottle-gourd"]],
    ["carrot", []],
  ])("%s may be %j", (name, ids) => {
    expect(new Set(book.sharing(name).map(({ id }) => id))).toEqual(new Set(ids));
    if (ids.length > 0) expect(book.find(name)).toBeUndefined();
  });

  test("each is of several species, and no kind's own", () => {
    const own = new Set(kinds.flatMap(({ name, otherNames }) => [name, ...otherNames]));
    for (const name of new Set(kinds.flatMap(({ sharedNames = [] }) => sharedNames))) {
      expect(new Set(book.sharing(name).map(({ species }) => species)).size).toBeGreaterThan(1);
      expect([...own]).not.toContain(name);
    }
  });

  test("an own kind that is called so is meant", () => {
    const maxima = book.kind("winter-squash") as Kind;
    const own = cropBook([{ ...maxima, id: "k1", name: "Pumpkin" }]);
    expect(own.find("pumpkins")?.id).toBe("k1");
  });

  test("what is written with a hyphen is the id", () => {
    expect(book.find("winter-squash")?.id).toBe("winter-squash");
  });
});

describe("own kinds", () => {
  const tomato = book.kind("tomato") as Kind;
  const ownTomato: Kind = { ...tomato, name: "greenhouse tomato" };
  const oca: Kind = {
    ...tomato,
    id: "own-oca",
    name: "oca",
    otherNames: [],
    botanicalName: "Oxalis tuberosa",
    species: "Oxalis tuberosa",
    group: "own-oca",
  };

  test("stand in the place of a built-in kind with the same id", () => {
    const own = cropBook([ownTomato]);
    expect(own.kind("tomato")).toBe(ownTomato);
    expect(own.find("Solanum lycopersicum")).toBe(ownTomato);
    expect(own.kinds).toHaveLength(kinds.length);
    expect(own.kinds.map((kind) => kind.id)).toEqual(kinds.map((kind) => kind.id));
  });

  test("are added where the id is new", () => {
    const own = cropBook([oca]);
    expect(own.kinds).toHaveLength(kinds.length + 1);
    expect(own.find("Oca")).toBe(oca);
    expect(own.relation(oca, oca).relation).toBe("freely");
    expect(own.relation(oca, tomato).relation).toBe("no");
  });

  test("leave the built-in book as it is, which is one and the same each time", () => {
    cropBook([ownTomato]);
    expect(cropBook()).toBe(book);
    expect(book.kind("tomato")).toBe(tomato);
  });
});
