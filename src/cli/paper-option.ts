/** The paper a command is asked to print on. */
import { type PaperName, paperNames } from "../core/page/paper.ts";
import { usage } from "./options.ts";

export function paperNamed(command: string, text: string): PaperName {
  const found = paperNames.find((name) => name.toLowerCase() === text.toLowerCase());
  if (!found) throw usage(command, `Got paper "${text}", expected ${paperNames.join(", ")}`);
  return found;
}
