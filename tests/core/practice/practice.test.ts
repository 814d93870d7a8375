/** What growers do beside distance, held against what was read of it. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { findSource } from "../../../src/core/kinds/sources.ts";
import { coverKinds, mayOpenByTurns, underCover } from "../../../src/core/practice/under-cover.ts";
import { cutEarly, cutKinds, wildCutSource } from "../../../src/core/practice/cut-early.ts";
import { handKinds, handWay, whyNotByHand } from "../../../src/core/practice/by-hand.ts";
import { practiceOnlySources, ruleCited } from "../../../src/core/practice/practice.ts";
import { startDays } from "../../../src/core/practice/start-days.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import type { Site } from "../../../src/core/model/plan.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";
import { day } from "../../support/trial-plan.ts";

const { kinds } = cropBook();
const byId = new Map(kinds.map((kind) => [kind.id, kind]));
const kind = (id: string): Kind => {
  const found = byId.get(id);
  if (!found) throw new Error(`no kind ${id}`);
  return found;
};

test("every id in the tables is a kind, and every source is known", () => {
  for (const id of [...handKinds, ...coverKinds, ...cutKinds]) expect(byId.has(id), id).toBe(true);
  const own = new Set(practiceOnlySources.map(({ id }) => id));
  let rules = 0;
  for (const each of kinds) {
    const sources = [
      handWay(each)?.source,
      whyNotByHand(each)?.source,
      mayOpenByTurns(each)?.source,
      cutEarly(each).source,
      wildCutSource(each),
      ...(["cage", "bags", "hand"] as const).map((cover) => underCover(each, cover)?.source),
    ].filter((source) => source !== undefined);
    for (const source of sources) {
      rules += 1;
      expect(own.has(source) || findSource(source) !== undefined, `${each.id}: ${source}`).toBe(
        true,
      );
      expect(ruleCited(source)).not.toBe(source);
    }
  }
  expect(rules).toBeGreaterThan(500);
});

describe("by hand", () => {
  // The Manual of Seed Saving (Timber Press 2013): squash taped, watermelon bagged, maize with
  // ear and tassel bags, onion by brush daily; USDA ARS: maize, sunflower, squash by hand.
  test.each([
    ["summer-squash", "buds taped"],
    ["pumpkin", "buds taped"],
    ["watermelon", "buds bagged"],
    ["maize", "ears and tassels"],
    ["sweet-corn", "ears and tassels"],
    ["onion", "umbels brushed"],
    ["sunflower", "heads brushed"],
  ])("%s: %s", (id, way) => expect(handWay(kind(id))?.value).toBe(way));

  test.each(["carrot", "parsnip", "beet", "chard", "spinach", "cabbage", "radish", "rye"])(
    "%s is not pollinated by hand",
    (id) => {
      expect(handWay(kind(id))).toBeUndefined();
      expect(underCover(kind(id), "hand")).toBeUndefined();
      expect(whyNotByHand(kind(id))).not.toBeNull();
    },
  );

  test("each kind has either a way or a reason", () => {
    for (const each of kinds) {
      expect(handWay(each) === undefined, each.id).toBe(whyNotByHand(each) !== null);
    }
  });
});

describe("covers", () => {
  // Centre for Genetic Resources, spinach: tunnel compartments; wind pollen passes a net.
  test("no cage is offered to what the wind pollinates, nor to what both do", () => {
    const windy = kinds.filter(({ carrier }) => carrier !== "insects");
    expect(windy.length).toBeGreaterThan(20);
    for (const each of windy) expect(underCover(each, "cage"), each.id).toBeUndefined();
  });

  // Tropical Agriculture 50(2): under 1 % of onion flowers set in a bag without insects.
  test("no bag is offered to an outcrosser that insects pollinate", () => {
    const crossed = kinds.filter(
      ({ carrier, breeding }) => carrier === "insects" && breeding === "outcrossing",
    );
    expect(crossed.length).toBeGreaterThan(60);
    for (const each of crossed) expect(underCover(each, "bags"), each.id).toBeUndefined();
  });

  test("a selfing kind sets its seed under either", () => {
    for (const id of ["tomato", "pepper", "common-bean", "lettuce", "okra"]) {
      expect(underCover(kind(id), "cage")?.value).toBe("itself");
      expect(underCover(kind(id), "bags")?.value).toBe("itself");
    }
  });

  // USDA ARS Ames: umbels with house and blue bottle flies, better with bees; crucifers, cucumber,
  // melon and chicory with a honey bee nucleus; squash by hand, not caged.
  test.each([
    ["carrot", "flies and bees"],
    ["celery", "flies and bees"],
    ["onion", "flies"],
    ["cabbage", "bees"],
    ["cucumber", "bees"],
    ["chicory", "bees"],
  ])("in a cage of %s: %s", (id, insects) =>
    expect(underCover(kind(id), "cage")?.value).toBe(insects),
  );
  test("squash is not caged", () => {
    for (const id of ["summer-squash", "butternut", "watermelon"]) {
      expect(underCover(kind(id), "cage")).toBeUndefined();
    }
  });

  test("cages are opened by turns only where insects carry the pollen and are needed", () => {
    expect(mayOpenByTurns(kind("cabbage"))?.source).toBe("washburn");
    expect(mayOpenByTurns(kind("parsnip"))?.source).toBe("diy-seeds");
    for (const id of ["beet", "maize", "tomato", "spinach"]) {
      expect(mayOpenByTurns(kind(id))).toBeUndefined();
    }
  });
});

describe("cutting before bloom", () => {
  test("makes sense of roots and leaves, and not of fruit and grain", () => {
    for (const id of ["beet", "carrot", "cabbage", "lettuce", "leek"]) {
      expect(cutEarly(kind(id)).value).toBe("eaten before");
    }
    for (const id of ["summer-squash", "tomato", "maize", "sunflower", "zinnia", "broad-bean"]) {
      expect(cutEarly(kind(id)).value).toBe("lost");
    }
  });

  test("loses nothing where it is a weed", () => {
    const wild = kinds.filter(({ id }) => cutEarly({ id }).value === "weed");
    expect(wild.map(({ id }) => id)).toContain("wild-carrot");
    expect(wild.length).toBe(11);
  });
});

describe("start days", () => {
  const season = emptyPlan("p", 2027).season;
  const site: Site = { name: "Garden", upBearingDeg: 0, lastSpringFrost: day("2027-05-10") };
  const first = (id: string, method: "sown" | "transplanted", at: Partial<Site> = {}) =>
    startDays({ season, site: { ...site, ...at } }, kind(id), method)?.first;

  test("tender kinds wait for the frost, hardy ones do not", () => {
    expect(first("common-bean", "sown")).toBe(day("2027-05-10"));
    expect(first("tomato", "transplanted")).toBe(day("2027-05-17"));
    expect(first("pea", "sown")).toBe(day("2027-03-29"));
    // News and Record, Greensboro: hardy plants about three weeks before the last frost.
    expect(first("lettuce", "transplanted")).toBe(day("2027-04-19"));
  });

  test("roots of biennials go out as soon as ground can be worked, and not weeks after", () => {
    const days = startDays({ season, site }, kind("carrot"), "transplanted");
    expect(days?.first).toBe(day("2027-03-29"));
    expect(days?.last).toBe(day("2027-05-24"));
  });

  // Jensen Seeds, Denmark: sown before 1 May or it forms heads.
  test("Chinese cabbage is sown by 1 May, in the south by 1 November", () => {
    expect(startDays({ season, site }, kind("chinese-cabbage"), "sown")?.last).toBe(
      day("2027-05-01"),
    );
    const south = {
      season: { name: "2027/28", first: day("2027-07-01"), last: day("2028-06-30") },
      site: { ...site, lastSpringFrost: day("2027-10-20") },
    };
    expect(startDays(south, kind("chinese-cabbage"), "sown")?.last).toBe(day("2027-11-01"));
  });

  test("a cold spring holds tender kinds back however early its last frost", () => {
    const climate = {
      normals: { minC: monthlyMeans("medford", "tmin"), maxC: monthlyMeans("medford", "tmax") },
    };
    const early = { lastSpringFrost: day("2027-02-01") };
    expect(first("common-bean", "sown", early)).toBe(day("2027-02-01"));
    expect(first("common-bean", "sown", { ...early, climate })).toBeGreaterThan(day("2027-03-15"));
  });

  test("nothing is known without a frost of this season", () => {
    expect(
      startDays({ season, site: { name: "x", upBearingDeg: 0 } }, kind("pea"), "sown"),
    ).toBeNull();
    expect(first("pea", "sown", { lastSpringFrost: day("2025-05-10") })).toBeUndefined();
  });

  test("a grower's own kind counts as tender: nobody said that it stands frost", () => {
    const own = { ...kind("pea"), id: "own-pea" };
    expect(startDays({ season, site }, own, "sown")?.first).toBe(day("2027-05-10"));
  });
});
