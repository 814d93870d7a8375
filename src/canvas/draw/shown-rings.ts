/** Which rings of required distance the sheet shows. */
import { keptOf } from "../../core/checks/carried-run.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { type LengthUnit, formatRequired } from "../../core/model/length.ts";
import { touchingPairs } from "../../core/nearness/touching-pairs.ts";
import type { Ring } from "./draw-rings.ts";
import type { Colours } from "./sheet-colours.ts";
import * as said from "../scene/mark-words.ts";

/** With more selected than this, rings would hide what they are about. */
const RINGS_MOST = 3;

/**
 * Around each selected seed parent the ground it needs; and around each other seed parent that a
 * selected one puts at risk, if it needs another distance.
 */
export function shownRings(
  result: CheckResult,
  selection: readonly string[],
  unit: LengthUnit,
  colours: Colours,
): readonly Ring[] {
  const stands = selection.flatMap((id) => result.standById.get(id) ?? []);
  if (stands.length === 0 || stands.length > RINGS_MOST) return [];
  const rings: Ring[] = [];
  const own = new Set<number>();
  for (const stand of stands) {
    if (!stand.isSeedParent || !stand.requirement || stand.requirement.metres === 0) continue;
    own.add(stand.requirement.metres);
    rings.push({
      outline: stand.outline,
      radiusM: stand.requirement.metres,
      colour: colours.held,
      widthPx: 1.5,
      text: needsText(stands.length > 1 ? stand : null, stand.requirement.metres, unit),
    });
  }
  const selected = new Set(selection);
  for (const pair of touchingPairs(keptOf(result), selected)) {
    if (!selected.has(pair.pollenSource) || selected.has(pair.seedParent)) continue;
    if (pair.standing !== "conflict" && pair.standing !== "unknown") continue;
    const parent = result.standById.get(pair.seedParent);
    if (!parent || pair.requiredM === null || own.has(pair.requiredM)) continue;
    rings.push({
      outline: parent.outline,
      radiusM: pair.requiredM,
      colour: colours.inkSoft,
      widthPx: 1.25,
      text: needsText(parent, pair.requiredM, unit),
    });
  }
  return rings;
}

/** @param named the stand to name, where it is not plain which one the ring is about */
function needsText(named: Stand | null, metres: number, unit: LengthUnit): string {
  const code = named?.planting?.code ?? "";
  const distance = formatRequired(metres, unit);
  return code === "" ? said.needs(distance) : said.codeNeeds(code, distance);
}
