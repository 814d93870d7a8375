/** What was made, to a file or to stdout. */
import { writeFile } from "node:fs/promises";
import { fileTrouble } from "./file-trouble.ts";
import { Refusal } from "./refusal.ts";

/** @param output a path, or `-` for stdout */
export async function writeOutput(output: string, made: string | Uint8Array): Promise<void> {
  if (output === "-") {
    process.stdout.write(made);
    return;
  }
  try {
    await writeFile(output, made);
  } catch (error) {
    throw new Refusal([`${output}: ${fileTrouble(error)}.`]);
  }
}
