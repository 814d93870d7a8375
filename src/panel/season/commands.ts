import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const seasonDialog = dialog(
  "season",
  async () => (await import("./SeasonDialog.tsx")).SeasonDialog,
);
const climateDialog = dialog(
  "climate",
  async () => (await import("./ClimateDialog.tsx")).ClimateDialog,
);

const nextSeasonDialog = dialog(
  "next-season",
  async () => (await import("./NextSeasonDialog.tsx")).NextSeasonDialog,
);

const lotsBeforeDialog = dialog(
  "lots-before",
  async () => (await import("./LotsBeforeDialog.tsx")).LotsBeforeDialog,
);

export const seasonCalendar = opening(seasonDialog, {
  name: "Season calendar",
  group: "Lists and figures",
});

export const siteClimate = opening(climateDialog, {
  name: "Climate of the site",
  group: "Lists and figures",
  also: "heat frost",
});

export const startNextSeason = opening(nextSeasonDialog, {
  name: "Start the next season ...",
  group: "Plan",
  also: "new year carry over earlier crops",
});

export const lotsBefore = opening(lotsBeforeDialog, {
  name: "Add lots of the season before ...",
  group: "Plan",
  also: "harvest last year seed shelf",
  whyNot: ({ plan }) => (plan.cameFrom ? null : "This plan was not started from the season before"),
});

export const seasonCommands = [
  lotsBefore,
  seasonCalendar,
  siteClimate,
  startNextSeason,
] as const satisfies readonly Command[];
