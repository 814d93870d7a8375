import { type Command, ctrl } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";
import * as words from "./command-words.ts";

export const find = {
  id: "find",
  name: words.find,
  group: "view",
  keys: [ctrl("f"), { key: "/" }],
  also: words.findAlso,
  run: () => viewNow().openFind(),
} as const satisfies Command;
