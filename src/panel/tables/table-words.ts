/** Headings and labels of the tables. */

export const plantingColumns = {
  code: "Planting",
  variety: "Variety",
  kind: "Kind",
  bed: "Bed",
  plants: "Plants",
  start: "Start",
  flower: "First flower",
  conflicts: "Conflicts",
  purpose: "Purpose",
  size: "Size",
  turn: "Turn",
  right: "Right (x)",
  up: "Up (y)",
  locked: "Locked",
} as const;

export const startMethods = { sown: "sown", transplanted: "set out" } as const;

export const cellLabels = {
  plants: (code: string) => `Plants of ${code}`,
  start: (code: string) => `Start of ${code}, date`,
  method: (code: string) => `Start of ${code}, how`,
};

export const cellTitles = {
  plants: (code: string) => `Set plants of ${code}`,
  start: (code: string) => `Set start of ${code}`,
};

export const findRows = {
  label: "Find in the tables",
  placeholder: "Code, variety, kind ...",
  none: "Nothing here has these words: type fewer of them.",
  of: (shown: number, all: number) => (shown === all ? String(all) : `${shown} of ${all}`),
};

export const bedColumns = {
  code: "Bed",
  size: "Size",
  turn: "Turn",
  right: "Right (x)",
  up: "Up (y)",
  plantings: "Plantings",
  locked: "Locked",
} as const;

export const surroundingColumns = {
  label: "Name",
  sort: "What it is",
  crop: "Kind",
  size: "Size",
  right: "Right (x)",
  up: "Up (y)",
  locked: "Locked",
} as const;

export const tableNames = {
  beds: "Beds",
  plantings: "Plantings",
  surroundings: "Surroundings",
  corners: (count: number) => `${count} corners`,
  point: "a point",
  locked: "locked",
} as const;
