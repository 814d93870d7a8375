/** Words for plantings and the ground they lie on: too much of it, too little, or none of their own. */
import { citedAs } from "../kinds/sources.ts";
import { type LengthUnit, formatLength } from "../model/length.ts";
import type { CrowdedFinding, OutsideFinding } from "./finding.ts";

interface GroundWords {
  readonly title: string;
  readonly sentences: readonly string[];
}

export function describeOutside(
  { inner, outer, measuredM }: OutsideFinding,
  nameOf: (id: string) => string,
  unit: LengthUnit,
): GroundWords {
  if (outer === "beds") {
    return {
      title: `${nameOf(inner)} lies in no bed`,
      sentences: ["Move it onto a bed, choose its bed in its particulars, or draw a bed under it."],
    };
  }
  return {
    title: `${nameOf(inner)} reaches out of ${nameOf(outer)}`,
    sentences: [`It sticks out by ${formatLength(measuredM ?? 0, unit)}.`],
  };
}

export function describeCrowded(
  { plants, fits, inRowM, betweenRowsM, source }: CrowdedFinding,
  name: string,
  unit: LengthUnit,
): GroundWords {
  const spacing = `${formatLength(inRowM, unit)} in the row and ${formatLength(betweenRowsM, unit)} between rows`;
  return {
    title: `${name} holds ${plants} plants where ${fits} fit`,
    sentences: [
      `At ${spacing} (${citedAs(source)}) its ground takes ${fits}.`,
      "Make it longer, plant fewer, or mend the number.",
    ],
  };
}
