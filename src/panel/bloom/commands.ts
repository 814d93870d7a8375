import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";

export const foldBloom = {
  id: "bloom",
  name: "Show or hide the bloom strip",
  group: "View",
  run: () => viewNow().toggleBloom(),
} as const satisfies Command;
