/** What holds for every kind of the crop base. */
import { describe, expect, test } from "vitest";
import { cautions } from "../../../src/core/kinds/caution-words.ts";
import type { Kind, Range, Sourced } from "../../../src/core/kinds/crop.ts";
import { adjustments } from "../../../src/core/distances/adjustments.ts";
import { cfrBorderRows, washingtonBorderRows } from "../../../src/core/distances/border-rows.ts";
import { crossingGroups, knownSeparations } from "../../../src/core/kinds/groups.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelTable } from "../../../src/core/kinds/levels.ts";
import { findSource, sources } from "../../../src/core/kinds/sources.ts";

const named = kinds.map((kind) => [kind.id, kind] as const);

/** Every `source` anywhere inside a value. */
function sourcesIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    (key === "source" || key === "botanySource") && typeof inner === "string"
      ? [inner]
      : key === "otherwise" && Array.isArray(inner)
        ? inner.map(String)
        : sourcesIn(inner),
  );
}

function ranges(kind: Kind): readonly Sourced<Range>[] {
  const { sownToFlower, transplantedToFlower, bloomDays, flowerToSeed } = kind.timing;
  return [sownToFlower, transplantedToFlower, bloomDays, flowerToSeed, kind.seedLifeYears].filter(
    (range) => range !== undefined,
  );
}

test("there are at least 60 kinds, and more than 100 of them have something to say", () => {
  expect(kinds.length).toBeGreaterThanOrEqual(60);
  expect(kinds.filter((kind) => kind.isolation.length > 0).length).toBeGreaterThan(100);
});

test("ids are unique", () => {
  for (const ids of [
    kinds.map((kind) => kind.id),
    sources.map((source) => source.id),
    crossingGroups.map((group) => group.id),
    cautions.map((caution) => caution.id),
    adjustments.map((adjustment) => adjustment.id),
  ])
    expect(ids).toEqual([...new Set(ids)]);
});

test("no name or id means two kinds", () => {
  const owners = new Map<string, Set<string>>();
  for (const kind of kinds)
    for (const name of [kind.id, kind.name, ...kind.otherNames]) {
      const key = name.toLowerCase().replaceAll("-", " ");
      owners.set(key, (owners.get(key) ?? new Set()).add(kind.id));
    }
  const shared = [...owners].filter(([, ids]) => ids.size > 1).map(([name]) => name);
  expect(shared).toEqual([]);
});

describe.each(named)("%s", (_, kind) => {
  test("each number names a known source", () => {
    expect(sourcesIn(kind).filter((id) => !findSource(id))).toEqual([]);
    expect(findSource(kind.botanySource)).toBeDefined();
  });

  test("ids of its figures are unique, distances are no less than 0", () => {
    const ids = kind.isolation.map((figure) => figure.id);
    expect(ids).toEqual([...new Set(ids)]);
    expect(kind.isolation.every((figure) => figure.metres >= 0)).toBe(true);
    expect(kind.isolation.every((figure) => figure.published !== "")).toBe(true);
  });

  test("ranges run from least to most", () => {
    for (const { value } of ranges(kind)) expect(value[0]).toBeLessThanOrEqual(value[1]);
    const heat = kind.timing.heatToFlower?.value.cDays;
    if (heat) expect(heat[0]).toBeLessThanOrEqual(heat[1]);
    const { viable, maintenance } = kind.population ?? {};
    if (viable && maintenance) expect(viable.value).toBeLessThanOrEqual(maintenance.value);
  });

  test("its forms, group and cautions exist", () => {
    const forms = new Set(kind.forms?.map((form) => form.id));
    expect(kind.isolation.filter(({ form }) => form !== undefined && !forms.has(form))).toEqual([]);
    expect(crossingGroups.some((group) => group.id === kind.group)).toBe(true);
    const known = new Set(cautions.map((caution) => caution.id));
    expect((kind.cautions ?? []).filter((id) => !known.has(id))).toEqual([]);
  });

  test("the botanical name begins with the genus of its species", () => {
    expect(kind.botanicalName.split(" ")[0]).toBe(kind.species.split(" ")[0]);
    expect(kind.species).toMatch(/^[A-Z][a-z]+ [a-z-]+$/);
  });

  test("what is recalled says so", () => {
    const silent = kind.isolation.filter(
      ({ source, note }) => findSource(source)?.trust === "from memory" && !note,
    );
    expect(silent).toEqual([]);
  });
});

test("every source is used, and those used are known", () => {
  const used = new Set(
    sourcesIn([
      kinds,
      crossingGroups,
      knownSeparations,
      cautions,
      adjustments,
      cfrBorderRows,
      washingtonBorderRows,
    ]),
  );
  expect([...used].filter((id) => !findSource(id))).toEqual([]);
  expect(sources.filter(({ id }) => id !== "own" && !used.has(id))).toEqual([]);
});

test("seen sources have a rank, and only they", () => {
  for (const source of sources)
    expect([source.id, source.authority !== undefined]).toEqual([
      source.id,
      source.trust === "seen",
    ]);
});

test("the level table holds each class once and all that figures use", () => {
  const classes = levelTable.map((entry) => entry.figureClass);
  expect(classes).toEqual([...new Set(classes)]);
  const used = new Set(kinds.flatMap((kind) => kind.isolation.map((figure) => figure.figureClass)));
  expect([...used].filter((figureClass) => !classes.includes(figureClass))).toEqual([]);
  expect(levelTable.filter((entry) => entry.why === "" || entry.name === "")).toEqual([]);
});

test("kinds that are sown or set out flower in a predictable time", () => {
  const common =
    "tomato pepper summer-squash winter-squash butternut maize common-bean runner-bean lettuce beet chard sugar-beet carrot wild-carrot onion cucumber okra sunflower kale cabbage";
  for (const id of common.split(" ")) {
    const timing = kinds.find((kind) => kind.id === id)?.timing;
    expect([id, Boolean(timing?.sownToFlower ?? timing?.transplantedToFlower)]).toEqual([id, true]);
    expect([id, Boolean(timing?.bloomDays)]).toEqual([id, true]);
  }
});

test("maize asks 14 days between silkings, others have no guard days of their own", () => {
  const guarded = kinds.filter((kind) => kind.guardDays);
  expect(guarded.map((kind) => [kind.id, kind.guardDays?.value])).toEqual([
    ["maize", 14],
    ["sweet-corn", 14],
    ["popcorn", 14],
  ]);
});
