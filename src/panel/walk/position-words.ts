/** Words about where the walker stands, and about a plant that is found. */
import { formatDistance } from "../../core/model/length.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import type { PositionFault } from "../../store/window/position.ts";

export const faultWords: Readonly<Record<PositionFault, string>> = {
  insecure:
    "The phone gives its position only to pages that come over https, and this one does not. Measure from a plot instead.",
  absent: "This browser has no position to give. Measure from a plot instead.",
  refused:
    "The browser was not allowed to tell the position. Allow it for this page, or measure from a plot.",
  unavailable: "The phone does not know where it is. Go into the open, or measure from a plot.",
  late: "The phone has not found where it is yet. Wait in the open, or measure from a plot.",
};

export const positionWords = {
  heading: "Where I stand",
  ask: "Ask the phone where I stand",
  promise: "The position stays on this phone and is not kept.",
  stop: "Stop asking",
  waiting: "The phone is looking for its position ...",
  noSite:
    "Where the sheet lies on the earth is not known: type the site's latitude and longitude in Site and season first. Measuring from a plot works without.",
  /** The phone's own figure. */
  within: (metres: number, unit: LengthUnit) =>
    `Known to within ${formatDistance(Math.max(1, Math.ceil(metres)), unit)}, and no better than the site's own position.`,
  far: "That is far from everything here. Is the site's position right?",
  atPlot: "you stand in it",
  away: (metres: number, unit: LengthUnit) => formatDistance(metres, unit),
  showSheet: "Show it on the sheet",
  foundHeading: "A plant flowers here",
  whatKind: "What flowers?",
  otherKind: "Another kind",
  place: "Where?",
  here: "Where I stand",
  fromPlot: "Measured from",
  distance: "Distance",
  direction: "Towards",
  danger: "What it endangers",
  nothing: "Nothing here that crosses with it stands nearer than it needs.",
  put: "Add",
  needsPlace: "Ask the phone for the position, or pick a plot to measure from",
  foundLabel: (kind: string, day: string) => `${kind} found ${day}`,
  correct: "Correct the place by",
} as const;

/** Eight directions, true bearings. */
export const directions: readonly { readonly value: string; readonly label: string }[] = [
  { value: "0", label: "north" },
  { value: "45", label: "north-east" },
  { value: "90", label: "east" },
  { value: "135", label: "south-east" },
  { value: "180", label: "south" },
  { value: "225", label: "south-west" },
  { value: "270", label: "west" },
  { value: "315", label: "north-west" },
];
