/** Features packed for a register are the same for all that reads them. */
import { expect, test } from "vitest";
import { featurePacker, unpackFeature } from "../../../src/core/exchange/packed-feature.ts";
import { planFromFeatures } from "../../../src/core/exchange/geojson-plan.ts";
import { placeFeature, readFeature } from "../../../src/core/exchange/read-geojson.ts";
import { localFrame } from "../../../src/core/geometry/local-frame.ts";
import { registerFeatures } from "../../bench/register.ts";
import { book } from "../../support/trial-plan.ts";

const origin = { longitude: 9.3, latitude: 47.1 };
const frame = localFrame(origin);

function read(value: object, index: number) {
  const feature = readFeature(value, index, `features[${index}]`, "register.ndjson", book);
  if (!feature.ok) throw new Error(JSON.stringify(feature.problems));
  return feature.value;
}

const ring = (lift: number) => [
  [9.3, 47.1, lift],
  [9.3001, 47.1, lift],
  [9.3001, 47.1001],
  [9.3, 47.1, lift + 1],
];
const odd: readonly object[] = [
  {
    type: "Feature",
    id: 7,
    geometry: { type: "Polygon", coordinates: [ring(400)] },
    properties: {
      kind: "Tomato",
      bloomStart: "2027-06-01",
      cover: "",
      hybrid: true,
      colour: "red",
    },
  },
  {
    type: "Feature",
    geometry: { type: "Point", coordinates: [9.3, 47.1, 400] },
    properties: { kind: "beet", variety: 'Strain "ü"', level: "stock" },
  },
  {
    type: "Feature",
    id: "written",
    geometry: { type: "Polygon", coordinates: [ring(0), ring(1)] },
    properties: {
      kind: "bean",
      wideberth: "planting",
      code: "B07-2",
      plants: 40,
      keepApart: true,
      startDate: "2027-05-01",
      startMethod: "sown",
    },
  },
];

test("a plan of packed features is the plan of the features, but for what nobody reads", () => {
  const features = [...odd, ...registerFeatures(400)].map(read);
  const packer = featurePacker();
  const texts = features.map(packer.pack);
  const back = texts.map((text, at) => {
    const { feature, kind } = unpackFeature(text, packer.shapes);
    return { ...(features[at] as (typeof features)[number]), feature, kind: book.kind(kind) };
  });
  const planOf = (list: typeof features) =>
    planFromFeatures(
      list.map((each) => ({ ...each, ...placeFeature(each.feature, frame) })),
      origin,
      "register",
    );
  const plain = features.map((each) => {
    const { colour: _, ...properties } = each.feature.properties;
    return { ...each, feature: { ...each.feature, properties } };
  });
  expect(planOf(back as typeof features)).toEqual(planOf(plain));
  expect(packer.shapes.length).toBeLessThan(20);
  const geojson = [...registerFeatures(400)].map((each) => JSON.stringify(each)).join("").length;
  expect(texts.slice(odd.length).join("").length).toBeLessThan(geojson * 0.6);
});
