/** Options of one command; anything not understood is refused with a hint where to look. */
import { parseArgs, type ParseArgsConfig } from "node:util";
import { Refusal } from "./refusal.ts";

export function parseOptions<const T extends NonNullable<ParseArgsConfig["options"]>>(
  command: string,
  args: readonly string[],
  options: T,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw usage(command, error instanceof Error ? firstSentence(error.message) : String(error));
  }
}

/** Node adds advice on quoting that helps nobody here. */
function firstSentence(message: string): string {
  return message.split(/\. (?=[A-Z])/)[0]?.replace(/\.$/, "") ?? message;
}

/** The one argument a command takes. */
export function onlyArgument(
  command: string,
  name: string,
  positionals: readonly string[],
): string {
  const [only] = positionals;
  if (only === undefined || only === "") throw usage(command, `${name} is missing`);
  if (positionals.length > 1) {
    throw usage(
      command,
      `Expected one ${name}, got ${positionals.length}: ${positionals.join(", ")}`,
    );
  }
  return only;
}

export function usage(command: string, trouble: string): Refusal {
  return new Refusal([`wideberth ${command}: ${trouble}.`, "See wideberth --help."]);
}
