import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

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
  name: words.seasonCalendar,
  group: "lists",
});

export const siteClimate = opening(climateDialog, {
  name: words.siteClimate,
  group: "lists",
  also: words.siteClimateAlso,
});

export const startNextSeason = opening(nextSeasonDialog, {
  name: words.startNextSeason,
  group: "plan",
  also: words.startNextSeasonAlso,
});

export const lotsBefore = opening(lotsBeforeDialog, {
  name: words.lotsBefore,
  group: "plan",
  also: words.lotsBeforeAlso,
  whyNot: ({ plan }) => (plan.cameFrom ? null : words.notStartedFromSeasonBefore),
});

export const seasonCommands = [
  lotsBefore,
  seasonCalendar,
  siteClimate,
  startNextSeason,
] as const satisfies readonly Command[];
