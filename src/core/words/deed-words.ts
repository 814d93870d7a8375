/** What a change of the plan is said to have done, once it is done. */
import { type Noun, counted } from "./plurals.ts";

/** The first word of a step's title, and the same once it is done. */
const DONE: ReadonlyMap<string, string> = new Map([
  ["Accept", "Accepted"],
  ["Add", "Added"],
  ["Arrange", "Arranged"],
  ["Change", "Changed"],
  ["Choose", "Chose"],
  ["Clear", "Cleared"],
  ["Copy", "Copied"],
  ["Correct", "Corrected"],
  ["Delete", "Deleted"],
  ["Draw", "Drew"],
  ["Drop", "Dropped"],
  ["Duplicate", "Duplicated"],
  ["Fade", "Faded"],
  ["Hide", "Hid"],
  ["Keep", "Kept"],
  ["Lay", "Laid"],
  ["Line", "Lined"],
  ["Lock", "Locked"],
  ["Make", "Made"],
  ["Mark", "Marked"],
  ["Mix", "Mixed"],
  ["Move", "Moved"],
  ["Number", "Numbered"],
  ["Paste", "Pasted"],
  ["Pick", "Picked"],
  ["Place", "Placed"],
  ["Print", "Printed"],
  ["Rename", "Renamed"],
  ["Reset", "Reset"],
  ["Reshape", "Reshaped"],
  ["Resize", "Resized"],
  ["Scale", "Scaled"],
  ["Set", "Set"],
  ["Share", "Shared"],
  ["Show", "Showed"],
  ["Slide", "Slid"],
  ["Space", "Spaced"],
  ["Split", "Split"],
  ["Stretch", "Stretched"],
  ["Strike", "Struck"],
  ["Swap", "Swapped"],
  ["Turn", "Turned"],
  ["Unlock", "Unlocked"],
]);

/** What is done in the field, of which the plan only says that it shall be. */
const IN_THE_FIELD: ReadonlySet<string> = new Set(["Bag", "Cage", "Cover", "Grow", "Sow", "Tape"]);

/**
 * `Moved bed A02` for the step `Move bed A02`, `Planned: cover B01-2` for what the field will see;
 * any other title as it stands.
 */
export function deedOf(title: string): string {
  const [verb = "", ...rest] = title.split(" ");
  if (IN_THE_FIELD.has(verb) || title.startsWith("Set out ")) {
    return `Planned: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;
  }
  return [DONE.get(verb) ?? verb, ...rest].join(" ");
}

export const deedWords = {
  movedBy: (deed: string, distance: string) => `${deed} by ${distance}`,
  undone: (title: string) => `Undone: ${title}`,
  redone: (title: string) => `Redone: ${title}`,
  tryCancelled: (title: string) => `Not applied: ${title}`,
} as const;

/** One finding of a severity, and several. */
export const severityNames: { readonly [Severity in "conflict" | "caution" | "unknown"]: Noun } = {
  conflict: { one: "conflict", other: "conflicts" },
  caution: { one: "caution", other: "cautions" },
  unknown: { one: "unknown", other: "unknowns" },
};

/** Findings of each severity. */
export type FindingCounts = Readonly<Record<keyof typeof severityNames, number>>;

/** `3 conflicts`, `1 caution`, `0 unknowns`. */
export function countWord(count: number, severity: keyof typeof severityNames): string {
  return counted(count, severityNames[severity]);
}

/** `2 conflicts, 1 caution`: of all severities there are; conflicts even where there are none. */
export function findingCountWords({ conflict, caution, unknown }: FindingCounts): string {
  return [
    countWord(conflict, "conflict"),
    ...(caution > 0 ? [countWord(caution, "caution")] : []),
    ...(unknown > 0 ? [countWord(unknown, "unknown")] : []),
  ].join(", ");
}
