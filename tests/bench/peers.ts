/**
 * Other libraries on the same plantings: JSTS (STRtree and DistanceOp), and GEOS through Shapely 2
 * where .config/shapely.mjs found it. Both give the directed pairs nearer than a limit.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import STRtree from "jsts/org/locationtech/jts/index/strtree/STRtree.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { DISTANCE_TOLERANCE_M } from "../../src/core/checks/isolation-pair.ts";
import type { Stand } from "../../src/core/checks/stand.ts";

/** Directed pairs as "parent source" with their distance in metres. */
export type PeerPairs = ReadonlyMap<string, number>;

function ringOf(stand: Stand): Float64Array {
  return stand.outline.rings[0] as Float64Array;
}

/** @param limitM pairs of one crossing group nearer than this */
export function jstsPairs(stands: readonly Stand[], limitM: number): PeerPairs {
  const factory = new GeometryFactory();
  const shapes = stands.map((stand) => {
    const ring = ringOf(stand);
    const corners = Array.from({ length: ring.length / 2 + 1 }, (_, index) => {
      const at = (index * 2) % ring.length;
      return new Coordinate(ring[at], ring[at + 1]);
    });
    return factory.createPolygon(factory.createLinearRing(corners), []);
  });
  const trees = new Map<string, STRtree>();
  stands.forEach(({ kind: { group } }, index) => {
    const tree = trees.get(group) ?? new STRtree();
    trees.set(group, tree);
    tree.insert(shapes[index].getEnvelopeInternal(), index);
  });
  const pairs = new Map<string, number>();
  stands.forEach((stand, index) => {
    const envelope = shapes[index].getEnvelopeInternal().copy();
    envelope.expandBy(limitM);
    const near = (trees.get(stand.kind.group)?.query(envelope).toArray() ?? []) as number[];
    for (const other of near) {
      if (other === index) continue;
      const distance = DistanceOp.distance(shapes[index], shapes[other]) as number;
      if (distance < limitM - DISTANCE_TOLERANCE_M) {
        pairs.set(`${stand.id} ${stands[other]?.id}`, distance);
      }
    }
  });
  return pairs;
}

export interface GeosRun {
  readonly ms: number;
  /** Which of its two routes was the faster. */
  readonly route: string;
  readonly shapely: string;
  readonly geos: string;
  readonly pairs: PeerPairs;
}

/** Null when there is no Shapely 2: `npm run bench` says how to have it. */
export function geosRun(stands: readonly Stand[], limitM: number): GeosRun | null {
  const python = process.env["WIDEBERTH_SHAPELY"];
  if (!python) return null;
  const folder = mkdtempSync(join(tmpdir(), "wideberth-geos-"));
  try {
    const groups = [...new Set(stands.map(({ kind }) => kind.group))];
    const field = {
      corners: stands.map((stand) => [...ringOf(stand)]),
      groups: stands.map(({ kind }) => groups.indexOf(kind.group)),
      limitM,
    };
    const [input, output] = [join(folder, "field.json"), join(folder, "out")];
    writeFileSync(input, JSON.stringify(field));
    const script = fileURLToPath(new URL("geos-peer.py", import.meta.url));
    const said = execFileSync(python, [script, input, output], { encoding: "utf8" });
    const told = JSON.parse(said) as Omit<GeosRun, "pairs">;
    const places = readFileSync(`${output}.pairs`);
    const metres = readFileSync(`${output}.metres`);
    const pairs = new Map<string, number>();
    for (let index = 0; index * 8 < metres.length; index += 1) {
      const parent = stands[places.readInt32LE(index * 8)];
      const source = stands[places.readInt32LE(index * 8 + 4)];
      pairs.set(`${parent?.id} ${source?.id}`, metres.readDoubleLE(index * 8));
    }
    return { ...told, pairs };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
