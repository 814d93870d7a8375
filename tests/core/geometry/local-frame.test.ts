import geodesic from "geographiclib-geodesic";
import { describe, expect, test, vi } from "vitest";
import { type LonLat, localFrame, middlePlace } from "../../../src/core/geometry/local-frame.ts";
import { pointDistance } from "../../../src/core/geometry/point.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

vi.setConfig({ testTimeout: 60_000 });

const { WGS84 } = geodesic.Geodesic;

/** Metres along the ellipsoid between two places. */
function groundDistance(a: LonLat, b: LonLat): number {
  return WGS84.Inverse(a.latitude, a.longitude, b.latitude, b.longitude).s12 as number;
}

function placeFrom(origin: LonLat, bearingDeg: number, metres: number): LonLat {
  const { lat2, lon2 } = WGS84.Direct(origin.latitude, origin.longitude, bearingDeg, metres);
  return { latitude: lat2 as number, longitude: lon2 as number };
}

const origins: readonly LonLat[] = [0, 45, -45, 60, 70, -70].flatMap((latitude) =>
  [0.1, 13.5, 179.99, -179.995].map((longitude) => ({ longitude, latitude })),
);
const bearings = [0, 33.3, -120] as const;

/** Worst relative error among random places within 5 km of the origin. */
function worstError(origin: LonLat, upBearingDeg: number, pairs: number): number {
  const random = seededRandom(Math.round(origin.latitude * 1000 + upBearingDeg));
  const frame = localFrame(origin, upBearingDeg);
  const anywhere = () =>
    placeFrom(origin, random.between(0, 360), random.chance(0.3) ? 5000 : random.between(1, 5000));
  let worst = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    const [a, b] = [anywhere(), anywhere()];
    const ground = groundDistance(a, b);
    if (ground < 1) continue;
    const sheet = pointDistance(frame.toSheet(a), frame.toSheet(b));
    worst = Math.max(worst, Math.abs(sheet - ground) / ground);
  }
  return worst;
}

test("distances within 5 km agree with geodesics, everywhere and across the date line", () => {
  const worst = origins.flatMap((origin) => bearings.map((up) => worstError(origin, up, 400)));
  // The budget is 1 part in 10,000; the tangent plane keeps within 1 in 1,000,000 (3.1e-7 seen).
  expect(Math.max(...worst)).toBeLessThan(1e-6);
  expect(Math.max(...worst)).toBeGreaterThan(1e-8);
});

test("sheet to ground and back is the same place to a micrometre", () => {
  const random = seededRandom(7);
  for (const origin of origins) {
    for (const up of bearings) {
      const frame = localFrame(origin, up);
      for (let count = 0; count < 40; count += 1) {
        const point = { x: random.between(-5000, 5000), y: random.between(-5000, 5000) };
        const place = frame.toLonLat(point);
        expect(place.longitude).toBeGreaterThanOrEqual(-180);
        expect(place.longitude).toBeLessThanOrEqual(180);
        expect(pointDistance(frame.toSheet(place), point)).toBeLessThan(1e-6);
      }
    }
  }
});

describe("the sheet's bearing", () => {
  test.each([0, 90, 33.3, -45, 180])("%d degrees: up the sheet points there", (up) => {
    const origin = { longitude: 11.25, latitude: 54.5 };
    const frame = localFrame(origin, up);
    const above = frame.toLonLat({ x: 0, y: 1000 });
    const right = frame.toLonLat({ x: 1000, y: 0 });
    const bearingTo = (place: LonLat) =>
      WGS84.Inverse(origin.latitude, origin.longitude, place.latitude, place.longitude)
        .azi1 as number;
    const turned = (degrees: number) => ((degrees % 360) + 360) % 360;
    expect(turned(bearingTo(above) - up + 180)).toBeCloseTo(180, 2);
    expect(turned(bearingTo(right) - up - 90 + 180)).toBeCloseTo(180, 2);
    const origo = frame.toSheet(origin);
    expect(pointDistance(origo, { x: 0, y: 0 })).toBe(0);
  });
});

describe("middlePlace", () => {
  test("is the middle of the box around the places", () => {
    const middle = middlePlace([
      { longitude: 10, latitude: 50 },
      { longitude: 10.2, latitude: 50.4 },
      { longitude: 10.1, latitude: 50.1 },
    ]);
    expect(middle.longitude).toBeCloseTo(10.1, 9);
    expect(middle.latitude).toBeCloseTo(50.2, 9);
  });

  test("takes the short way across the date line", () => {
    const middle = middlePlace([
      { longitude: 179.9, latitude: -16 },
      { longitude: -179.7, latitude: -16.2 },
    ]);
    expect(middle.longitude).toBeCloseTo(-179.9, 9);
    expect(middle.latitude).toBeCloseTo(-16.1, 9);
  });

  test("of one place is that place", () => {
    expect(middlePlace([{ longitude: -4.5, latitude: 53 }])).toEqual({
      longitude: -4.5,
      latitude: 53,
    });
  });
});
