/** Words of adding a pollen source. */
import { counted } from "../state/selected-objects.ts";

export const sourceWords = {
  title: "Pollen source",
  what: "What flowers there?",
  other: "Another kind ...",
  needsKind: "Say what flowers there: what it crosses with hangs on it.",
  name: "Name",
  needsName: "A name is needed to tell it from others",
  place: "Place",
  pressed: "where you pressed",
  drawn: "as drawn",
  measured: "by distance and direction",
  typed: "by x and y",
  from: "From the middle of",
  origin: "the sheet's 0, 0",
  distance: "Distance",
  across: "Across",
  acrossHint:
    "How wide the stand is: distances count from its edge. Left empty, it is a single plant. Draw a field by its corners, with Draw outline.",
  single: "a single plant",
  direction: "Direction",
  directionHint: "Degrees clockwise from north, or letters: 45, NE, south-west.",
  badDirection: "Type degrees from north, such as 45, or a direction, such as NE",
  add: "Add",
  /** What the checks say of it: nothing is called harmless that is not known. */
  risk: (conflicts: number, unknown: number) => {
    const parts = [
      conflicts > 0 ? counted(conflicts, "conflict", "conflicts") : "",
      unknown > 0 ? `${counted(unknown, "question", "questions")} that cannot be told yet` : "",
    ].filter((part) => part !== "");
    return parts.length === 0
      ? "Nothing of ours is too near to it."
      : `It brings ${parts.join(" and ")}; see the sheet and the findings.`;
  },
  riskNone: "Nothing stands in this layout yet that it could cross.",
  riskUnset: "Nothing is kept yet.",
  unsaid: "Pollen source",
} as const;
