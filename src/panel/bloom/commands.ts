import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";
import * as words from "./command-words.ts";

export const foldBloom = {
  id: "bloom",
  name: words.foldBloom,
  group: "view",
  run: () => viewNow().toggleBloom(),
} as const satisfies Command;
