import { type Command, ctrl } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";

export const find = {
  id: "find",
  name: "Find by name or code",
  group: "View",
  keys: [ctrl("f"), { key: "/" }],
  also: "search look for",
  run: () => viewNow().openFind(),
} as const satisfies Command;
