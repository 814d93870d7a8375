/** The sides things are lined up by, seen from the near end of a bed, and what that is called. */
import type { AlignSide } from "../../core/edits/align.ts";

interface AlignedSide {
  readonly side: AlignSide;
  /** On a button. */
  readonly label: string;
  /** In the list of commands. */
  readonly command: string;
  /** Of the step, for the names of what is lined up. */
  readonly title: (names: string) => string;
}

export const alignSides: readonly AlignedSide[] = [
  {
    side: "left",
    label: "Left sides",
    command: "Line up left sides",
    title: (names) => `Line up left sides of ${names}`,
  },
  {
    side: "middle",
    label: "Middles across",
    command: "Line up middles across",
    title: (names) => `Line up middles across of ${names}`,
  },
  {
    side: "right",
    label: "Right sides",
    command: "Line up right sides",
    title: (names) => `Line up right sides of ${names}`,
  },
  {
    side: "far",
    label: "Far ends",
    command: "Line up far ends",
    title: (names) => `Line up far ends of ${names}`,
  },
  {
    side: "halfway",
    label: "Middles along",
    command: "Line up middles along",
    title: (names) => `Line up middles along of ${names}`,
  },
  {
    side: "near",
    label: "Near ends",
    command: "Line up near ends",
    title: (names) => `Line up near ends of ${names}`,
  },
];

export function lineUpTitle(side: AlignSide, names: string): string {
  const entry = alignSides.find((each) => each.side === side);
  return entry ? entry.title(names) : names;
}
