/** Finding a command by some letters of its words. */
import type { Command } from "./command.ts";
import { foldedText } from "../form/folded-text.ts";
import * as commandWords from "./command-words.ts";

/** How well the words asked for match, the least best; null when one of them is nowhere. */
function rank(command: Command, words: readonly string[]): number | null {
  const name = foldedText(command.name);
  // What was typed in full goes before what merely holds the words.
  if (name.startsWith(words.join(" "))) return -1;
  const also = foldedText(
    `${command.also ?? ""} ${commandWords.groupNames[command.group]} ${command.id}`,
  );
  let worst = 0;
  for (const word of words) {
    const at = name.indexOf(word);
    if (at === 0) continue;
    if (at > 0) worst = Math.max(worst, name[at - 1] === " " ? 1 : 2);
    else if (also.includes(word)) worst = Math.max(worst, 3);
    else return null;
  }
  return worst;
}

/** The commands that hold every word of the query, the best match first; all for an empty one. */
export function foundCommands(commands: readonly Command[], query: string): readonly Command[] {
  const words = foldedText(query).split(/\s+/).filter(Boolean);
  if (words.length === 0) return commands;
  return commands
    .flatMap((command) => {
      const found = rank(command, words);
      return found === null ? [] : [{ command, found }];
    })
    .sort((a, b) => a.found - b.found)
    .map(({ command }) => command);
}
