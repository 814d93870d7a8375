/** What lining up is called on buttons, and titles of its steps. */
import type { AlignSide } from "../../core/edits/align.ts";

export const alignLabels: Readonly<Record<AlignSide, string>> = {
  left: "Left sides",
  middle: "Middles across",
  right: "Right sides",
  far: "Far ends",
  halfway: "Middles along",
  near: "Near ends",
};

const titles: Readonly<Record<AlignSide, (names: string) => string>> = {
  left: (names) => `Line up left sides of ${names}`,
  middle: (names) => `Line up middles across of ${names}`,
  right: (names) => `Line up right sides of ${names}`,
  far: (names) => `Line up far ends of ${names}`,
  halfway: (names) => `Line up middles along of ${names}`,
  near: (names) => `Line up near ends of ${names}`,
};

export function lineUpTitle(side: AlignSide, names: string): string {
  return titles[side](names);
}
