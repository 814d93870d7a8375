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

export const seasonCalendar = opening(seasonDialog, {
  name: "Season calendar",
  group: "Lists and figures",
});

export const siteClimate = opening(climateDialog, {
  name: "Climate of the site",
  group: "Lists and figures",
  also: "heat frost",
});

export const seasonCommands = [seasonCalendar, siteClimate] as const satisfies readonly Command[];
