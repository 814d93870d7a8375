/** Corners of the beds as waypoints (GPX 1.1), for a receiver held in the hand. */
import { localFrame } from "../geometry/local-frame.ts";
import { shapeCorners } from "../geometry/outline.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { xmlText } from "../formats/xml-text.ts";

/**
 * One waypoint a corner, named `B07-1`, `B07-2` ... in the order of the outline; degrees to eight
 * places, about a millimetre. The time is left out: the same plan gives the same file.
 * Throws a RangeError when the site has no position.
 */
export function bedCornersGpx(plan: Plan, layout: Layout): string {
  const { position, upBearingDeg, name } = plan.site;
  if (!position) throw new RangeError("A site without a position has no waypoints");
  const frame = localFrame(position, upBearingDeg);
  const waypoints = layout.beds.flatMap((bed) =>
    shapeCorners(bed.outline).map((corner, index) => {
      const { longitude, latitude } = frame.toLonLat(corner);
      return [
        `  <wpt lat="${latitude.toFixed(8)}" lon="${longitude.toFixed(8)}">`,
        `    <name>${xmlText(`${bed.code} ${index + 1}`)}</name>`,
        `    <desc>${xmlText(`Corner ${index + 1} of bed ${bed.code}, ${layout.name}`)}</desc>`,
        "  </wpt>",
      ].join("\n");
    }),
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx xmlns="http://www.topografix.com/GPX/1/1" version="1.1" creator="Wideberth">',
    "  <metadata>",
    `    <name>${xmlText(name === "" ? plan.title : name)}</name>`,
    "  </metadata>",
    ...waypoints,
    "</gpx>",
    "",
  ].join("\n");
}
