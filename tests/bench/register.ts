/**
 * A made-up district register as GeoJSON features: gardens scattered over a square of country,
 * each with some plots of several kinds; wild plants between them. The same for the same seed.
 */
import { localFrame } from "../../src/core/geometry/local-frame.ts";
import { rectangleCorners } from "../../src/core/geometry/outline.ts";
import { seeded } from "./field.ts";

const KINDS = [
  "tomato",
  "lettuce",
  "bean",
  "beet",
  "chard",
  "carrot",
  "maize",
  "summer squash",
  "onion",
];
/** Metres asked for, typed by the growers. */
const ASKED = [3, 10, 20, 40];
const PLOTS = 8;
/** Square metres of country for each planting. */
const COUNTRY_M2 = 900;

const day = (number: number) => new Date(Date.UTC(2027, 5, 1 + number)).toISOString().slice(0, 10);

/** One feature after the other; `count` of them. */
export function* registerFeatures(count: number, seed = 1): Generator<object, void, void> {
  const next = seeded(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(next() * list.length)] as T;
  const frame = localFrame({ longitude: 9.3, latitude: 47.1 });
  const side = Math.sqrt(count * COUNTRY_M2);
  const place = (x: number, y: number): readonly [number, number] => {
    const { longitude, latitude } = frame.toLonLat({ x, y });
    return [Number(longitude.toFixed(8)), Number(latitude.toFixed(8))];
  };
  let garden = { x: 0, y: 0 };
  for (let index = 0; index < count; index += 1) {
    if (index % PLOTS === 0) garden = { x: next() * side, y: next() * side };
    const [x, y] = [garden.x + next() * 40, garden.y + next() * 40];
    const first = Math.floor(next() * 60);
    const properties = {
      kind: pick(KINDS),
      variety: `Strain ${Math.floor(next() * 40)}`,
      ...(next() < 0.97
        ? { bloomStart: day(first), bloomEnd: day(first + 10 + Math.floor(next() * 40)) }
        : {}),
    };
    if (next() < 0.05) {
      yield {
        type: "Feature",
        id: `wild-${index}`,
        properties,
        geometry: { type: "Point", coordinates: place(x, y) },
      };
      continue;
    }
    const corners = rectangleCorners({
      shape: "rectangle",
      x,
      y,
      widthM: 1.2,
      lengthM: 2 + next() * 6,
      turnDeg: next() * 180,
    }).map((corner) => place(corner.x, corner.y));
    yield {
      type: "Feature",
      id: `plot-${index}`,
      properties: {
        ...properties,
        purpose: next() < 0.8 ? "seed" : "food",
        isolationM: pick(ASKED),
        ...(next() < 0.05 ? { cover: "cage" } : {}),
      },
      geometry: { type: "Polygon", coordinates: [[...corners, corners[0]]] },
    };
  }
}
