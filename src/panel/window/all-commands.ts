/** Every command of the program: menus, keys and the searchable list take them from here. */
import { arrangeLayout, layOutSeedList } from "../arrange/commands.ts";
import { bedCommands, lineUpCommands } from "../beds/commands.ts";
import { clearEverything } from "../clearing/commands.ts";
import { foldBloom } from "../bloom/commands.ts";
import { clipboardCommands } from "../clipboard/commands.ts";
import { helpersCopies } from "../copies/commands.ts";
import type { Command } from "../commands/command.ts";
import { regionCommands } from "../commands/view-commands.ts";
import { editCommands, objectCommands } from "../commands/edit-commands.ts";
import { earlierCrops } from "../earlier-crops/commands.ts";
import { figures } from "../figures/commands.ts";
import { find } from "../find/commands.ts";
import { clearGround, crossingShade, findingCommands } from "../findings/commands.ts";
import { harvestIntoLot, predictedAndSeen, readAsGrown } from "../grown/commands.ts";
import { keepingCommands, whatWentWrong } from "../keeping/commands.ts";
import { newSource, ownKinds } from "../kinds/commands.ts";
import { layoutCommands } from "../layouts/commands.ts";
import { newLot } from "../lots/commands.ts";
import { importOutlines, outlineFromCorners } from "../outlines/commands.ts";
import { paperCommands } from "../paper/commands.ts";
import { pictureUnder } from "../picture/commands.ts";
import { scanCode } from "../scan/commands.ts";
import { seasonCommands } from "../season/commands.ts";
import { seedListCommands } from "../seed-list/commands.ts";
import { lotList } from "../shelf/commands.ts";
import { planSettings, plotFacts } from "../site/commands.ts";
import { storagePlaces } from "../storage/commands.ts";
import { whichYear } from "../years/commands.ts";
import {
  helpCommands,
  lookCommands,
  sampleCommands,
  toolCommands,
  viewCommands,
} from "./commands.ts";

const lists = [
  ...editCommands,
  ...clipboardCommands,
  ...objectCommands,
  ...bedCommands,
  ...seedListCommands,
  newLot,
  harvestIntoLot,
  scanCode,
  ...lineUpCommands,
  find,
  ...viewCommands,
  ...regionCommands,
  ...findingCommands,
  clearGround,
  crossingShade,
  readAsGrown,
  foldBloom,
  ...lookCommands,
  ...toolCommands,
  ...layoutCommands,
  arrangeLayout,
  layOutSeedList,
  clearEverything,
  ...keepingCommands,
  helpersCopies,
  ...sampleCommands,
  pictureUnder,
  importOutlines,
  outlineFromCorners,
  ...paperCommands,
  planSettings,
  plotFacts,
  ...seasonCommands,
  whichYear,
  storagePlaces,
  lotList,
  figures,
  predictedAndSeen,
  earlierCrops,
  ownKinds,
  newSource,
  ...helpCommands,
  whatWentWrong,
] as const satisfies readonly Command[];

/** The ids there are, made from the lists: a mistyped one does not compile. */
export type CommandId = (typeof lists)[number]["id"];

export const allCommands: readonly Command[] = lists;

const byId: ReadonlyMap<string, Command> = new Map(lists.map((command) => [command.id, command]));

export function commandById(id: CommandId): Command {
  const command = byId.get(id);
  if (!command) throw new Error(`There is no command "${id}".`);
  return command;
}
